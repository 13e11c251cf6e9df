import {
  type Computed,
  levelFlotation,
  peopleAndGear,
  peopleFor,
  personsCapacity,
  powerCapacity,
  type RatedBoat,
  type RatedHull,
  SUBMERGED_SHARE,
  submergedShare,
  weightCapacity,
} from '../limits/index.ts';
import {
  cubicMetres,
  FOOT,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  POUND,
  radians,
  watts,
} from '../units/index.ts';
import { exactCaseIn } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const CFR_POWER = '33 CFR 183.53(a) and table 183.53, worked by hand';
const PUBLISHED_EXAMPLE = '33 CFR 183.53(a): a published example of its use, as printed';
const HANDBOOK =
  'Coast Guard Boatbuilder’s Handbook, special discussion of 33 CFR 183.41, as printed';
const FLOTATION = 'Coast Guard Boatbuilder’s Handbook, flotation, step 3, worked by hand';

const limits = exactCaseIn('limits');

const VEE: Pick<RatedHull, 'deadrise' | 'hardChine'> = { deadrise: radians(0.3), hardChine: true };
const FLAT: Pick<RatedHull, 'deadrise' | 'hardChine'> = { deadrise: radians(0), hardChine: true };

const hull = (
  feet: number,
  width: number,
  steering: RatedHull['steering'],
  bottom: Pick<RatedHull, 'deadrise' | 'hardChine'>,
): RatedHull => ({
  length: metres(feet * FOOT),
  beam: metres(width * 1.1 * FOOT),
  transomBeam: metres(width * FOOT),
  transomHeight: metres((20 / 12) * FOOT),
  monohull: true,
  steering,
  ...bottom,
});

const horsepower = (
  feet: number,
  width: number,
  steering: RatedHull['steering'] = 'tiller',
  bottom: Pick<RatedHull, 'deadrise' | 'hardChine'> = VEE,
): number => {
  const capacity = powerCapacity(hull(feet, width, steering, bottom));
  return 'notComputed' in capacity ? Number.NaN : capacity.horsepower;
};

/** A boat whose weight capacity is a given number of pounds at more than 2 hp. */
const boatOf = (capacity: number, sideTest?: number): RatedBoat => ({
  hull: hull(16, 6, 'remote', VEE),
  light: kilograms(900 * POUND),
  fixedFuel: kilograms(0),
  greatestDisplacement: kilograms((900 + 5 * capacity) * POUND),
  loadedDisplacement: kilograms(0),
  seats: 4,
  engine: { power: watts(0), mass: kilograms(0) },
  ...(sideTest !== undefined && { sideTest: kilograms(sideTest * POUND) }),
});

const inPounds = (mass: Computed<number>): number =>
  typeof mass === 'number' ? mass / POUND : Number.NaN;
/** Persons capacity at 40 hp, for which the table of motors has 459 lb in all. */
const persons = (forPeople: number, sideTest?: number) => {
  const capacity = personsCapacity(boatOf(forPeople + 459, sideTest), 40);
  return 'notComputed' in capacity
    ? { pounds: Number.NaN, people: Number.NaN }
    : {
        pounds: inPounds(capacity.mass),
        people: capacity.people,
      };
};

const POWER_CASES: readonly PublishedCase[] = [
  limits('19.5 ft x 7 ft, remote steering', PUBLISHED_EXAMPLE, 185, 'hp', () =>
    horsepower(19.5, 7, 'remote'),
  ),
  limits('16 ft x 6.5 ft, remote steering', CFR_POWER, 120, 'hp', () =>
    horsepower(16, 6.5, 'remote'),
  ),
  limits('14 ft x 5 ft, tiller', CFR_POWER, 35, 'hp', () => horsepower(14, 5)),
  limits('14 ft x 5 ft, tiller, flat bottom with hard chines', CFR_POWER, 20, 'hp', () =>
    horsepower(14, 5, 'tiller', FLAT),
  ),
  limits('18 ft x 6.25 ft, remote steering', CFR_POWER, 135, 'hp', () =>
    horsepower(18, 6.25, 'remote'),
  ),
  limits('12 ft x 46 in', CFR_POWER, 15, 'hp', () => horsepower(12, 46 / 12)),
  limits('12 ft x 46 in, flat bottom with hard chines', CFR_POWER, 10, 'hp', () =>
    horsepower(12, 46 / 12, 'tiller', FLAT),
  ),
  limits(
    '12 ft x 3.83 ft: factor 45.96 is read as 46, the nearest whole number',
    CFR_POWER,
    15,
    'hp',
    () => horsepower(12, 3.83),
  ),
];

const PEOPLE_CASES: readonly PublishedCase[] = [
  limits(
    'Displacement 4,500 lb, boat 900 lb',
    '33 CFR 183.35, worked by hand: a fifth of it',
    720,
    'lb',
    () => inPounds(weightCapacity(boatOf(720), 40)),
  ),
  ...(
    [
      [550, 4],
      [547, 4],
      [546, 4],
      [605, 5],
    ] as const
  ).map(([pounds, people]) =>
    limits(`People for ${pounds} lb`, HANDBOOK, people, '', () => peopleFor(pounds)),
  ),
  limits(
    '547 lb, of which the side test takes 545 lb',
    HANDBOOK,
    547,
    'lb',
    () => persons(547, 545).pounds,
  ),
  limits(
    '547 lb, of which the side test takes 328 lb (printed 546)',
    HANDBOOK,
    546,
    'lb',
    () => persons(547, 328).pounds,
    0.7,
  ),
  limits(
    '550 lb: no side test is asked for',
    '33 CFR 183.41(b), worked by hand',
    550,
    'lb',
    () => persons(550, 1).pounds,
  ),
  limits('605 lb by the whole chain', HANDBOOK, 5, '', () => persons(605).people),
];

/** Pounds of lift for fibreglass and wood, SG 0.55, with a motor of 40 hp. */
function flotation(fibreglass: number, wood: number, crew: number, capacity: number) {
  const result = levelFlotation({
    length: metres(5),
    parts: [
      {
        name: 'laminate',
        mass: kilograms(fibreglass * POUND),
        share: SUBMERGED_SHARE.fibreglass,
      },
      { name: 'wood', mass: kilograms(wood * POUND), share: submergedShare(0.55) },
    ],
    horsepower: 40,
    personsCapacity: kilograms(crew * POUND),
    weightCapacity: kilograms(capacity * POUND),
    foam: { density: kilogramsPerCubicMetre(32), fitted: cubicMetres(0) },
  });
  if ('notComputed' in result) return { boat: Number.NaN, people: Number.NaN };
  return { boat: inPounds(result.lift.boat), people: inPounds(result.lift.people) };
}

const FLOTATION_CASES: readonly PublishedCase[] = [
  ...(
    [
      [550, 275],
      [700, 293.75],
      [1100, 343.75],
    ] as const
  ).map(([pounds, lift]) =>
    limits(`Lift for a persons capacity of ${pounds} lb`, FLOTATION, lift, 'lb', () =>
      peopleAndGear(pounds, 0),
    ),
  ),
  limits(
    'Lift for gear: 760 lb left, 700 lb of people',
    FLOTATION,
    15,
    'lb',
    () => peopleAndGear(700, 760) - peopleAndGear(700, 0),
  ),
  limits(
    'Fibreglass under water',
    'Coast Guard Boatbuilder’s Handbook, flotation, as printed: ours by (SG - 1)/SG at 1.5',
    0.33,
    '',
    () => submergedShare(1.5),
    0.004,
  ),
  limits(
    '{Aluminium} under water',
    'Coast Guard Boatbuilder’s Handbook, flotation, as printed: ours by (SG - 1)/SG at 2.7',
    0.63,
    '',
    () => submergedShare(2.7),
    0.001,
  ),
  limits(
    '600 lb of fibreglass and 200 lb of wood, SG 0.55: wood is a credit',
    'Archimedes, worked by hand: 198 - 163.6',
    34.36,
    'lb',
    () => flotation(600, 200, 550, 1000).boat,
    0.01,
  ),
  limits(
    '600 lb of fibreglass and 198 lb of wood, SG 0.55: boat term',
    `${FLOTATION}: wood lighter than water is a credit, 198 - 162`,
    36,
    'lb',
    () => flotation(600, 198, 550, 1000).boat,
  ),
  limits(
    'Persons and gear: 700 lb of people, 760 lb of capacity less the motor’s 459 lb',
    FLOTATION,
    308.75,
    'lb',
    () => flotation(600, 198, 700, 760 + 459).people,
  ),
];

/** 33 CFR 183 against its tables, its worked numbers and the Coast Guard's handbook. */
export const CFR_183_CASES: readonly PublishedCase[] = [
  ...POWER_CASES,
  ...PEOPLE_CASES,
  ...FLOTATION_CASES,
];
