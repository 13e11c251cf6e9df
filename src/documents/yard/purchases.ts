import { NO_SUPPLIER, type Overview, type ShopPlan, type SupplierList } from '../../plan/index.ts';
import { pageHead } from '../sections/head.ts';
import type { BuildPart } from '../../resolve/index.ts';
import type { Yard } from '../../schema/index.ts';
import {
  formatterOf,
  type Decimal,
  decimalToNumber,
  decimalToShortText,
  formatDate,
  type IsoDate,
  type NotComputed,
  partUnitText,
} from '../../units/index.ts';
import { type Bought, boughtLines, partsByCode } from './bought-lines.ts';
import { TO } from './links.ts';
import { csvText } from './csv.ts';
import type { YardPage } from '../blocks/page.ts';
import { captioned, column, heads, type Part, row, section, sentences } from '../blocks/block.ts';

interface PurchasesInput {
  readonly plan: ShopPlan | NotComputed;
  readonly overview: Overview;
  readonly yard: Yard;
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
export function purchasesView({ plan, overview, yard }: PurchasesInput): YardPage {
  const head = {
    document: pageHead(
      yard,
      `Purchases of ${yard.shop.name}`,
      'What must be ordered for the accepted orders, from whom and by when',
    ),
    heading: 'Purchases',
    lead: `${yard.shop.name}, ${formatDate(overview.today, yard.locale)}. What the accepted orders still need, with wastage, besides what is in stock.`,
    links: [TO.orders, TO.plan, { text: 'The same as CSV', page: 'purchases.csv' }],
    hasContents: false,
  };
  if ('notComputed' in plan) {
    const words = [`not computed: ${plan.notComputed}`];
    return { ...head, parts: [section('purchases', 'Purchases', ...sentences(words))] };
  }
  const parts = partsByCode(overview);
  const lists = plan.purchases.map((list) => supplierSection(list, parts, plan, yard));
  const nothing = section('purchases', 'Purchases', 'Nothing is left to order.');
  return {
    ...head,
    parts: [...(lists.length > 0 ? lists : [nothing]), ...shelfSection(plan, parts, yard)],
  };
}

/** What the planned orders take from the shelf, before anything is bought. */
function shelfSection(
  { shelf }: ShopPlan,
  parts: ReadonlyMap<string, BuildPart>,
  yard: Yard,
): readonly Part[] {
  if (!shelf || shelf.taken.length === 0) return [];
  const day = (date: IsoDate): string => formatDate(date, yard.locale);
  return [
    section(
      'shelf',
      'From stock',
      `As counted on ${day(shelf.counted)}: the stage that starts first takes first; what it takes is neither bought nor waited for.`,
      captioned(
        'Taken from stock',
        [
          ...heads('text', 'Code', 'Part'),
          column('num', 'Quantity'),
          ...heads('text', 'From', 'For'),
        ],
        shelf.taken.map(({ code, quantity, needBy, orders }) => {
          const part = parts.get(code);
          return row(
            'plain',
            code,
            part?.description ?? '',
            `${amountText(quantity, yard)} ${partUnitText(part?.unit ?? 'each')}`.trim(),
            day(needBy),
            orders.join(', '),
          );
        }),
      ),
    ),
  ];
}

/** A quantity with the decimals that it has, at most two. */
function amountText(value: Decimal, yard: Yard): string {
  const [, fraction = ''] = decimalToShortText(value).split('.');
  const format = formatterOf(yard);
  return format.number(decimalToNumber(value), Math.min(2, fraction.length));
}

/** The same as data: one row a part and day, dates as YYYY-MM-DD, quantities with a point. */
export function purchasesCsv({ plan, overview, yard }: PurchasesInput): string {
  const parts = partsByCode(overview);
  if ('notComputed' in plan) return csvText([COLUMNS]);
  const rows = plan.purchases.flatMap((list) =>
    boughtLines(list, parts, plan).map(({ line, part, quantity, packs, now }) => [
      list.supplier,
      yard.suppliers[list.supplier]?.name ?? '',
      line.code,
      part?.description ?? line.name ?? '',
      decimalToShortText(quantity),
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
): Part {
  const { supplier } = list;
  const facts = yard.suppliers[supplier];
  const name = facts?.name ?? (supplier === NO_SUPPLIER ? 'One-off items' : supplier);
  const lines = boughtLines(list, parts, plan);
  const format = formatterOf(yard);
  const amount = (value: Decimal): string => amountText(value, yard);
  const inPacks = lines.some(({ packs }) => packs !== undefined);
  const packsCell = ({ packs, part }: Bought): readonly string[] => {
    if (!inPacks) return [];
    return [packs === undefined || !part?.pack ? '' : packsText(packs, part, amount(part.pack))];
  };
  return section(
    `from-${supplier}`,
    name,
    facts
      ? `${format.number(facts.leadDays, 0)} days from order to delivery.`
      : 'No supplier is named in the order; its days to deliver are those of the order.',
    captioned(
      `To order from ${name}`,
      [
        column('text', 'Code'),
        column('text', 'Part'),
        column('num', 'Quantity'),
        ...(inPacks ? [column('text', 'Packs')] : []),
        column('text', 'Order by'),
        column('text', 'Needed'),
        column('text', 'For'),
      ],
      lines.map((bought) =>
        row(
          bought.now ? 'flag' : 'plain',
          bought.line.code,
          bought.part?.description ?? bought.line.name ?? '',
          `${amount(bought.quantity)} ${partUnitText(bought.part?.unit ?? 'each')}`.trim(),
          ...packsCell(bought),
          `${formatDate(bought.line.orderBy, yard.locale)}${bought.now ? ': now' : ''}`,
          formatDate(bought.line.needBy, yard.locale),
          bought.line.orders.join(', '),
        ),
      ),
    ),
  );
}

/** "2 of 20 kg"; what the packs of an earlier line leave over is used first. */
const packsText = (packs: bigint, { unit }: BuildPart, pack: string): string =>
  packs === 0n ? 'from the pack before' : `${packs} of ${pack} ${partUnitText(unit)}`.trim();
