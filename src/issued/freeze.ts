import type { Figures } from '../figures/index.ts';
import { isMoney, subtractMoney } from '../money/index.ts';
import type { IsoDate } from '../units/index.ts';
import { type Data, fromData, isRecord, toData } from './data.ts';
import type { InputFile, IssuedQuote } from './types.ts';

/** Names the shape of the content; a later shape has another number and is read beside this one. */
const FORMAT = 'orlop issued quote 1';

interface Freezing {
  readonly figures: Figures;
  readonly revision: number;
  readonly issuedOn: IsoDate;
  readonly inputs: readonly InputFile[];
  readonly view: unknown;
}

/** The content of an issued quote's file: all that was computed and all that was said, as plain data. */
export function freezeQuote({ figures, revision, issuedOn, inputs, view }: Freezing): Data {
  const { findings: _, ...computed } = figures;
  return {
    format: FORMAT,
    number: figures.build.order.number,
    revision,
    issuedOn,
    inputs: inputs.map(({ file, sha256 }) => ({ file, sha256 })),
    figures: toData(computed),
    view: toData(view),
  };
}

/**
 * Reads the content of an issued quote's file.
 *
 * @param content - already held against its own digest: it is what `freezeQuote` gave
 * @returns undefined when this program cannot read it
 */
export function openIssued(content: unknown): IssuedQuote | undefined {
  if (!isRecord(content) || content['format'] !== FORMAT) return undefined;
  const issued = fromData(content);
  if (!isIssued(issued)) return undefined;
  const { build, price } = issued.figures;
  const file = build.items[0]?.place.file ?? '';
  // Quotes of before charges could be taxed have none that is.
  const untaxed = { chargesTax: subtractMoney(price.charges, price.charges), chargeLines: [] };
  return {
    ...issued,
    figures: {
      ...issued.figures,
      price: { ...untaxed, ...price },
      build: { ...build, place: () => ({ file }) },
    },
  };
}

/** What is asked of a kept quote: its price, its lines and its items, each as the program reads them. */
function isIssued(value: unknown): value is IssuedQuote {
  if (!isRecord(value) || !isRecord(value['figures'])) return false;
  const { build, price } = value['figures'];
  if (!isRecord(build) || !isRecord(price)) return false;
  const { items, order, yard } = build;
  const { lines, payments } = price;
  return (
    isRecord(order) &&
    isRecord(yard) &&
    AMOUNTS.every((name) => isMoney(price[name])) &&
    Array.isArray(items) &&
    items.every(
      (item) => hasKey(item) && Array.isArray(item['parts']) && isRecord(item['place']),
    ) &&
    Array.isArray(payments) &&
    payments.every((one) => isRecord(one) && isMoney(one['amount'])) &&
    Array.isArray(lines) &&
    lines.every((line) => hasKey(line) && isMoney(line['priceWithTax']))
  );
}

const AMOUNTS = ['driveAway', 'taxable', 'tax', 'charges', 'discountWithTax', 'tradeIn'] as const;

const hasKey = (value: unknown): value is Readonly<Record<string, unknown>> =>
  isRecord(value) && typeof value['key'] === 'string';
