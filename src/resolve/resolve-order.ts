import { type Finding, finding, hasErrors } from '../findings/index.ts';
import { currencyOf, moneyOf } from '../money/index.ts';
import type { Catalogue, Sourced, SourcedOrder } from '../schema/index.ts';
import { createFormatter, type IsoDate } from '../units/index.ts';
import type { Build, BuildItem } from './build.ts';
import {
  checkCompatibility,
  checkRequirements,
  type Chosen,
  unknownId,
} from './check-compatibility.ts';
import { checkOrder } from './check-order.ts';
import { checkPriceAges } from './check-prices.ts';
import { checkRatings } from './check-ratings.ts';
import {
  extraItem,
  hullItems,
  optionItem,
  outboardItem,
  trailerItem,
  type Workshop,
} from './items.ts';
import { placeInHull } from './scale.ts';

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
 */
export function resolveOrder(
  order: SourcedOrder,
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
): Resolved {
  const { value } = order;
  const lookUp = <T>(
    kind: string,
    id: string,
    known: ReadonlyMap<string, T>,
    path: readonly (string | number)[],
  ) => found(kind, id, known, order.place(path), broken);
  const hull = lookUp('hull', value.hull, catalogue.hulls, ['hull']);
  const outboard =
    value.outboard &&
    lookUp('outboard', value.outboard.model, catalogue.outboards, ['outboard', 'model']);
  const trailer =
    value.trailer === undefined
      ? undefined
      : lookUp('trailer', value.trailer, catalogue.trailers, ['trailer']);
  const options = value.options.map((ordered, index) => ({
    ordered,
    place: order.place(['options', index]),
    ...lookUp('option', ordered.option, catalogue.options, ['options', index]),
  }));
  const findings: Finding[] = [
    ...checkOrder(order),
    ...[hull, outboard, trailer, ...options].flatMap((one) => one?.findings ?? []),
    ...checkLeftOut(order, catalogue),
    ...checkExtras(order, catalogue),
  ];
  const currency = currencyOf(catalogue.yard.value.currency);
  if (!hull.entry || !currency) return { findings };

  const shop: Workshop = {
    hull: hull.entry.value,
    hullPlace: hull.entry.place(),
    catalogue,
    currency,
  };
  const chosen: readonly Chosen[] = options.flatMap(({ entry, ordered, place }) =>
    entry ? [{ option: entry, quantity: ordered.quantity, place }] : [],
  );
  const items = resolveItems(
    order,
    { options, outboard: outboard?.entry, trailer: trailer?.entry },
    shop,
  );
  const fitted = fittedOutboard(order, outboard?.entry);
  findings.push(
    ...checkCompatibility(chosen, shop.hull, catalogue),
    ...(outboard?.entry ? checkOutboard(order, outboard.entry, chosen, catalogue) : []),
    ...checkRatings(
      order,
      { hull: shop.hull, ...fitted, ...(trailer?.entry && { trailer: trailer.entry.value }) },
      createFormatter(catalogue.yard.value.locale, catalogue.yard.value.units),
    ),
    ...checkPriceAges(items, pricedOn(order), catalogue),
    ...items
      .filter((item) => !item.placed)
      .map((item) =>
        finding('ITEM_NOT_PLACED', item.place, {
          received: `${item.name}, ${item.mass.toFixed(1)} kg`,
        }),
      ),
  );
  if (hasErrors(findings)) return { findings };

  const left = new Set(value.leaveOutCharges.map(({ charge }) => charge));
  const applies = {
    always: true,
    outboard: outboard !== undefined,
    trailer: trailer !== undefined,
  };
  const build: Build = {
    order: value,
    yard: catalogue.yard.value,
    currency,
    hull: shop.hull,
    ...fitted,
    ...(trailer?.entry && { trailer: trailer.entry.value }),
    items,
    tank: placeInHull(shop.hull.tank, shop.hull.dimensions),
    charges: [...catalogue.charges.values()]
      .filter(({ value: charge }) => applies[charge.when] && !left.has(charge.id))
      .map(({ value: { id, name, amount } }) => ({ id, name, amount: moneyOf(amount, currency) })),
    place: order.place(),
  };
  return { build, findings };
}

/** The day whose prices an order has: its quote's, or its enquiry's while there is no quote. */
function pricedOn({ value: { dates } }: SourcedOrder): IsoDate {
  return dates.quoted ?? dates.enquiry;
}

interface Found<T> {
  readonly entry?: T;
  readonly findings: readonly Finding[];
}

function found<T>(
  kind: string,
  id: string,
  known: ReadonlyMap<string, T>,
  place: Finding['place'],
  broken: ReadonlySet<string>,
): Found<T> {
  const entry = known.get(id);
  if (entry !== undefined) return { entry, findings: [] };
  if (!broken.has(id)) return { findings: [unknownId(kind, id, known.keys(), place)] };
  const received = `the ${kind} "${id}", which has mistakes of its own`;
  return {
    findings: [
      finding('UNKNOWN_ID', place, { received, mend: `Mend ${id} in the catalogue first` }),
    ],
  };
}

interface Entries {
  readonly options: readonly {
    readonly entry?: NonNullable<ReturnType<Catalogue['options']['get']>>;
    readonly ordered: SourcedOrder['value']['options'][number];
    readonly place: Finding['place'];
  }[];
  readonly outboard: ReturnType<Catalogue['outboards']['get']>;
  readonly trailer: ReturnType<Catalogue['trailers']['get']>;
}

function resolveItems(order: SourcedOrder, entries: Entries, shop: Workshop): readonly BuildItem[] {
  const { value } = order;
  const byGroup = entries.options
    .flatMap(({ entry, ordered, place }) => (entry ? [{ entry, ordered, place }] : []))
    .toSorted((a, b) => a.entry.groupOrder - b.entry.groupOrder);
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

function checkOutboard(
  order: SourcedOrder,
  { value }: NonNullable<Entries['outboard']>,
  chosen: readonly Chosen[],
  catalogue: Catalogue,
): readonly Finding[] {
  const place = order.place(['outboard', 'model']);
  const ordered = new Set(chosen.map(({ option }) => option.value.id));
  const shaft = order.value.outboard?.shaft;
  const comesWith = Object.keys(value.shafts);
  const unavailable =
    shaft !== undefined && !comesWith.includes(shaft)
      ? [
          finding('DOES_NOT_FIT', order.place(['outboard', 'shaft']), {
            received: `${value.name} with a ${shaft} shaft`,
            expected: `a shaft that it comes with: ${comesWith.join(', ')}`,
            mend: 'Choose one of those shafts, or another outboard',
          }),
        ]
      : [];
  return [
    ...unavailable,
    ...checkRequirements(value.name, value.requires, ordered, place, catalogue),
  ];
}

function checkLeftOut(order: SourcedOrder, { charges }: Catalogue): readonly Finding[] {
  return order.value.leaveOutCharges.flatMap(({ charge }, index) =>
    charges.has(charge)
      ? []
      : [
          unknownId(
            'charge',
            charge,
            charges.keys(),
            order.place(['leaveOutCharges', index, 'charge']),
          ),
        ],
  );
}

function checkExtras(
  order: Sourced<SourcedOrder['value']>,
  { parts, yard }: Catalogue,
): readonly Finding[] {
  const classes = Object.keys(yard.value.margins);
  return order.value.extras.flatMap((extra, index) => [
    ...(classes.includes(extra.class)
      ? []
      : [unknownId('margin class', extra.class, classes, order.place(['extras', index, 'class']))]),
    ...extra.parts.flatMap(({ part }, at) =>
      parts.has(part)
        ? []
        : [
            unknownId(
              'part',
              part,
              parts.keys(),
              order.place(['extras', index, 'parts', at, 'part']),
            ),
          ],
    ),
  ]);
}
