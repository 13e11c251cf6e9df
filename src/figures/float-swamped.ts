import {
  HANDBOOK_WEIGHT_SHARES,
  handbookFlotation,
  swampedBalance,
  type SwampedPart,
} from '../float/index.ts';
import { motorWeights } from '../limits/index.ts';
import type { MassResult } from '../mass/index.ts';
import type { Build, BuildItem } from '../resolve/index.ts';
import {
  kilograms,
  type Kilograms,
  kilogramsPerCubicMetre,
  metres,
  UNIT_KINDS,
} from '../units/index.ts';
import type { Swamped } from './float-types.ts';

const POUND = UNIT_KINDS.mass.lb;
/** Of glassfibre laminate, and of whatever nobody gave a density: common practice, no source. */
const LAMINATE = kilogramsPerCubicMetre(1500);
/** Of a person, half under water: common practice, no source. */
const PERSON = kilogramsPerCubicMetre(1000);
/** Transoms up to this take a lighter motor in the table: 20 in. */
const LOW_TRANSOM = metres(20 * UNIT_KINDS.length.in);

/**
 * Whether foam carries her when she is swamped; undefined when the hull does not say what foam she has.
 *
 * What floats off (loose gear, fuel) is not counted, nor the core of her shell; the engine's battery counts in the
 * rule's table and again where an option brings it, on the safe side.
 */
export function swampedFigures(build: Build, mass: MassResult): Swamped | undefined {
  const { foam } = build.hull;
  if (!foam) return undefined;
  const parts = partsOf(build, mass);
  const fitted = { density: foam.density, fitted: foam.volume };
  const aboard = [...parts, ...outboardOf(build), ...peopleOf(build)];
  return {
    foam: foam.volume,
    rule: ruleFor(build, parts, fitted),
    balance: swampedBalance(aboard, fitted, build.yard.water),
  };
}

function ruleFor(
  { hull, yard }: Build,
  parts: readonly SwampedPart[],
  foam: { readonly density: typeof LAMINATE; readonly fitted: Swamped['foam'] },
): Swamped['rule'] {
  const { ratings, dimensions } = hull;
  const motor = motorWeights(
    ratings.power / UNIT_KINDS.power.hp,
    dimensions.transomHeight <= LOW_TRANSOM,
  );
  if ('notComputed' in motor) return motor;
  const { swamped, controls, batterySubmerged, total } = motor;
  return handbookFlotation({
    length: dimensions.length,
    parts,
    propulsion: kilograms((swamped + controls + batterySubmerged) * POUND),
    personsCapacity: kilograms(ratings.people * yard.personMass),
    capacityLessPropulsion: kilograms(ratings.load + ratings.engineMass - total * POUND),
    foam,
  });
}

function partsOf({ items }: Build, mass: MassResult): readonly SwampedPart[] {
  const boat = items.filter(({ kind }) => kind !== 'outboard' && kind !== 'trailer');
  return [
    ...boat.map(partOf),
    { name: 'contingency', mass: mass.contingency, density: LAMINATE, submerged: true },
  ];
}

function partOf({ name, mass, kind, float }: BuildItem): SwampedPart {
  const moulded = kind === 'shell' || kind === 'structure';
  return {
    name,
    mass,
    density: float?.density ?? LAMINATE,
    submerged: float?.submerged ?? true,
    ...(moulded && { weightShare: HANDBOOK_WEIGHT_SHARES.glassfibre }),
  };
}

/** What it weighs in the water counts whole; 0.85 x 1.05 of the dry mass when its maker gives none (ABYC S-30, note 1, second hand). */
function outboardOf({ outboard }: Build): readonly SwampedPart[] {
  if (!outboard) return [];
  const { model, shaft, mass } = outboard;
  const hangs: Kilograms = model.shafts[shaft]?.swampedMass ?? kilograms(0.85 * 1.05 * mass);
  return [{ name: 'outboard', mass: hangs, density: LAMINATE, submerged: false }];
}

function peopleOf({ order, yard }: Build): readonly SwampedPart[] {
  const half = kilograms((order.boat.people * yard.personMass) / 2);
  return [
    { name: 'people, above the water', mass: half, density: PERSON, submerged: false },
    { name: 'people, under the water', mass: half, density: PERSON, submerged: true },
  ];
}
