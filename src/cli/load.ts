import { figureOrders, type FiguredOrder, type Priced, priceOn } from '../figures/index.ts';
import { type Finding, finding } from '../findings/index.ts';
import {
  checkAcceptance,
  type IssuedQuote,
  issuedByNumber,
  type IssuedQuotes,
} from '../issued/index.ts';
import { type Overview, overviewOrders, planShop, type ShopPlan } from '../plan/index.ts';
import { type IssuedFiles, type Ledger, readWorkspace } from '../read/index.ts';
import { checkCatalogue } from '../resolve/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import { today } from './today.ts';
import type { IsoDate, NotComputed } from '../units/index.ts';

export interface LoadedWorkspace {
  readonly catalogue?: Catalogue;
  readonly orders: readonly FiguredOrder[];
  /** The same before the plan refused any. */
  readonly computed: readonly FiguredOrder[];
  /** All orders as they stand today; none of them without a catalogue. */
  readonly overview: Overview;
  /** Why there is none, when there is a catalogue. */
  readonly plan?: ShopPlan | NotComputed;
  /** Findings of files and of the catalogue; those of an order stand with the order. */
  readonly findings: readonly Finding[];
  /** The quotes that were sent and are as they were, by number, first revision first. */
  readonly issued: ReadonlyMap<string, readonly IssuedQuote[]>;
  readonly ledger: Ledger;
  /** Names of files among the issued quotes that the ledger does not name. */
  readonly strays: readonly string[];
  /** Orders as they were read, by number. */
  readonly read: ReadonlyMap<string, SourcedOrder>;
  /** True when the ledger itself is damaged: then nothing may be issued. */
  readonly ledgerBroken: boolean;
  readonly brokenOrders: readonly { readonly file: string; readonly number?: string }[];
  readonly sources: ReadonlyMap<string, string>;
}

/**
 * Reads a workspace and computes every order that can be.
 *
 * @param day - left out: today
 * @param earlier - the same workspace as it was; an order is computed again only when its file or
 *   the catalogue has changed since
 */
export function loadWorkspace(
  folder: string,
  { day = today(), earlier }: { readonly day?: IsoDate; readonly earlier?: LoadedWorkspace } = {},
): LoadedWorkspace {
  const { catalogue, orders, findings, sources, brokenIds, brokenOrders, issued } =
    readWorkspace(folder);
  const numbers = [...orders.map(({ value }) => value.number), ...numbersOf(brokenOrders)];
  const read = new Map(orders.map((order) => [order.value.number, order]));
  const sent = issuedByNumber(issued, new Set(numbers));
  const common = {
    brokenOrders,
    sources,
    issued: sent.byNumber,
    ledger: issued.ledger,
    strays: issued.strays,
    read,
    ledgerBroken: issued.faults.length > 0,
  };
  const found = [
    ...findings,
    ...issued.faults,
    ...[...sent.doubts].flatMap(([number, list]) => (read.has(number) ? [] : list)),
  ];
  if (!catalogue)
    return {
      ...common,
      orders: [],
      computed: [],
      overview: overviewOrders([], 0, day),
      findings: found,
    };
  const yard = catalogue.yard.value;
  const computed = figureOrders(orders, catalogue, brokenIds, unchanged(sources, earlier));
  const planned = planShop(computed, yard, day);
  const plan = 'notComputed' in planned ? undefined : planned;
  const figured = withoutRefused(withoutDoubtful(computed, sent, issued), plan);
  return {
    ...common,
    catalogue,
    orders: figured,
    computed,
    plan: planned,
    overview: overviewOrders(figured, yard.quoteDays, day, {
      issued: sent.byNumber,
      priced: pricedToday(figured, sent.byNumber, (order) =>
        priceOn(order, catalogue, brokenIds, day),
      ),
      ...(plan && { plan }),
    }),
    findings: [...found, ...checkCatalogue(catalogue, brokenIds)],
  };
}

/** What the orders of which a quote was sent would cost today, by number. */
function pricedToday(
  entries: readonly FiguredOrder[],
  sent: ReadonlyMap<string, readonly IssuedQuote[]>,
  priceOf: (order: SourcedOrder) => Priced | undefined,
): ReadonlyMap<string, Priced> {
  return new Map(
    entries.flatMap(({ order, quoted }) => {
      const { number } = order.value;
      const priced = quoted && sent.has(number) ? priceOf(order) : undefined;
      return priced ? [[number, priced] as const] : [];
    }),
  );
}

/** The orders of which neither their own file nor any of the catalogue has another text now, by file. */
function unchanged(
  sources: LoadedWorkspace['sources'],
  earlier: LoadedWorkspace | undefined,
): ReadonlyMap<string, FiguredOrder> {
  if (!earlier || !sameTexts(catalogueOf(sources), catalogueOf(earlier.sources))) return new Map();
  const same = earlier.computed.filter(
    ({ order }) => sources.get(order.file) === earlier.sources.get(order.file),
  );
  return new Map(same.map((one) => [one.order.file, one]));
}

const catalogueOf = (sources: LoadedWorkspace['sources']): ReadonlyMap<string, string> =>
  new Map([...sources].filter(([file]) => file.startsWith('catalogue/')));

const sameTexts = (one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): boolean =>
  one.size === other.size && [...one].every(([file, text]) => other.get(file) === text);

/**
 * An order has no documents when one of its issued quotes is not what it was, when it is agreed and names no quote
 * that stands, or when the ledger is damaged and nobody can tell whether a quote of it was sent.
 */
function withoutDoubtful(
  entries: readonly FiguredOrder[],
  { byNumber, doubts }: IssuedQuotes,
  { faults }: IssuedFiles,
): readonly FiguredOrder[] {
  return entries.map((entry) => {
    const { order } = entry;
    const { number, status } = order.value;
    const issued = byNumber.get(number) ?? [];
    const unknown = faults.length > 0 && issued.length === 0 && status !== 'enquiry';
    const found = doubts.get(number) ?? [
      ...(unknown
        ? [finding('LEDGER_IN_DOUBT', order.place(['number']), { received: number })]
        : []),
      ...checkAcceptance(order, issued),
    ];
    return found.length === 0 ? entry : withheld(entry, found);
  });
}

/** An order that cannot be planned has an error, so it has no figures and no documents. */
function withoutRefused(
  entries: readonly FiguredOrder[],
  plan: ShopPlan | undefined,
): readonly FiguredOrder[] {
  const refused = new Set(plan?.plan.refused.map(({ order }) => order.number));
  return entries.map((entry) =>
    refused.has(entry.order.value.number) ? withheld(entry, []) : entry,
  );
}

/** An order without its figures, so that no document is made of it. */
const withheld = ({ order, findings }: FiguredOrder, more: readonly Finding[]): FiguredOrder => ({
  order,
  findings: [...findings, ...more],
  alternatives: [],
  variations: [],
});

/** Numbers of the orders that could not be read, of those whose number could. */
function numbersOf(broken: LoadedWorkspace['brokenOrders']): readonly string[] {
  return broken.flatMap(({ number }) => (number === undefined ? [] : [number]));
}

/** Every finding of a workspace, or those of one order and of the catalogue. */
export function allFindings(
  { overview, findings }: LoadedWorkspace,
  only?: string,
): readonly Finding[] {
  const wanted = overview.orders.filter(
    ({ entry }) => only === undefined || entry.order.value.number === only,
  );
  return [...findings, ...wanted.flatMap((state) => state.findings)];
}

/** How many orders are named to whoever asks for one that is not there. */
const MOST_NAMED = 12;

/** Why there is nothing to do for a number: no order of it was read, broken or sound. */
export function noSuchOrder(
  { orders, brokenOrders }: LoadedWorkspace,
  number: string | undefined,
): string | undefined {
  const known = [...orders.map(({ order }) => order.value.number), ...numbersOf(brokenOrders)];
  if (number === undefined || known.includes(number)) return undefined;
  return `there is no order ${number}; the last ones are ${known.slice(-MOST_NAMED).join(', ')}`;
}
