import type { Order, SourcedOrder } from '../schema/index.ts';

type Alternative = Order['alternatives'][number];
type Path = readonly (string | number)[];

/**
 * An order as one of its alternatives changes it: an order like any other, whose fields know where they were written,
 * be it in the order or in the alternative.
 */
export function alternativeOrder(order: SourcedOrder, index: number): SourcedOrder | undefined {
  const alternative = order.value.alternatives[index];
  if (!alternative) return undefined;
  const at: Path = ['alternatives', index];
  const kept = order.value.options
    .map((ordered, written) => ({ ordered, path: ['options', written] as Path }))
    .filter(({ ordered }) => !alternative.remove.includes(ordered.option));
  const added = alternative.add.map((ordered, written) => ({
    ordered,
    path: [...at, 'add', written],
  }));
  const options = [...kept, ...added];
  return {
    file: order.file,
    value: {
      ...order.value,
      ...fittedOf(order.value, alternative),
      options: options.map(({ ordered }) => ordered),
      alternatives: [],
    },
    place: (path = []) => {
      const [field, entry, ...rest] = path;
      const option = field === 'options' ? options[Number(entry)] : undefined;
      if (option) return order.place([...option.path, ...rest]);
      const changed = (field === 'outboard' || field === 'trailer') && alternative[field];
      return order.place(changed === undefined || changed === false ? path : [...at, ...path]);
    },
  };
}

/** The outboard and the trailer of an alternative: its own, none, or those of the order. */
function fittedOf(
  order: Order,
  { outboard = order.outboard, trailer = order.trailer }: Alternative,
): Pick<Order, 'outboard' | 'trailer'> {
  return {
    outboard: outboard === 'none' ? undefined : outboard,
    trailer: trailer === 'none' ? undefined : trailer,
  };
}

/** Names that an alternative takes out although the order does not have them. */
export function removedInVain({ value }: SourcedOrder, index: number): readonly string[] {
  const ordered = new Set(value.options.map(({ option }) => option));
  return (value.alternatives[index]?.remove ?? []).filter((option) => !ordered.has(option));
}
