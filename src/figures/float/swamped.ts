import { swampedBalance, type SwampedPart, weightSwamped } from '../../float/index.ts';
import {
  HANDBOOK_WATER,
  levelFlotation,
  SUBMERGED_SHARE,
  submergedShare,
} from '../../limits/index.ts';
import { type Loading, massOf, type MassResult, sumMass } from '../../mass/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import {
  HORSEPOWER,
  INCH,
  kilograms,
  type Kilograms,
  kilogramsPerCubicMetre,
  metres,
} from '../../units/index.ts';
import type { Swamped } from './types.ts';
import type { NamedWater } from '../water.ts';
import { panelsOf } from '../laminate/input.ts';

/** Of glassfibre laminate, and of whatever nobody gave a density: common practice, no source. */
const LAMINATE = kilogramsPerCubicMetre(1500);
/** Of a person, half under water: common practice, no source. */
const PERSON = kilogramsPerCubicMetre(1000);
/** Transoms up to this take a lighter motor in the rule's table: 20 in. */
const LOW_TRANSOM = metres(20 * INCH);

/**
 * Whether foam carries it when it is swamped; undefined when the hull does not say what foam it has.
 *
 * The balance counts the core of its shell where the hull file has a lay-up, the fuel that is ordered, in a closed
 * tank, and the loose gear. The rule counts neither core nor fuel, on the safe side, and gear in its own way; the engine's
 * battery counts in its table and again where an option brings it.
 */
export function swampedFigures(
  build: Build,
  mass: MassResult,
  { density: water }: Pick<NamedWater, 'density'>,
): Swamped | undefined {
  const { hull } = build;
  const { foam } = hull;
  if (!foam) return undefined;
  const fitted = { density: foam.density, fitted: foam.volume };
  const core = coreOf(build);
  const boat = boatParts(build, mass, sumMass(core));
  const loading = mass.loadings['as ordered'];
  const counted = [...core, ...contentsOf(build, loading)];
  const aboard = [...boat, ...counted, ...outboardOf(build), ...peopleOf(loading)];
  return {
    foam: foam.volume,
    rule: ruleFor(build, boatParts(build, mass), fitted),
    balance: swampedBalance(aboard, fitted, water),
    counted: counted.map((part) => ({ name: part.name, weight: weightSwamped(part, water) })),
    uncounted: hull.laminate ? [] : ['a core in the shell, which no lay-up of the hull tells of'],
  };
}

function ruleFor(
  { hull, yard }: Build,
  parts: readonly BoatPart[],
  foam: Parameters<typeof levelFlotation>[0]['foam'],
): Swamped['rule'] {
  const { ratings, dimensions } = hull;
  return levelFlotation({
    length: dimensions.length,
    parts: parts.map(({ name, mass, density, submerged, moulded }) => {
      const under = moulded ? SUBMERGED_SHARE.fibreglass : submergedShare(density / HANDBOOK_WATER);
      return { name, mass, share: submerged ? under : 1 };
    }),
    horsepower: ratings.power / HORSEPOWER,
    lowTransom: dimensions.transomHeight <= LOW_TRANSOM,
    personsCapacity: kilograms(ratings.people * yard.personMass),
    weightCapacity: kilograms(ratings.load + ratings.engineMass),
    foam,
  });
}

interface BoatPart extends SwampedPart {
  readonly moulded: boolean;
}

/** The completed boat. @param core - taken out of the shell's mass, where it is counted apart */
function boatParts(
  { items }: Build,
  { contingency }: MassResult,
  core = kilograms(0),
): readonly BoatPart[] {
  const boat = items.filter(({ kind }) => kind !== 'outboard' && kind !== 'trailer');
  return [
    ...boat.map((item) => partOf(item, core)),
    {
      name: 'contingency',
      mass: contingency,
      density: LAMINATE,
      submerged: true,
      moulded: false,
    },
  ];
}

function partOf({ name, mass, kind, float }: BuildItem, core: Kilograms): BoatPart {
  return {
    name,
    mass: kind === 'shell' ? kilograms(Math.max(0, mass - core)) : mass,
    density: float?.density ?? LAMINATE,
    submerged: float?.submerged ?? true,
    moulded: kind === 'shell' || kind === 'structure',
  };
}

/** Fuel, which lifts, and the loose gear. */
function contentsOf({ yard }: Build, loading: Loading): readonly SwampedPart[] {
  const parts = [
    { name: 'rigging of the outboard', mass: massOf(loading, 'rigging'), density: LAMINATE },
    { name: 'fuel, in its closed tank', mass: massOf(loading, 'fuel'), density: yard.fuelDensity },
    { name: 'loose gear', mass: massOf(loading, 'gear'), density: yard.gearDensity },
  ];
  return parts.filter(({ mass }) => mass > 0).map((part) => ({ ...part, submerged: true }));
}

/** The cores in the lay-up of the shell, one part for each of their names in the parts list. */
function coreOf(build: Build): readonly SwampedPart[] {
  const { laminate } = build.hull;
  if (!laminate) return [];
  const layers = panelsOf(build, laminate).flatMap(({ area, layers: all }) =>
    all.flatMap((layer) => (layer.kind === 'core' ? [{ area, ...layer }] : [])),
  );
  return [...new Set(layers.map(({ name }) => name))].flatMap((name) => {
    const same = layers.filter((layer) => layer.name === name);
    const mass = same.reduce(
      (sum, { area, thickness, density }) => sum + area * thickness * density,
      0,
    );
    const density = kilogramsPerCubicMetre(same[0]?.density ?? 0);
    return [{ name: `the shell’s core, ${name}`, mass: kilograms(mass), density, submerged: true }];
  });
}

/** What it weighs in the water counts whole; 0.85 x 1.05 of the dry mass when its maker gives none (ABYC S-30, note 1, second hand). */
function outboardOf({ outboard }: Build): readonly SwampedPart[] {
  if (!outboard) return [];
  const { model, shaft, mass } = outboard;
  const hangs: Kilograms = model.shafts[shaft]?.swampedMass ?? kilograms(0.85 * 1.05 * mass);
  return [{ name: 'outboard', mass: hangs, density: LAMINATE, submerged: false }];
}

function peopleOf(loading: Loading): readonly SwampedPart[] {
  const half = kilograms(massOf(loading, 'person') / 2);
  return [
    { name: 'people, above the water', mass: half, density: PERSON, submerged: false },
    { name: 'people, under the water', mass: half, density: PERSON, submerged: true },
  ];
}
