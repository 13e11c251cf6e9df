import { type Build, type BuildPart, isWhole, stageOfPart, toFetch } from '../../resolve/index.ts';
import type { Stage } from '../../schema/index.ts';
import {
  addDecimals,
  compareDecimals,
  type Decimal,
  decimalToNumber,
  type Formatter,
  ONE,
  partUnitText,
  timesRoundedUp,
  ZERO,
} from '../../units/index.ts';
import { type Block, column, row, table, under } from '../blocks/block.ts';

/** Materials whose batch is written down: what the laminate is made of. */
const TRACED: ReadonlySet<string> = new Set(['gelcoat', 'fabric', 'core', 'resin']);

/** A material to fetch before a stage begins. */
interface PickedPart {
  readonly code: string;
  readonly description: string;
  /** With wastage, rounded up. */
  readonly quantity: string;
  /** Empty for what is counted. */
  readonly unit: string;
  readonly isTraced: boolean;
}

/** The materials to fetch for a stage: those whose batch is written down in a table, the others in a list to tick. */
export function materialsOf(build: Build, stage: Stage, format: Formatter): readonly Block[] {
  const parts = partsOfStage(build, stage, format);
  if (parts.length === 0) return [];
  const traced = parts.filter(({ isTraced }) => isTraced);
  const others = parts.filter(({ isTraced }) => !isTraced);
  const rows = traced.map(({ code, description, quantity, unit }) =>
    row('plain', '', code, description, { strong: quantity, text: unit }, ''),
  );
  const lines = others.map(({ code, description, quantity, unit }) => ({
    strong: code,
    text: description,
    amount: `${quantity} ${unit}`.trim(),
  }));
  return [
    under(
      'materials',
      'Materials',
      ...table(MATERIALS, rows),
      ...(lines.length > 0 ? [{ block: 'checks', style: 'picks', lines } as const] : []),
    ),
  ];
}

const MATERIALS = [
  column('tick', 'Got'),
  column('head', 'Code'),
  column('text', 'Material'),
  column('num', 'Quantity'),
  column('write', 'Batch'),
];

/**
 * The materials to fetch for a stage, one row a code, in the order of their codes.
 *
 * Quantities have the yard's allowance in them and are rounded up: whole pieces, else tenths, and hundredths of
 * what is less than one.
 */
function partsOfStage(
  { items, yard }: Build,
  stage: Stage,
  format: Formatter,
): readonly PickedPart[] {
  const needed = new Map<string, { readonly part: BuildPart; readonly quantity: Decimal }>();
  for (const item of items) {
    for (const part of item.parts) {
      if (stageOfPart(item, part) !== stage) continue;
      const before = needed.get(part.code)?.quantity ?? ZERO;
      const quantity = addDecimals(before, toFetch(part, yard));
      needed.set(part.code, { part, quantity });
    }
  }
  return [...needed.values()]
    .filter(({ quantity }) => quantity.amount > 0n)
    .toSorted((a, b) => (a.part.code < b.part.code ? -1 : 1))
    .map(({ part, quantity }) => pickedPart(part, quantity, format));
}

function pickedPart(part: BuildPart, quantity: Decimal, format: Formatter): PickedPart {
  const places = placesOf(quantity, part);
  const fetched = roundUp(quantity, places);
  return {
    code: part.code,
    description: part.description,
    quantity: format.number(decimalToNumber(fetched), places),
    unit: partUnitText(part.unit, compareDecimals(fetched, ONE) === 0),
    isTraced: TRACED.has(part.materialClass),
  };
}

function placesOf(quantity: Decimal, part: BuildPart): number {
  if (isWhole(part)) return 0;
  return compareDecimals(quantity, ONE) < 0 ? 2 : 1;
}

/** The next number of so many places that is not less; `value` is not below zero. */
function roundUp(value: Decimal, places: number): Decimal {
  const scale = BigInt(places);
  return { amount: timesRoundedUp(value, { amount: 1n, scale }), scale };
}
