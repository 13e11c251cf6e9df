import type { Drift, IssuedQuote } from '../../issued/index.ts';
import { formatMoney, type Money, subtractMoney } from '../../money/index.ts';
import type { Yard } from '../../schema/index.ts';
import { type Computed, formatDate } from '../../units/index.ts';
import {
  figureColumn,
  plainRow,
  type Section,
  section,
  sumRow,
  textColumn,
} from '../sections/section.ts';
import { signedMoney } from '../sections/words.ts';

/** The quote that was sent last and what it would cost today, line by line, and why. */
export function driftSection(
  issued: IssuedQuote | undefined,
  drift: Computed<Drift> | undefined,
  yard: Yard,
): Section {
  if (!issued) {
    const words = ['No quote was issued: the numbers can still move.'];
    return section('issued', 'As sent, and today', { words });
  }
  const sent = `Revision ${issued.revision}, issued on ${formatDate(issued.issuedOn, yard.locale)}, is what the customer holds.`;
  if (!drift || 'notComputed' in drift) {
    const words = [
      sent,
      `What it would cost today is not computed: ${drift?.notComputed ?? 'the order has errors'}.`,
    ];
    return section('issued', 'As sent, and today', { words });
  }
  const money = (amount: Money): string => formatMoney(amount, yard.locale);
  const signed = (amount: Money): string => signedMoney(amount, yard.locale);
  if (drift.rows.length === 0)
    return section('issued', 'As sent, and today', {
      words: [sent, 'It would cost the same today.'],
    });
  return section('issued', 'As sent, and today', {
    words: [sent],
    tables: [
      {
        caption: `What revision ${issued.revision} would cost today, with tax`,
        columns: [
          textColumn('What'),
          figureColumn('As sent'),
          figureColumn('Today'),
          figureColumn('Change'),
          textColumn('Why'),
        ],
        rows: [
          ...drift.rows.map(({ name, was, now, causes }) =>
            plainRow(
              name,
              money(was),
              money(now),
              signed(subtractMoney(now, was)),
              causes.map((cause) => causeText(cause, signed)).join('; '),
            ),
          ),
          sumRow(
            '{Final price}',
            money(drift.was),
            money(drift.now),
            signed(subtractMoney(drift.now, drift.was)),
            '',
          ),
        ],
      },
    ],
    notes: [`Made of ${issued.inputs.length} files, each with its digest in the issued file.`],
  });
}

function causeText(
  { cause, amount, details }: Drift['rows'][number]['causes'][number],
  signed: (amount: Money) => string,
): string {
  const more = details.length === 0 ? '' : ` (${details.join(', ')})`;
  return `${cause} ${signed(amount)}${more}`;
}
