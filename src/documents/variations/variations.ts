import type { CustomerFigures, CustomerVariation } from '../../figures/index.ts';
import { type Account, priceChange } from '../../issued/index.ts';
import { formatMoney, type Money } from '../../money/index.ts';
import { addDays, formatterOf, formatDate, type IsoDate } from '../../units/index.ts';
import {
  bareTable,
  type Block,
  factList,
  type Field,
  type Part,
  part,
  row,
  words,
} from '../blocks/block.ts';
import { changeText } from '../sections/fact-words.ts';
import { type Letter, letterHead } from '../blocks/letter.ts';
import { SUM_COLUMNS } from '../quote/price.ts';
import { changeCautions } from '../sections/told.ts';
import { boatName, sentence, signedMoney } from '../sections/words.ts';

interface Varied {
  /** The boat as quoted. */
  readonly quoted: CustomerFigures;
  readonly variations: readonly CustomerVariation[];
  readonly account: Account;
}

/** The variation page of an order: for signature, and the account up to now. */
export function variationsView({ quoted, variations, account }: Varied): Letter {
  const { build } = quoted;
  const { order, yard } = build;
  const name = `Variations to ${order.number}`;
  const promised = promisedText(quoted, variations);
  return {
    ...letterHead(build, {
      pdf: 'variations',
      name,
      subject: `What changed after ${order.customer.name} accepted the quote, and what the boat costs now`,
    }),
    facts: [],
    heading: `${name}: ${boatName(build)}`,
    lead: 'Each change is made only when both sides have signed it. Prices are with tax; masses and dates are estimates.',
    told: '',
    parts: [
      ...variations.flatMap((one) => changePart(one, quoted)),
      ...part(
        'account',
        'Account',
        ...accountTable(account, yard.locale),
        ...(promised === '' ? [] : words('plain', promised)),
      ),
    ],
  };
}

/** One change: what it does, what comes and goes, what to know, and who signed or is to sign. */
function changePart(one: CustomerVariation, quoted: CustomerFigures): readonly Part[] {
  const { order, yard } = quoted.build;
  const { variation, number, added, removed } = one;
  const parties = [`For ${order.customer.name}`, `For ${yard.shop.name}`];
  const said = (what: string, names: readonly string[]): readonly string[] =>
    names.length === 0 ? [] : [`${what}: ${names.join('; ')}.`];
  return part(
    `variation-${number}`,
    `Variation ${number}: ${variation.name}`,
    factList('effects', effectsOf(one, quoted)),
    ...words('plain', ...said('Added', added), ...said('Removed', removed)),
    ...words('known', ...changeCautions(one)),
    ...(variation.agreed
      ? words(
          'signed',
          `Signed on ${formatDate(variation.agreed.date, yard.locale)} by ${variation.agreed.by}.`,
        )
      : [{ block: 'signatures', parties } as const]),
  );
}

function effectsOf(one: CustomerVariation, quoted: CustomerFigures): readonly Field[] {
  const { yard } = quoted.build;
  const { variation, differences } = one;
  const change = priceChange(one, quoted);
  return [
    { label: 'Asked for', value: formatDate(variation.asked, yard.locale) },
    {
      label: '{Final price}',
      value: change
        ? signedMoney(change, yard.locale)
        : 'not computed: it cannot be built like this',
    },
    { label: 'Mass', value: changeText(differences?.massOnTrailer, formatterOf(yard)) },
    { label: 'Promised date', value: daysText(variation.days) },
  ];
}

function accountTable(account: Account, locale: string): readonly Block[] {
  const print = (amount: Money): string => formatMoney(amount, locale);
  return bareTable(SUM_COLUMNS, [
    row('sum', `Quote, revision ${account.revision}, {final price}`, print(account.quoted)),
    ...account.agreed.map(({ name, change }) => row('part', name, signedMoney(change, locale))),
    row('whole', '{Final price} with what was agreed', print(account.total)),
    row('part', 'Received', print(account.received)),
    row('whole', 'Still to pay', print(account.toPay)),
  ]);
}

function promisedText(
  { build }: CustomerFigures,
  variations: readonly CustomerVariation[],
): string {
  const { promised } = build.order.dates;
  if (promised === undefined) return '';
  const days = variations.reduce(
    (sum, { variation }) => sum + (variation.agreed ? variation.days : 0),
    0,
  );
  const day = (date: IsoDate): string => formatDate(date, build.yard.locale);
  return sentence(
    days === 0
      ? `Promised for ${day(promised)}, as before`
      : `Promised for ${day(promised)}; with what was agreed, for ${day(addDays(promised, days))}`,
  );
}

function daysText(days: number): string {
  if (days === 0) return 'as before';
  return `${days} day${days === 1 ? '' : 's'} later`;
}
