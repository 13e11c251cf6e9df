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
  ONE,
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

/** One line as bought: the part's facts, and what it takes beyond that of the lines before it. */
interface Bought {
  readonly line: PurchaseLine;
  readonly part: BuildPart | undefined;
  /** Whole pieces, else hundredths; none when what is bought before is enough. */
  readonly quantity: Decimal;
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
  if ('notComputed' in plan) return csvText([COLUMNS]);
  const rows = plan.purchases.flatMap((list) =>
    boughtLines(list, parts, plan).map(({ line, part, quantity, packs, now }) => [
      list.supplier,
      yard.suppliers[list.supplier]?.name ?? list.supplier,
      line.code,
      part?.description ?? '',
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
  const name = facts?.name ?? supplier;
  const lines = boughtLines(list, parts, plan);
  const format = createFormatter(yard.locale, yard.units);
  const amount = (value: Decimal): string => {
    const [, fraction = ''] = decimalToShortText(value).split('.');
    return format.number(decimalToNumber(value), fraction.length);
  };
  const inPacks = lines.some(({ packs }) => packs !== undefined);
  const packsCell = ({ packs, part }: Bought): readonly string[] => {
    if (!inPacks) return [];
    return [packs === undefined || !part?.pack ? '' : packsText(packs, part, amount(part.pack))];
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
          ...(inPacks ? [textColumn('Packs')] : []),
          textColumn('Order by'),
          textColumn('Needed'),
          textColumn('For'),
        ],
        rows: lines.map((bought) =>
          (bought.now ? flagRow : plainRow)(
            bought.line.code,
            bought.part?.description ?? '',
            `${amount(bought.quantity)} ${unitWord(bought.part?.unit)}`.trim(),
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
  packs === 0n ? 'from the pack before' : `${packs} of ${pack} ${unitWord(unit)}`.trim();

const unitWord = (unit: string | undefined): string =>
  unit === undefined || unit === 'each' ? '' : unit.replace('m2', 'm²');

/** Units of which only whole ones are sold. */
const WHOLE: ReadonlySet<string> = new Set(['each', 'set', 'sheet']);
const HUNDREDTH: Decimal = { amount: 1n, scale: 2n };

/** What all lines of a part buy together is what their sum takes, in pieces as in packs. */
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
    const step = part && WHOLE.has(part.unit) ? ONE : HUNDREDTH;
    const steps = timesIn(after, step) - timesIn(before, step);
    return {
      line,
      part,
      quantity: { amount: steps * step.amount, scale: step.scale },
      packs: part?.pack && timesIn(after, part.pack) - timesIn(before, part.pack),
      now: isDue(line, plan),
    };
  });
}

/** used / size, rounded up. */
function timesIn(used: Decimal, size: Decimal): bigint {
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
