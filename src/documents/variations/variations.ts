import type { CustomerFigures, CustomerVariation } from '../../figures/index.ts';
import { type Account, priceChange } from '../../issued/index.ts';
import { formatMoney, type Money } from '../../money/index.ts';
import { addDays, formatterOf, formatDate, type IsoDate } from '../../units/index.ts';
import { type DocumentHead, pdfName } from '../sections/head.ts';
import type { Fact } from '../quote/types.ts';
import { type ShopHead, shopHead } from '../sections/shop-head.ts';
import { changeCautions } from '../sections/told.ts';
import { boatName, customerLines, sentence, signedMass, signedMoney } from '../sections/words.ts';

export interface VariationEntry {
  /** "Variation 1". */
  readonly number: string;
  readonly name: string;
  readonly added: readonly string[];
  readonly removed: readonly string[];
  readonly effects: readonly Fact[];
  /** What stands in its way or should be known before it is signed. */
  readonly cautions: readonly string[];
  /** Who signed and when; empty: a place to sign. */
  readonly agreed: string;
}

/** Changes after acceptance, each with its price, mass and date, and what the boat costs in the end. */
export interface VariationsView {
  readonly document: DocumentHead;
  readonly shop: ShopHead;
  readonly heading: string;
  readonly lead: string;
  readonly customer: readonly string[];
  readonly variations: readonly VariationEntry[];
  readonly account: readonly {
    readonly label: string;
    readonly amount: string;
    readonly kind: string;
  }[];
  readonly promised: string;
  readonly parties: readonly string[];
}

interface Varied {
  /** The boat as quoted. */
  readonly quoted: CustomerFigures;
  readonly variations: readonly CustomerVariation[];
  readonly account: Account;
}

/** The variation page of an order: for signature, and the account up to now. */
export function variationsView({ quoted, variations, account }: Varied): VariationsView {
  const { build } = quoted;
  const { order, yard } = build;
  const heading = `Variations to ${order.number}: ${boatName(build)}`;
  return {
    document: {
      title: heading,
      lang: yard.locale,
      subject: `What changed after ${order.customer.name} accepted the quote, and what the boat costs now`,
      author: yard.shop.name,
      runningHead: `Variations to ${order.number}, ${boatName(build)}`,
      reference: `Variations to ${order.number}`,
      pdf: pdfName('variations', order.number),
    },
    shop: shopHead(yard),
    heading,
    lead: 'Each change is made only when both sides have signed it. Prices are with tax; masses and dates are estimates.',
    customer: customerLines(build),
    variations: variations.map((one) => entryOf(one, quoted)),
    account: accountRows(account, yard.locale),
    promised: promisedText(quoted, variations),
    parties: [`For ${order.customer.name}`, `For ${yard.shop.name}`],
  };
}

function entryOf(one: CustomerVariation, quoted: CustomerFigures): VariationEntry {
  const { yard } = quoted.build;
  const { variation, number, added, removed, differences } = one;
  const format = formatterOf(yard);
  const change = priceChange(one, quoted);
  const mass = differences?.massOnTrailer;
  return {
    number: `Variation ${number}`,
    name: variation.name,
    added,
    removed,
    effects: [
      { label: 'Asked for', value: formatDate(variation.asked, yard.locale) },
      {
        label: 'Drive-away price',
        value: change
          ? signedMoney(change, yard.locale)
          : 'not computed: it cannot be built like this',
      },
      {
        label: 'Mass',
        value: mass === undefined ? 'not computed' : signedMass(mass, format),
      },
      { label: 'Promised date', value: daysText(variation.days) },
    ],
    cautions: changeCautions(one),
    agreed: variation.agreed
      ? `Signed on ${formatDate(variation.agreed.date, yard.locale)} by ${variation.agreed.by}.`
      : '',
  };
}

function accountRows(account: Account, locale: string): VariationsView['account'] {
  const print = (amount: Money): string => formatMoney(amount, locale);
  return [
    {
      label: `Quote, revision ${account.revision}, drive-away price`,
      amount: print(account.quoted),
      kind: 'sum',
    },
    ...account.agreed.map(({ name, change }) => ({
      label: name,
      amount: signedMoney(change, locale),
      kind: 'part',
    })),
    { label: 'Drive-away price with what was agreed', amount: print(account.total), kind: 'whole' },
    { label: 'Received', amount: print(account.received), kind: 'part' },
    { label: 'Still to pay', amount: print(account.toPay), kind: 'whole' },
  ];
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
