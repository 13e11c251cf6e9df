import { toOrder } from '../../laminate/index.ts';
import type { Build } from '../../resolve/index.ts';
import { decimalToNumber, ZERO } from '../../units/index.ts';
import type { KitLine } from './kit.ts';

/** A material of all that is laminated in a boat, against the shelf. */
export interface BoatKitLine extends Omit<KitLine, 'sheets' | 'sheet'> {
  readonly fromStock: number;
  /** In whole packs where its supplier sells it so. */
  readonly ordered: number;
}

/**
 * The kits of shell, structure and options as one: a material that several take stands once, so that the shelf meets it
 * once.
 */
export function boatKit(
  { stock }: Build,
  kits: readonly (readonly KitLine[])[],
): readonly BoatKitLine[] {
  const lines = kits.flat();
  return [...new Set(lines.map(({ part }) => part))].flatMap((part) => {
    const same = lines.filter((line) => line.part === part);
    const [first] = same;
    if (!first) return [];
    const sum = (of: (line: KitLine) => number): number =>
      same.reduce((total, line) => total + of(line), 0);
    const needed = sum((line) => line.needed);
    const inStock = decimalToNumber(stock?.held.get(part) ?? ZERO);
    const [order] = toOrder(
      [{ name: part, quantity: needed, unit: 'each' }],
      [{ name: part, inStock, pack: first.pack }],
    );
    const listed = same.flatMap((line) => line.listed ?? []);
    const { sheets: _, sheet: __, listed: one, ...rest } = first;
    return [
      {
        ...rest,
        inBoat: sum((line) => line.inBoat),
        lost: sum((line) => line.lost),
        ...(one !== undefined && { listed: listed.reduce((total, some) => total + some, 0) }),
        needed,
        fromStock: order?.fromStock ?? 0,
        ordered: order?.ordered ?? needed,
      },
    ];
  });
}
