import { type Finding, hasErrors } from '../findings/index.ts';
import { type Order, orderSchema, type SourcedOrder } from '../schema/index.ts';
import { filesIn, readSource, type Reading, YAML_FILE } from './folder.ts';
import { idOf, readChecked } from './read-entries.ts';
import { byUniqueName } from './unique.ts';

/** An order that could not be read, with its number when that much could. */
export interface BrokenOrder {
  readonly file: string;
  readonly number?: string;
}

/** Which orders are wanted: by their file and, when it can be read, their number. */
export type OrderFilter = (order: BrokenOrder) => boolean;

export interface ReadOrders {
  readonly orders: readonly SourcedOrder[];
  readonly brokenOrders: readonly BrokenOrder[];
}

interface OneOrder extends BrokenOrder {
  readonly sourced?: SourcedOrder;
  readonly findings: readonly Finding[];
}

/**
 * Reads the orders of a workspace, each on its own: a mistake in one leaves the others as they are. What is
 * wrong with those that are wanted is added to the findings of the reading.
 */
export function readOrders(reading: Reading, wanted: OrderFilter): ReadOrders {
  const all = filesIn(reading, 'orders', YAML_FILE).map((file) => readOrder(reading, file));
  const unique = byUniqueName(
    all.flatMap(({ sourced }) => (sourced ? [sourced] : [])),
    'number',
    ({ value }) => value.number,
    reading.sources,
    // Numbers name folders, and some file systems do not tell capitals from small letters.
    (number) => number.toLowerCase(),
  );
  const chosen = all.filter(wanted);
  const files = new Set(chosen.map(({ file }) => file));
  const twice = unique.findings.filter(({ place }) => files.has(place.file));
  reading.findings.push(...chosen.flatMap(({ findings }) => findings), ...twice);
  const kept = new Set(unique.byName.values());
  return {
    orders: chosen.flatMap(({ sourced }) => (sourced && kept.has(sourced) ? [sourced] : [])),
    brokenOrders: chosen
      .filter(({ sourced }) => !sourced || !kept.has(sourced))
      .map(({ file, number }) => (number === undefined ? { file } : { file, number })),
  };
}

function readOrder(reading: Reading, file: string): OneOrder {
  const failed: Finding[] = [];
  const text = readSource({ ...reading, findings: failed }, file);
  if (text === undefined) return { file, findings: failed };
  const { sourced, source, findings } = readChecked<Order>(orderSchema, text, file);
  const [number] = idOf(source, 'number');
  const named = number === undefined ? { file } : { file, number };
  return sourced && !hasErrors(findings) ? { ...named, sourced, findings } : { ...named, findings };
}
