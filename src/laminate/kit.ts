import { wholeUp } from '../maths/index.ts';
import type { Metres, SquareMetres } from '../units/index.ts';
import { resinPerArea } from './layer.ts';
import type { Panel } from './types.ts';

/** A need of the kit: how much of what, in its own unit. */
export interface KitNeed {
  readonly name: string;
  readonly quantity: number;
  readonly unit: 'kg' | 'm2' | 'm' | 'each';
}

/**
 * Materials of the laminate as they lie in the boat, summed by name: gelcoat and resin in kg, the rest in m2.
 *
 * @returns needs without overlaps and offcuts; resin stands under the name `resin`
 * @source derived from the lay-ups
 */
export function materialsOf(panels: readonly Panel[]): readonly KitNeed[] {
  const needs = panels.flatMap(({ area, layers }) =>
    layers.flatMap((layer): readonly KitNeed[] => {
      const resin = (perArea: number): KitNeed => ({
        name: 'resin',
        quantity: perArea * area,
        unit: 'kg',
      });
      switch (layer.kind) {
        case 'gelcoat':
          return [{ name: layer.name, quantity: layer.massPerArea * area, unit: 'kg' }];
        case 'fabric':
          return [
            { name: layer.name, quantity: area, unit: 'm2' },
            resin(resinPerArea(layer.fibrePerArea, layer.fibreFraction)),
          ];
        case 'core':
          return [{ name: layer.name, quantity: area, unit: 'm2' }, resin(2 * layer.uptakePerFace)];
        case 'ready-made':
          return [{ name: layer.name, quantity: area, unit: 'm2' }];
      }
    }),
  );
  return sumByName(needs);
}

/**
 * Whole core sheets for an area.
 *
 * @param offcuts - share that is lost at the edges
 * @source common practice, no source: area over sheet area, rounded up
 */
export function coreSheets(area: SquareMetres, sheet: SquareMetres, offcuts: number): number {
  return wholeUp((area * (1 + offcuts)) / sheet);
}

export interface BagInput {
  readonly area: SquareMetres;
  /** Round the flange, where the bag is taped. */
  readonly perimeter: Metres;
  /** All feed lines together. */
  readonly feedLength: Metres;
  /** From the resin to the feed lines and from the vacuum line to the pot. */
  readonly hoseLength: Metres;
}

/**
 * What the bag takes: film with pleats, peel ply over all, mesh short of the edge, tape twice round, spiral along the
 * feed lines and round the edge, hose.
 *
 * @returns needs in m2 and m
 * @source common practice, no source: film half as much again, peel ply 1.1, mesh 0.9 of the area, tape 2.1 perimeters
 */
export function bagConsumables(bag: BagInput): readonly KitNeed[] {
  return [
    { name: 'bag film', quantity: 1.5 * bag.area, unit: 'm2' },
    { name: 'peel ply', quantity: 1.1 * bag.area, unit: 'm2' },
    { name: 'flow mesh', quantity: 0.9 * bag.area, unit: 'm2' },
    { name: 'sealant tape', quantity: 2.1 * bag.perimeter, unit: 'm' },
    { name: 'spiral tube', quantity: bag.feedLength + bag.perimeter, unit: 'm' },
    { name: 'hose', quantity: bag.hoseLength, unit: 'm' },
  ];
}

/** Stock on the shelf and the pack that a need is bought in. */
export interface Supply {
  readonly name: string;
  readonly inStock: number;
  /** Smallest quantity sold; the order is a multiple of it. */
  readonly pack: number;
}

export interface OrderLine {
  readonly need: KitNeed;
  readonly fromStock: number;
  readonly packs: number;
  /** What is ordered: packs times pack. */
  readonly ordered: number;
}

/**
 * What must be ordered after the shelf is emptied; a need without a supply line is ordered as it is.
 *
 * @returns one line for each need, in the same order
 * @source derived
 */
export function toOrder(
  needs: readonly KitNeed[],
  supplies: readonly Supply[],
): readonly OrderLine[] {
  return sumByName(needs).map((need) => {
    const supply = supplies.find(({ name }) => name === need.name);
    const fromStock = Math.min(need.quantity, Math.max(0, supply?.inStock ?? 0));
    const missing = need.quantity - fromStock;
    const pack = supply && supply.pack > 0 ? supply.pack : missing;
    const packs = missing > 0 ? wholeUp(missing / pack) : 0;
    return { need, fromStock, packs, ordered: packs * pack };
  });
}

function sumByName(needs: readonly KitNeed[]): readonly KitNeed[] {
  const sums = new Map<string, KitNeed>();
  for (const need of needs) {
    const key = `${need.name} ${need.unit}`;
    const before = sums.get(key)?.quantity ?? 0;
    sums.set(key, { ...need, quantity: before + need.quantity });
  }
  return [...sums.values()];
}
