import { figureOrders, type FiguredOrder, type Priced, priceOn } from '../figures/index.ts';
import type { Finding } from '../findings/index.ts';
import { type IssuedQuote, issuedByNumber } from '../issued/index.ts';
import { type Overview, overviewOrders, planShop, type ShopPlan } from '../plan/index.ts';
import { readWorkspace } from '../read/index.ts';
import { checkCatalogue } from '../resolve/index.ts';
import type { Catalogue, SourcedOrder } from '../schema/index.ts';
import { today } from './today.ts';
import type { NotComputed } from '../units/index.ts';

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
  /** The quotes that were sent, by number, first revision first. */
  readonly issued: ReadonlyMap<string, readonly IssuedQuote[]>;
  readonly brokenOrders: readonly { readonly file: string; readonly number?: string }[];
  readonly sources: ReadonlyMap<string, string>;
}

/**
 * Reads a workspace and computes every order that can be.
 *
 * @param earlier - the same workspace as it was; an order is computed again only when its file or
 *   the catalogue has changed since
 */
export function loadWorkspace(folder: string, earlier?: LoadedWorkspace): LoadedWorkspace {
  const { catalogue, orders, findings, sources, brokenIds, brokenOrders, issued } =
    readWorkspace(folder);
  const numbers = [...orders.map(({ value }) => value.number), ...numbersOf(brokenOrders)];
  const sent = issuedByNumber(issued, new Set(numbers));
  const day = today();
  const common = { brokenOrders, sources, issued: sent.byNumber };
  const found = [...findings, ...sent.findings];
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
  const figured = withoutRefused(computed, plan);
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

/** An order that cannot be planned has an error, so it has no figures and no documents. */
function withoutRefused(
  entries: readonly FiguredOrder[],
  plan: ShopPlan | undefined,
): readonly FiguredOrder[] {
  const refused = new Set(plan?.plan.refused.map(({ order }) => order.number));
  return entries.map((entry) =>
    refused.has(entry.order.value.number)
      ? { order: entry.order, findings: entry.findings, alternatives: [], variations: [] }
      : entry,
  );
}

/** Numbers of the orders that could not be read, of those whose number could. */
export function numbersOf(broken: LoadedWorkspace['brokenOrders']): readonly string[] {
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

/** True when an order of that number was read, broken or sound. */
export function knowsOrder({ orders, brokenOrders }: LoadedWorkspace, number: string): boolean {
  return (
    orders.some(({ order }) => order.value.number === number) ||
    numbersOf(brokenOrders).includes(number)
  );
}
