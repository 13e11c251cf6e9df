import type { Build, BuildItem, BuildPart } from '../resolve/index.ts';
import { type Stage, STAGES } from '../schema/index.ts';
import {
  addDecimals,
  compareDecimals,
  type Decimal,
  decimalToNumber,
  type Formatter,
  multiplyDecimals,
  ONE,
  ZERO,
} from '../units/index.ts';
import type { PickedPart } from './build-sheet-types.ts';

/**
 * Where a material is used when that is not the first stage of its item: the shell's list spans all of moulding,
 * and whoever sprays gelcoat wants the gelcoat there.
 *
 * @source common practice, no source
 */
const USED_IN: Readonly<Record<string, readonly Stage[]>> = {
  gelcoat: ['gelcoat'],
  fabric: ['laminate', 'infusion'],
  core: ['laminate', 'infusion'],
  resin: ['infusion', 'laminate'],
  fitting: ['fit-out'],
  hardware: ['fit-out'],
  plumbing: ['fit-out'],
  sheet: ['fit-out'],
  timber: ['fit-out'],
  paint: ['fit-out'],
  covering: ['fit-out'],
  upholstery: ['fit-out'],
  cable: ['wiring'],
  electrical: ['wiring'],
  electronics: ['wiring'],
  battery: ['wiring'],
};

/** Materials whose batch is written down: what the laminate is made of. */
const TRACED: ReadonlySet<string> = new Set(['gelcoat', 'fabric', 'core', 'resin']);

/** Stage of an item that nobody gave hours to. */
const WITHOUT_HOURS: Readonly<Record<BuildItem['kind'], Stage>> = {
  shell: 'laminate',
  structure: 'fit-out',
  option: 'fit-out',
  extra: 'fit-out',
  outboard: 'engine',
  trailer: 'trailer',
};

/** What follows one, and what follows any other quantity, where the unit itself would read ill. */
const UNIT_WORDS: Readonly<Record<string, readonly [one: string, more: string]>> = {
  m2: ['m²', 'm²'],
  each: ['', ''],
  set: ['set', 'sets'],
  sheet: ['sheet', 'sheets'],
};
const WHOLE_UNITS: ReadonlySet<string> = new Set(['each', 'set', 'sheet']);

/** The stages in which an item is worked on, first to last: never none. */
export function stagesOf({ hours, kind }: BuildItem): readonly Stage[] {
  const worked = STAGES.filter((stage) =>
    hours.some((one) => one.stage === stage && one.hours.amount > 0n),
  );
  return worked.length > 0 ? worked : [WITHOUT_HOURS[kind]];
}

/** The stage that a part of an item is fetched for. */
export function stageOfPart(item: BuildItem, { materialClass }: BuildPart): Stage {
  const worked = stagesOf(item);
  const used = USED_IN[materialClass]?.find((stage) => worked.includes(stage));
  return used ?? worked[0] ?? WITHOUT_HOURS[item.kind];
}

/**
 * The materials to fetch for a stage, one row a code, in the order of their codes.
 *
 * Quantities have the yard's wastage in them and are rounded up: whole pieces, else tenths, and hundredths of
 * what is less than one.
 */
export function partsOfStage(
  { items, yard }: Build,
  stage: Stage,
  format: Formatter,
): readonly PickedPart[] {
  const needed = new Map<string, { readonly part: BuildPart; readonly quantity: Decimal }>();
  for (const item of items) {
    for (const part of item.parts) {
      if (stageOfPart(item, part) !== stage) continue;
      const wastage = addDecimals(ONE, yard.wastage[part.materialClass] ?? ZERO);
      const before = needed.get(part.code)?.quantity ?? ZERO;
      const quantity = addDecimals(before, multiplyDecimals(part.quantity, wastage));
      needed.set(part.code, { part, quantity });
    }
  }
  return [...needed.values()]
    .filter(({ quantity }) => quantity.amount > 0n)
    .toSorted((a, b) => (a.part.code < b.part.code ? -1 : 1))
    .map(({ part, quantity }) => pickedPart(part, quantity, format));
}

function pickedPart(part: BuildPart, quantity: Decimal, format: Formatter): PickedPart {
  const places = placesOf(quantity, part.unit);
  const fetched = roundUp(quantity, places);
  const words = UNIT_WORDS[part.unit]?.[compareDecimals(fetched, ONE) === 0 ? 0 : 1];
  return {
    code: part.code,
    description: part.description,
    quantity: format.number(decimalToNumber(fetched), places),
    unit: words ?? part.unit,
    traced: TRACED.has(part.materialClass),
  };
}

function placesOf(quantity: Decimal, unit: string): number {
  if (WHOLE_UNITS.has(unit)) return 0;
  return compareDecimals(quantity, ONE) < 0 ? 2 : 1;
}

/** The next number of so many places that is not less; `value` is not below zero. */
function roundUp({ amount, scale }: Decimal, places: number): Decimal {
  const kept = BigInt(places);
  if (scale <= kept) return { amount, scale };
  const step = 10n ** (scale - kept);
  return { amount: (amount + step - 1n) / step, scale: kept };
}
