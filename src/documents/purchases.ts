import {
  isDue,
  type Overview,
  type PurchaseLine,
  type ShopPlan,
  type SupplierList,
} from '../plan/index.ts';
import type { BuildPart } from '../resolve/index.ts';
import type { Yard } from '../schema/index.ts';
import {
  addDecimals,
  createFormatter,
  type Decimal,
  decimalToNumber,
  decimalToShortText,
  formatDate,
  roundDecimal,
  ZERO,
} from '../units/index.ts';
import { csvText } from './csv.ts';
import type { SectionsView } from './plan-page.ts';
import { figureColumn, flagRow, plainRow, type Section, section, textColumn } from './section.ts';

interface PurchasesInput {
  readonly plan: ShopPlan | { readonly notComputed: string };
  readonly overview: Overview;
  readonly yard: Yard;
}

/** One line as bought: the part's facts, and the packs that it takes beyond those of the lines before it. */
interface Bought {
  readonly line: PurchaseLine;
  readonly part: BuildPart | undefined;
  readonly packs: bigint | undefined;
  readonly now: boolean;
}

const COLUMNS = [
  'supplier',
  'supplier_name',
  'code',
  'description',
  'quantity',
  'unit',
  'pack',
  'packs',
  'need_by',
  'order_by',
  'order_now',
  'orders',
] as const;

/** What is still to be ordered for the accepted orders, by supplier, the most urgent first. */
export function purchasesView({ plan, overview, yard }: PurchasesInput): SectionsView {
  const head = {
    document: {
      title: `Purchases of ${yard.shop.name}`,
      lang: yard.locale,
      subject: 'What must be ordered for the accepted orders, from whom and by when',
      author: yard.shop.name,
    },
    heading: 'Purchases',
    lead: `${yard.shop.name}, ${formatDate(overview.today, yard.locale)}. What the accepted orders still need, with wastage.`,
    links: [
      { text: 'All orders', page: 'index.html' },
      { text: 'Plan', page: 'plan.html' },
      { text: 'The same as CSV', page: 'purchases.csv' },
    ],
  };
  if ('notComputed' in plan) {
    const words = [`not computed: ${plan.notComputed}`];
    return { ...head, sections: [section('purchases', 'Purchases', { words })] };
  }
  const parts = partsByCode(overview);
  const lists = plan.purchases.map((list) => supplierSection(list, parts, plan, yard));
  const nothing = section('purchases', 'Purchases', { words: ['Nothing is left to order.'] });
  return { ...head, sections: lists.length > 0 ? lists : [nothing] };
}

/** The same as data: one row a part and day, dates as YYYY-MM-DD, quantities with a point. */
export function purchasesCsv({ plan, overview, yard }: PurchasesInput): string {
  const parts = partsByCode(overview);
  const lists = 'notComputed' in plan ? [] : plan.purchases;
  const rows = lists.flatMap((list) =>
    boughtLines(list, parts, plan as ShopPlan).map(({ line, part, packs, now }) => [
      list.supplier,
      yard.suppliers[list.supplier]?.name ?? list.supplier,
      line.code,
      part?.description ?? '',
      decimalToShortText(rounded(line.quantity)),
      part?.unit ?? '',
      part?.pack ? decimalToShortText(part.pack) : '',
      packs === undefined ? '' : String(packs),
      line.needBy,
      line.orderBy,
      now ? 'yes' : 'no',
      line.orders.join(' '),
    ]),
  );
  return csvText([COLUMNS, ...rows]);
}

function supplierSection(
  list: SupplierList,
  parts: ReadonlyMap<string, BuildPart>,
  plan: ShopPlan,
  yard: Yard,
): Section {
  const { supplier } = list;
  const facts = yard.suppliers[supplier];
  const name = facts?.name ?? supplier;
  const lines = boughtLines(list, parts, plan);
  const format = createFormatter(yard.locale, yard.units);
  const amount = (value: Decimal): string => {
    const [, fraction = ''] = decimalToShortText(rounded(value)).split('.');
    return format.number(decimalToNumber(rounded(value)), fraction.length);
  };
  return section(`from-${supplier}`, name, {
    words: [`${format.number(facts?.leadDays ?? 0, 0)} days from order to delivery.`],
    tables: [
      {
        caption: `To order from ${name}`,
        columns: [
          textColumn('Code'),
          textColumn('Part'),
          figureColumn('Quantity'),
          textColumn('Packs'),
          textColumn('Order by'),
          textColumn('Needed'),
          textColumn('For'),
        ],
        rows: lines.map(({ line, part, packs, now }) =>
          (now ? flagRow : plainRow)(
            line.code,
            part?.description ?? '',
            `${amount(line.quantity)} ${unitWord(part?.unit)}`.trim(),
            packs === undefined || !part?.pack
              ? ''
              : packsText(packs, amount(part.pack), unitWord(part.unit)),
            `${formatDate(line.orderBy, yard.locale)}${now ? ': now' : ''}`,
            formatDate(line.needBy, yard.locale),
            line.orders.join(', '),
          ),
        ),
      },
    ],
  });
}

/** "2 of 20 kg"; what the packs of an earlier line leave over is used first. */
const packsText = (packs: bigint, pack: string, unit: string): string =>
  packs === 0n ? 'from the pack before' : `${packs} of ${pack} ${unit}`;

const unitWord = (unit: string | undefined): string =>
  unit === undefined || unit === 'each' ? '' : unit.replace('m2', 'm²');

const rounded = (value: Decimal): Decimal => roundDecimal(value, 3);

/** The packs of all lines of a part together are those that their sum takes. */
function boughtLines(
  { lines }: SupplierList,
  parts: ReadonlyMap<string, BuildPart>,
  plan: ShopPlan,
): readonly Bought[] {
  const sums = new Map<string, Decimal>();
  return lines.map((line) => {
    const part = parts.get(line.code);
    const before = sums.get(line.code) ?? ZERO;
    const after = addDecimals(before, line.quantity);
    sums.set(line.code, after);
    const packs = part?.pack && packsOf(after, part.pack) - packsOf(before, part.pack);
    return { line, part, packs, now: isDue(line, plan) };
  });
}

/** used / size, rounded up. */
function packsOf(used: Decimal, size: Decimal): bigint {
  const top = used.amount * 10n ** size.scale;
  const bottom = size.amount * 10n ** used.scale;
  return (top + bottom - 1n) / bottom;
}

function partsByCode({ orders }: Overview): ReadonlyMap<string, BuildPart> {
  return new Map(
    orders.flatMap(({ entry: { figures } }) =>
      (figures?.build.items ?? []).flatMap(({ parts }) =>
        parts.map((part): readonly [string, BuildPart] => [part.code, part]),
      ),
    ),
  );
}
