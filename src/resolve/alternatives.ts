import type { Order, SourcedOrder } from '../schema/index.ts';

type Change = Omit<Order['alternatives'][number], 'name'>;
type Path = readonly (string | number)[];

/** An order as one of its alternatives changes it; undefined when it has no such alternative. */
export function alternativeOrder(order: SourcedOrder, index: number): SourcedOrder | undefined {
  const alternative = order.value.alternatives[index];
  return alternative && changedOrder(order, alternative, ['alternatives', index]);
}

/**
 * An order with what was agreed after acceptance.
 *
 * @param wanted - which of its variations, each on top of those before it
 */
export function variedOrder(
  order: SourcedOrder,
  wanted: (variation: Order['variations'][number], index: number) => boolean,
): SourcedOrder {
  return order.value.variations.reduce(
    (varied, variation, index) =>
      wanted(variation, index) ? changedOrder(varied, variation, ['variations', index]) : varied,
    order,
  );
}

/**
 * An order as a change makes it: an order like any other, whose fields know where they were written, be it in the
 * order or in the change.
 *
 * @param at - where the change stands in the order's file
 */
function changedOrder(order: SourcedOrder, change: Change, at: Path): SourcedOrder {
  const kept = order.value.options
    .map((ordered, written) => ({ ordered, path: ['options', written] as Path }))
    .filter(({ ordered }) => !change.remove.includes(ordered.option))
    .map(({ ordered, path }) => ({
      ordered,
      place: (rest: Path) => order.place([...path, ...rest]),
    }));
  const added = change.add.map((ordered, written) => ({
    ordered,
    place: (rest: Path) => order.place([...at, 'add', written, ...rest]),
  }));
  const options = [...kept, ...added];
  return {
    file: order.file,
    value: {
      ...order.value,
      ...fittedOf(order.value, change),
      options: options.map(({ ordered }) => ordered),
      alternatives: [],
    },
    place: (path = []) => {
      const [field, entry, ...rest] = path;
      const option = field === 'options' ? options[Number(entry)] : undefined;
      if (option) return option.place(rest);
      const changed = (field === 'outboard' || field === 'trailer') && change[field];
      return changed === undefined || changed === false
        ? order.place(path)
        : order.place([...at, ...path]);
    },
  };
}

/** The outboard and the trailer of an alternative: its own, none, or those of the order. */
function fittedOf(
  order: Order,
  { outboard = order.outboard, trailer = order.trailer }: Change,
): Pick<Order, 'outboard' | 'trailer'> {
  return {
    outboard: outboard === 'none' ? undefined : outboard,
    trailer: trailer === 'none' ? undefined : trailer,
  };
}

/** Names that an alternative takes out although the order does not have them. */
export function unmatchedRemovals({ value }: SourcedOrder, index: number): readonly string[] {
  const ordered = new Set(value.options.map(({ option }) => option));
  return (value.alternatives[index]?.remove ?? []).filter((option) => !ordered.has(option));
}

/** Names that a variation takes out although the order does not have them by then. */
export function unmatchedVariationRemovals(order: SourcedOrder, index: number): readonly string[] {
  const { value } = variedOrder(order, ({ agreed }, at) => at < index && agreed !== undefined);
  const ordered = new Set(value.options.map(({ option }) => option));
  return (order.value.variations[index]?.remove ?? []).filter((option) => !ordered.has(option));
}
