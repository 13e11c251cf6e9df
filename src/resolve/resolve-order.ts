import { type Finding, finding, stopsFigures } from '../findings/index.ts';
import { currencyOf, moneyOf } from '../money/index.ts';
import type { Catalogue, SourcedOrder, StockFile, Hull } from '../schema/index.ts';
import { cubicMetres, formatterOf, type IsoDate, metres, type Point3 } from '../units/index.ts';
import type { Build, BuildItem } from './build.ts';
import { checkCompatibility, unknownId } from './check-compatibility.ts';
import { checkExtras, checkLeftOut, checkOutboard } from './check-entries.ts';
import { checkFilledIn } from './check-filled-in.ts';
import { checkOrder } from './check-order.ts';
import { checkBrokenParts, checkPriced } from './check-parts.ts';
import { checkBought } from './check-plan.ts';
import {
  checkExchange,
  checkLaterPrices,
  checkPriceAges,
  checkPriceJumps,
} from './check-prices.ts';
import { checkRatings, peopleOf } from './check-ratings.ts';
import { checkFuel, checkWeighed } from './check-weights.ts';
import { type DatedParts, exchangeOn, partsOn, pricedOn } from './dated.ts';
import {
  extraItem,
  hullItems,
  optionItem,
  outboardItem,
  trailerItem,
  type Workshop,
  tareOf,
} from './items.ts';
import { type Entries, lookUpEntries } from './look-up.ts';
import { buildPackages } from './packages.ts';
import { placeInHull } from './hull-coordinates.ts';

interface Shop extends Workshop {
  readonly catalogue: Catalogue;
  /** Whose prices count. */
  readonly day: IsoDate;
  readonly dated: DatedParts;
}

export interface Resolved {
  /** Missing when an error stands in the way of every figure. */
  readonly build?: Build;
  readonly findings: readonly Finding[];
}

/**
 * Turns one order and the catalogue into one Build, with everything that is wrong between them.
 *
 * @param broken - ids of catalogue entries that could not be read: an order that names one cannot be resolved,
 * but is not told that the entry does not exist
 * @param day - whose prices and rates count: the order's own, unless another is asked for
 */
export function resolveOrder(
  order: SourcedOrder,
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
  day: IsoDate = pricedOn(order),
): Resolved {
  const { hull, entries, findings } = lookUpEntries(order, catalogue, broken);
  const before = [
    ...checkOrder(order),
    ...findings,
    ...checkLeftOut(order, catalogue, broken),
    ...checkExtras(order, catalogue, broken),
    ...checkMoney(order, catalogue),
    ...checkBought(order, catalogue),
    ...checkFilledIn([order, catalogue.yard, ...(hull ? [hull] : [])]),
  ];
  const currency = currencyOf(catalogue.yard.value.currency);
  if (!hull || !currency) return { findings: before };
  const dated = partsOn(day, catalogue);
  const shop: Shop = {
    hull: hull.value,
    hullPlace: hull.place(),
    parts: dated.parts,
    currency,
    catalogue,
    day,
    dated,
  };
  const items = resolveItems(order, entries, shop);
  const all = [
    ...before,
    ...checkBrokenParts(order, hull.value, entries, dated.parts, broken),
    ...checkPriced(order, hull.value, entries, catalogue.yard.value),
    ...checkTogether(order, entries, items, shop),
  ];
  if (stopsFigures(all)) return { findings: all };
  return { build: assemble(order, entries, items, shop), findings: all };
}

/** What is wrong between the items of an order, its hull and their ratings. */
function checkTogether(
  order: SourcedOrder,
  entries: Entries,
  items: readonly BuildItem[],
  { hull, catalogue, day, dated }: Shop,
): readonly Finding[] {
  const { outboard, trailer } = entries;
  const chosen = entries.options.map(({ entry, ordered, place }) => ({
    option: entry,
    quantity: ordered.quantity,
    place,
  }));
  const rated = {
    hull,
    ...fittedOutboard(order, outboard),
    ...(trailer && { trailer: trailer.value }),
  };
  const yard = catalogue.yard.value;
  const format = formatterOf(yard);
  return [
    ...checkCompatibility(chosen, hull, catalogue),
    ...(outboard ? checkOutboard(order, outboard, chosen, catalogue) : []),
    ...checkRatings(order, rated, format),
    ...checkFuel(order, fuelTank(items, hull, outboard), format),
    ...checkWeighed(items),
    ...checkPriceAges(items, day, dated, yard),
    ...checkPriceJumps(items, dated, catalogue),
    ...checkLaterPrices(items, day, dated, order),
    ...checkExchange(items, day, yard, order),
    ...items
      .filter((item) => !item.placed)
      .map((item) =>
        finding('ITEM_NOT_PLACED', item.place, {
          received: `${item.name}, ${format.fineMass(item.mass)}`,
        }),
      ),
  ];
}

function assemble(
  order: SourcedOrder,
  entries: Entries,
  items: readonly BuildItem[],
  shop: Shop,
): Build {
  const { value } = order;
  const { hull, catalogue, currency, day } = shop;
  const left = new Set(value.leaveOutCharges.map(({ charge }) => charge));
  const applies = {
    always: true,
    outboard: entries.outboard !== undefined,
    trailer: entries.trailer !== undefined,
  };
  return {
    order: {
      ...value,
      boat: {
        ...value.boat,
        people: peopleOf(value, hull),
        water: value.boat.water ?? hull.water ?? catalogue.yard.value.water,
      },
    },
    yard: catalogue.yard.value,
    currency,
    hull,
    ...fittedOutboard(order, entries.outboard),
    ...(entries.trailer && {
      trailer: {
        ...entries.trailer.value,
        tare: tareOf(entries.trailer.value, hull, shop.parts),
      },
    }),
    outboards: [...catalogue.outboards.values()].map((one) => one.value),
    items,
    tank: fuelTank(items, hull, entries.outboard),
    charges: [...catalogue.charges.values()]
      .filter(({ value: charge }) => applies[charge.when] && !left.has(charge.id))
      .map(({ value: { id, name, amount, taxed } }) => ({
        id,
        name,
        amount: moneyOf(amount, currency),
        taxed: taxed === 'yes',
      })),
    materials: new Map([...catalogue.materials].map(([part, { value: one }]) => [part, one])),
    ...(catalogue.stock && { stock: stockOf(catalogue.stock.value) }),
    packages: buildPackages(entries.packages),
    pricedOn: day,
    exchange: exchangeOn(day, catalogue.yard.value),
    place: (path) => order.place(path),
  };
}

function stockOf({ counted, stock }: StockFile): NonNullable<Build['stock']> {
  return {
    counted,
    held: new Map(stock.map(({ part, quantity }) => [part, quantity])),
  };
}

function resolveItems(order: SourcedOrder, entries: Entries, shop: Workshop): readonly BuildItem[] {
  const { value } = order;
  const byGroup = entries.options.toSorted((a, b) => a.entry.groupOrder - b.entry.groupOrder);
  const outboard =
    entries.outboard && value.outboard
      ? outboardItem(entries.outboard, value.outboard, order.place(['outboard']), shop)
      : undefined;
  return [
    ...hullItems(shop),
    ...byGroup.map(({ entry, ordered, place }) => optionItem(entry, ordered, place, shop)),
    ...value.extras.map((extra, index) =>
      extraItem(extra, index, order.place(['extras', index]), shop),
    ),
    ...(outboard ? [outboard] : []),
    ...(entries.trailer ? [trailerItem(entries.trailer, order.place(['trailer']), shop)] : []),
  ];
}

function fittedOutboard(
  { value }: SourcedOrder,
  entry: Entries['outboard'],
): Pick<Build, 'outboard'> {
  const shaft = value.outboard?.shaft;
  const mass = shaft && entry?.value.shafts[shaft]?.mass;
  return entry && shaft && mass !== undefined
    ? { outboard: { model: entry.value, shaft, mass } }
    : {};
}

/** In the tanks of the hull and those that are ordered, filled alike; without any where the hull file says. */
function fuelTank(
  items: readonly BuildItem[],
  hull: Hull,
  outboard: Entries['outboard'],
): Build['tank'] {
  const own = placeInHull(hull.tank, hull.dimensions);
  const tanks = [
    { at: own, holds: hull.tankVolume ?? 0 },
    ...items.flatMap(({ float, at, quantity }) =>
      float?.fuelTank === undefined ? [] : [{ at, holds: float.fuelTank * quantity }],
    ),
  ];
  const whole = tanks.reduce((sum, { holds }) => sum + holds, 0);
  const portable = cubicMetres(outboard?.value.fuel ?? 0);
  const builtIn = cubicMetres(whole);
  if (whole === 0) return { at: own, builtIn, portable };
  const along = (axis: keyof Point3) =>
    metres(tanks.reduce((sum, { at, holds }) => sum + at[axis] * holds, 0) / whole);
  return { at: { x: along('x'), y: along('y'), z: along('z') }, builtIn, portable };
}

/** Findings of what an order says of money against the yard: the class of its discount, an export without a law. */
function checkMoney(order: SourcedOrder, { yard }: Catalogue): readonly Finding[] {
  const { discount, zeroRated } = order.value;
  const classes = Object.keys(yard.value.margins);
  const findings: Finding[] = [];
  if (discount?.class !== undefined && !classes.includes(discount.class)) {
    const place = order.place(['discount', 'class']);
    findings.push(unknownId('margin class', discount.class, classes, place));
  }
  if (zeroRated && yard.value.tax.zeroRated === undefined) {
    findings.push(
      finding('WRONG_VALUE', order.place(['zeroRated']), {
        received: `an export without ${yard.value.tax.name}`,
        expected: 'the law that allows it, as zeroRated: of the tax in the yard file',
      }),
    );
  }
  return findings;
}
