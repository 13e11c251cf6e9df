import type { FiguredVariation, Figures } from '../figures/index.ts';
import type { IssuedQuote } from '../issued/index.ts';
import { formatMoney, type Money } from '../money/index.ts';
import { formatDate } from '../units/index.ts';
import { accountOf, priceChange } from './account.ts';
import { figureColumn, plainRow, type Section, section, sumRow, textColumn } from './section.ts';

/** What was accepted and by whom, what changed since, and what the boat costs in the end. */
export function variationsSection(
  variations: readonly FiguredVariation[],
  quoted: Figures,
  issued: IssuedQuote | undefined,
): Section {
  const { order, yard } = quoted.build;
  const money = (amount: Money | undefined): string =>
    amount ? formatMoney(amount, yard.locale) : 'not computed';
  const account = accountOf(quoted, issued, variations);
  const { acceptance, dates } = order;
  const accepted =
    dates.accepted === undefined
      ? 'Not accepted yet.'
      : `Accepted on ${formatDate(dates.accepted, yard.locale)}${acceptance ? ` by ${acceptance.by}: revision ${acceptance.revision}` : ''}.`;
  return section('account', 'Acceptance, variations and account', {
    words: [accepted],
    tables: [
      {
        caption: 'From the quote to the final account, with tax',
        columns: [textColumn('What'), textColumn('Standing'), figureColumn('Amount')],
        rows: [
          plainRow(
            'Drive-away price as quoted',
            issued ? `revision ${issued.revision}` : 'not issued',
            money(account.quoted),
          ),
          ...variations.map((one) =>
            plainRow(
              `Variation ${one.number}: ${one.variation.name}`,
              one.variation.agreed
                ? `signed by ${one.variation.agreed.by}`
                : 'not signed: not counted',
              money(priceChange(one, quoted)),
            ),
          ),
          sumRow('Drive-away price with what was agreed', '', money(account.total)),
          plainRow('Received', '', money(account.received)),
          sumRow('Still to pay', '', money(account.toPay)),
        ],
      },
    ],
  });
}
