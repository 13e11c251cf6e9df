import type { Drift, IssuedQuote } from '../../issued/index.ts';
import { formatMoney, type Money, subtractMoney } from '../../money/index.ts';
import type { Yard } from '../../schema/index.ts';
import { type Computed, formatDate } from '../../units/index.ts';
import {
  captioned,
  column,
  heads,
  type Part,
  row,
  section,
  smallPrint,
  type Table,
} from '../blocks/block.ts';
import { signedMoney } from '../sections/words.ts';

/** The quote that was sent last and what it would cost today, line by line, and why. */
export function driftSection(
  issued: IssuedQuote | undefined,
  drift: Computed<Drift> | undefined,
  yard: Yard,
): Part {
  const said = (...blocks: Parameters<typeof section>[2][]): Part =>
    section('issued', 'As sent, and today', ...blocks);
  if (!issued) return said('No quote was issued: the numbers can still move.');
  const sent = `Revision ${issued.revision}, issued on ${formatDate(issued.issuedOn, yard.locale)}, is what the customer holds.`;
  if (!drift || 'notComputed' in drift) {
    const why = drift?.notComputed ?? 'the order has errors';
    return said(sent, `What it would cost today is not computed: ${why}.`);
  }
  if (drift.rows.length === 0) return said(sent, 'It would cost the same today.');
  return said(
    sent,
    driftTable(issued, drift, yard),
    ...smallPrint([
      `Made of ${issued.inputs.length} files, each with its digest in the issued file.`,
    ]),
  );
}

function driftTable({ revision }: IssuedQuote, drift: Drift, { locale }: Yard): Table {
  const money = (amount: Money): string => formatMoney(amount, locale);
  const signed = (amount: Money): string => signedMoney(amount, locale);
  const cells = (was: Money, now: Money) => [
    money(was),
    money(now),
    signed(subtractMoney(now, was)),
  ];
  return captioned(
    `What revision ${revision} would cost today, with tax`,
    [column('text', 'What'), ...heads('num', 'As sent', 'Today', 'Change'), column('text', 'Why')],
    [
      ...drift.rows.map(({ name, was, now, causes }) => {
        const why = causes.map((cause) => causeText(cause, signed)).join('; ');
        return row('plain', name, ...cells(was, now), why);
      }),
      row('sum', '{Final price}', ...cells(drift.was, drift.now), ''),
    ],
  );
}

function causeText(
  { cause, amount, details }: Drift['rows'][number]['causes'][number],
  signed: (amount: Money) => string,
): string {
  const more = details.length === 0 ? '' : ` (${details.join(', ')})`;
  return `${cause} ${signed(amount)}${more}`;
}
