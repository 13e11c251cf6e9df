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
import { csvText } from './csv.ts';
import type { SectionsView } from './plan-page.ts';
import {
  figureColumn,
  flagRow,
  plainRow,
  type Section,
  section,
  textColumn,
} from '../sections/section.ts';

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
export function purchasesView({ plan, overview, yard }: PurchasesInput): SectionsView {
  const head = {
    document: pageHead(
      yard,
      `Purchases of ${yard.shop.name}`,
      'What must be ordered for the accepted orders, from whom and by when',
    ),
    heading: 'Purchases',
    lead: `${yard.shop.name}, ${formatDate(overview.today, yard.locale)}. What the accepted orders still need, with wastage, besides what is in stock.`,
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
  return {
    ...head,
    sections: [...(lists.length > 0 ? lists : [nothing]), ...shelfSection(plan, parts, yard)],
  };
}

/** What the planned orders take from the shelf, before anything is bought. */
function shelfSection(
  { shelf }: ShopPlan,
  parts: ReadonlyMap<string, BuildPart>,
  yard: Yard,
): readonly Section[] {
  if (!shelf || shelf.taken.length === 0) return [];
  const day = (date: IsoDate): string => formatDate(date, yard.locale);
  return [
    section('shelf', 'From stock', {
      words: [
        `As counted on ${day(shelf.counted)}: the stage that starts first takes first; what it takes is neither bought nor waited for.`,
      ],
      tables: [
        {
          caption: 'Taken from stock',
          columns: [
            textColumn('Code'),
            textColumn('Part'),
            figureColumn('Quantity'),
            textColumn('From'),
            textColumn('For'),
          ],
          rows: shelf.taken.map(({ code, quantity, needBy, orders }) => {
            const part = parts.get(code);
            return plainRow(
              code,
              part?.description ?? '',
              `${amountText(quantity, yard)} ${partUnitText(part?.unit ?? 'each')}`.trim(),
              day(needBy),
              orders.join(', '),
            );
          }),
        },
      ],
    }),
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
): Section {
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
  return section(`from-${supplier}`, name, {
    words: [
      facts
        ? `${format.number(facts.leadDays, 0)} days from order to delivery.`
        : 'No supplier is named in the order; its days to deliver are those of the order.',
    ],
    tables: [
      {
        caption: `To order from ${name}`,
        columns: [
          textColumn('Code'),
          textColumn('Part'),
          figureColumn('Quantity'),
          ...(inPacks ? [textColumn('Packs')] : []),
          textColumn('Order by'),
          textColumn('Needed'),
          textColumn('For'),
        ],
        rows: lines.map((bought) =>
          (bought.now ? flagRow : plainRow)(
            bought.line.code,
            bought.part?.description ?? bought.line.name ?? '',
            `${amount(bought.quantity)} ${partUnitText(bought.part?.unit ?? 'each')}`.trim(),
            ...packsCell(bought),
            `${formatDate(bought.line.orderBy, yard.locale)}${bought.now ? ': now' : ''}`,
            formatDate(bought.line.needBy, yard.locale),
            bought.line.orders.join(', '),
          ),
        ),
      },
    ],
  });
}

/** "2 of 20 kg"; what the packs of an earlier line leave over is used first. */
const packsText = (packs: bigint, { unit }: BuildPart, pack: string): string =>
  packs === 0n ? 'from the pack before' : `${packs} of ${pack} ${partUnitText(unit)}`.trim();
