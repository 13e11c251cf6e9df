import type { FiguredVariation, Figures } from '../../figures/index.ts';
import { type Account, priceChange } from '../../issued/index.ts';
import { formatMoney, type Money } from '../../money/index.ts';
import { formatDate } from '../../units/index.ts';
import {
  figureColumn,
  plainRow,
  type Section,
  section,
  sumRow,
  textColumn,
} from '../sections/section.ts';

/** What was accepted and by whom, what changed since, and what the boat costs in the end. */
export function variationsSection(
  variations: readonly FiguredVariation[],
  quoted: Figures,
  account: Account | undefined,
): Section {
  const { order, yard } = quoted.build;
  const money = (amount: Money | undefined): string =>
    amount ? formatMoney(amount, yard.locale) : 'not computed';
  const { acceptance, dates } = order;
  const heading = 'Acceptance, variations and account';
  if (!account || !acceptance || dates.accepted === undefined)
    return section('account', heading, {
      words: ['Not accepted yet: there is no price agreed.'],
    });
  const accepted = `Accepted on ${formatDate(dates.accepted, yard.locale)} by ${acceptance.by}: revision ${acceptance.revision}. This is the price agreed, whatever the catalogue says since.`;
  return section('account', heading, {
    words: [accepted],
    tables: [
      {
        caption: 'From the quote to the final account, with tax',
        columns: [textColumn('What'), textColumn('Standing'), figureColumn('Amount')],
        rows: [
          plainRow(
            '{Final price} as accepted',
            `revision ${account.revision}`,
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
          sumRow('{Final price} with what was agreed', '', money(account.total)),
          plainRow('Received', '', money(account.received)),
          sumRow('Still to pay', '', money(account.toPay)),
        ],
      },
      {
        caption: 'How it is paid, with tax',
        columns: [textColumn('What'), textColumn('When'), figureColumn('Amount')],
        rows: [
          ...account.payments.map(({ name, when, amount }) => plainRow(name, when, money(amount))),
          ...account.agreed.map(({ name, change }) =>
            plainRow(name, 'as agreed with the change', money(change)),
          ),
          sumRow('Total', '', money(account.total)),
        ],
      },
    ],
  });
}
