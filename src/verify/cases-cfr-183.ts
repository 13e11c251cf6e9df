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
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const CFR_POWER = '33 CFR 183.53(a) and table 183.53, worked by hand';
const PUBLISHED_EXAMPLE = '33 CFR 183.53(a): a published example of its use, as printed';
const HANDBOOK =
  'Coast Guard Boatbuilder’s Handbook, special discussion of 33 CFR 183.41, as printed';
const FLOTATION = 'Coast Guard Boatbuilder’s Handbook, flotation, step 3, worked by hand';

const limits = casesIn('limits');

const VEE: Pick<RatedHull, 'deadrise' | 'hardChine'> = { deadrise: radians(0.3), hardChine: true };
const FLAT: Pick<RatedHull, 'deadrise' | 'hardChine'> = { deadrise: radians(0), hardChine: true };

const hull = (
  feet: number,
  width: number,
  steering: RatedHull['steering'] = 'tiller',
  bottom: Pick<RatedHull, 'deadrise' | 'hardChine'> = VEE,
): RatedHull => ({
  length: metres(feet * FOOT),
  beam: metres(width * 1.1 * FOOT),
  transomBeam: metres(width * FOOT),
  transomHeight: metres((20 / 12) * FOOT),
  monohull: true,
  steering,
  ...bottom,
});

const horsepower = (...boat: Parameters<typeof hull>): number => {
  const capacity = powerCapacity(hull(...boat));
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

const byLaw = (name: string, wanted: number, ...boat: Parameters<typeof hull>): Row => [
  name,
  wanted,
  'hp',
  () => horsepower(...boat),
];
const POWER_CASES: readonly PublishedCase[] = [
  ...limits(PUBLISHED_EXAMPLE, byLaw('19.5 ft x 7 ft, remote steering', 185, 19.5, 7, 'remote')),
  ...limits(
    CFR_POWER,
    byLaw('16 ft x 6.5 ft, remote steering', 120, 16, 6.5, 'remote'),
    byLaw('14 ft x 5 ft, tiller', 35, 14, 5),
    byLaw('14 ft x 5 ft, tiller, flat bottom with hard chines', 20, 14, 5, 'tiller', FLAT),
    byLaw('18 ft x 6.25 ft, remote steering', 135, 18, 6.25, 'remote'),
    byLaw('12 ft x 46 in', 15, 12, 46 / 12),
    byLaw('12 ft x 46 in, flat bottom with hard chines', 10, 12, 46 / 12, 'tiller', FLAT),
    byLaw('12 ft x 3.83 ft: factor 45.96 is read as 46, the nearest whole number', 15, 12, 3.83),
  ),
];

const peopleOf = (pounds: number, people: number): Row => [
  `People for ${pounds} lb`,
  people,
  '',
  () => peopleFor(pounds),
];
const PEOPLE_CASES: readonly PublishedCase[] = [
  ...limits('33 CFR 183.35, worked by hand: a fifth of it', [
    'Displacement 4,500 lb, boat 900 lb',
    720,
    'lb',
    () => inPounds(weightCapacity(boatOf(720), 40)),
  ]),
  ...limits(
    HANDBOOK,
    peopleOf(550, 4),
    peopleOf(547, 4),
    peopleOf(546, 4),
    peopleOf(605, 5),
    ['547 lb, of which the side test takes 545 lb', 547, 'lb', () => persons(547, 545).pounds],
    [
      '547 lb, of which the side test takes 328 lb (printed 546)',
      546,
      'lb',
      () => persons(547, 328).pounds,
      0.7,
    ],
    ['605 lb by the whole chain', 5, '', () => persons(605).people],
  ),
  ...limits('33 CFR 183.41(b), worked by hand', [
    '550 lb: no side test is asked for',
    550,
    'lb',
    () => persons(550, 1).pounds,
  ]),
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

const lift = (pounds: number, wanted: number): Row => [
  `Lift for a persons capacity of ${pounds} lb`,
  wanted,
  'lb',
  () => peopleAndGear(pounds, 0),
];
const FLOTATION_CASES: readonly PublishedCase[] = [
  ...limits(
    FLOTATION,
    lift(550, 275),
    lift(700, 293.75),
    lift(1100, 343.75),
    [
      'Lift for gear: 760 lb left, 700 lb of people',
      15,
      'lb',
      () => peopleAndGear(700, 760) - peopleAndGear(700, 0),
    ],
    [
      'Persons and gear: 700 lb of people, 760 lb of capacity less the motor’s 459 lb',
      308.75,
      'lb',
      () => flotation(600, 198, 700, 760 + 459).people,
    ],
    [
      '600 lb of fibreglass and 198 lb of wood, SG 0.55, a credit: 198 - 162',
      36,
      'lb',
      () => flotation(600, 198, 550, 1000).boat,
    ],
  ),
  ...limits(
    'Coast Guard Boatbuilder’s Handbook, flotation, as printed: ours by (SG - 1)/SG',
    ['Fibreglass under water, SG 1.5', 0.33, '', () => submergedShare(1.5), 0.004],
    ['{Aluminium} under water, SG 2.7', 0.63, '', () => submergedShare(2.7), 0.001],
  ),
  ...limits('Archimedes, worked by hand: 198 - 163.6', [
    '600 lb of fibreglass and 200 lb of wood, SG 0.55: wood is a credit',
    34.36,
    'lb',
    () => flotation(600, 200, 550, 1000).boat,
    0.01,
  ]),
];

/** 33 CFR 183 against its tables, its worked numbers and the Coast Guard's handbook. */
export const CFR_183_CASES: readonly PublishedCase[] = [
  ...POWER_CASES,
  ...PEOPLE_CASES,
  ...FLOTATION_CASES,
];
