import { priceOrder } from '../../price/index.ts';
import { type Build, resolveOrder } from '../../resolve/index.ts';
import type { Catalogue, SourcedOrder } from '../../schema/index.ts';
import type { IsoDate } from '../../units/index.ts';
import type { Figures } from '../types.ts';
import { priceInput } from './input.ts';

/** A Build with its price. */
export type Priced = { readonly build: Build } & Pick<Figures, 'price'>;

/**
 * What an order would cost by the price lists and exchange rates of a day, which need not be its own.
 *
 * @param broken - ids of catalogue entries that could not be read
 * @returns undefined when an error stands in the way of the Build
 */
export function priceOn(
  order: SourcedOrder,
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
  day: IsoDate,
): Priced | undefined {
  const { build } = resolveOrder(order, catalogue, broken, day);
  return build && { build, price: priceOrder(priceInput(build)) };
}
