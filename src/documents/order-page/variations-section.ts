import type { FiguredVariation, Figures } from '../../figures/index.ts';
import { type Account, priceChange } from '../../issued/index.ts';
import { formatMoney, type Money } from '../../money/index.ts';
import { formatDate } from '../../units/index.ts';
import { captioned, column, heads, type Part, row, section, type Table } from '../blocks/block.ts';

/** What was accepted and by whom, what changed since, and what the boat costs in the end. */
export function variationsSection(
  variations: readonly FiguredVariation[],
  quoted: Figures,
  account: Account | undefined,
): Part {
  const { order, yard } = quoted.build;
  const money = (amount: Money): string => formatMoney(amount, yard.locale);
  const { acceptance, dates } = order;
  const heading = 'Acceptance, variations and account';
  if (!account || !acceptance || dates.accepted === undefined)
    return section('account', heading, 'Not accepted yet: there is no price agreed.');
  const accepted = `Accepted on ${formatDate(dates.accepted, yard.locale)} by ${acceptance.by}: revision ${acceptance.revision}. This is the price agreed, whatever the catalogue says since.`;
  return section(
    'account',
    heading,
    accepted,
    finalTable(account, variations, quoted),
    paidTable(account, money),
  );
}

function finalTable(
  { revision, quoted: agreed, total, received, toPay }: Account,
  variations: readonly FiguredVariation[],
  quoted: Figures,
): Table {
  const { locale } = quoted.build.yard;
  const money = (amount: Money | undefined): string =>
    amount ? formatMoney(amount, locale) : 'not computed';
  return captioned(
    'From the quote to the final account, with tax',
    [...heads('text', 'What', 'Standing'), column('num', 'Amount')],
    [
      row('plain', '{Final price} as accepted', `revision ${revision}`, money(agreed)),
      ...variations.map((one) => {
        const { name, agreed: signed } = one.variation;
        const standing = signed ? `signed by ${signed.by}` : 'not signed: not counted';
        const change = money(priceChange(one, quoted));
        return row('plain', `Variation ${one.number}: ${name}`, standing, change);
      }),
      row('sum', '{Final price} with what was agreed', '', money(total)),
      row('plain', 'Received', '', money(received)),
      row('sum', 'Still to pay', '', money(toPay)),
    ],
  );
}

function paidTable({ payments, agreed, total }: Account, money: (amount: Money) => string): Table {
  return captioned(
    'How it is paid, with tax',
    [...heads('text', 'What', 'When'), column('num', 'Amount')],
    [
      ...payments.map(({ name, when, amount }) => row('plain', name, when, money(amount))),
      ...agreed.map(({ name, change }) =>
        row('plain', name, 'as agreed with the change', money(change)),
      ),
      row('sum', 'Total', '', money(total)),
    ],
  );
}
