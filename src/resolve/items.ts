import {
  addMoney,
  type Currency,
  divideToMinorUnit,
  type Money,
  moneyOf,
  timesDecimal,
} from '../money/index.ts';
import type { Place } from '../findings/index.ts';
import type {
  GroupedOption,
  Hull,
  ListedPart,
  Option,
  Order,
  Outboard,
  Shaft,
  Sourced,
  Trailer,
} from '../schema/index.ts';
import {
  amperes,
  type Decimal,
  type Kilograms,
  kilograms,
  type Point3,
  ZERO,
} from '../units/index.ts';
import type { BuildItem, BuildPart, ElectricFacts } from './build.ts';
import { floatFacts, optionKey } from './float-facts.ts';
import { layUpOfItem } from './layup-of-item.ts';
import { massOfParts, resolveHours, resolveParts } from './parts.ts';
import { helmOf, middleOf, midway, outboardCentre, placeInHull } from './hull-coordinates.ts';

/** What every item is resolved against. */
export interface Workshop {
  readonly hull: Hull;
  readonly hullPlace: Place;
  /** The price lists of the day that the order is priced on. */
  readonly parts: ReadonlyMap<string, ListedPart>;
  readonly currency: Currency;
}

type OrderedOption = Order['options'][number];
type Extra = Order['extras'][number];

/** Groups of what is not an option; options bring the group of their file. */
export const GROUPS = {
  boat: 'Hull',
  extras: 'One-off items',
  outboard: 'Outboard',
  trailer: 'Trailer',
} as const;

/** The moulded shell and what every boat of the hull is fitted with. */
export function hullItems({ hull, hullPlace, parts, currency }: Workshop): readonly BuildItem[] {
  const common = {
    group: GROUPS.boat,
    notes: [],
    marginClass: hull.class,
    quantity: 1,
    massGiven: true,
    placed: true,
    current: amperes(0),
    serial: false,
  };
  const made = (part: Hull['shell'] | Hull['structure']) => ({
    ...common,
    parts: resolveParts(part.parts, 1, hull, parts),
    hours: resolveHours(part.hours, 1, hull),
    mass: part.mass,
    at: placeInHull(part.at, hull.dimensions),
    place: hullPlace,
  });
  const structure = made(hull.structure);
  return [
    {
      ...made(hull.shell),
      key: 'shell',
      kind: 'shell',
      name: `${hull.name} hull shell`,
      otherCost: mouldCharge(hull, currency),
    },
    {
      ...structure,
      key: 'structure',
      kind: 'structure',
      ...layUpOfItem(hull.structure.laminate, structure),
      name: `${hull.name} structure and standard fittings`,
    },
  ];
}

/** Wear of the moulds, and each boat's part of what they cost to make. */
function mouldCharge({ moulds, mould }: Hull, currency: Currency): Money {
  const wear = moneyOf(moulds, currency);
  if (!mould) return wear;
  const boats = { amount: BigInt(mould.boats), scale: 0n };
  return addMoney(wear, divideToMinorUnit(moneyOf(mould.cost, currency), boats));
}

/** An option as ordered. */
export function optionItem(
  option: GroupedOption,
  ordered: OrderedOption,
  place: Place,
  shop: Workshop,
): BuildItem {
  const { value } = option;
  const at = ('at' in ordered ? ordered.at : undefined) ?? value.at;
  const orderNote = 'note' in ordered ? ordered.note : undefined;
  const notes = [value.note, orderNote].filter((note) => note !== undefined);
  const fitted = fittedItem(value, ordered.quantity, at, shop);
  return {
    ...fitted,
    key: optionKey(value.id),
    kind: 'option',
    group: option.group,
    notes,
    serial: value.serial,
    performance: performanceOf(value),
    electrics: electricFacts(value),
    float: floatFacts(value, shop.hull),
    ...layUpOfItem(value.laminate, fitted),
    ...priced(value.price, ordered.quantity, shop.currency),
    place,
  };
}

function performanceOf({
  helm,
  bowMotor,
  holdingBattery,
  appendage,
}: Option): NonNullable<BuildItem['performance']> {
  return { helm, bowMotor, holdingBattery, appendage };
}
const electricFacts = ({ circuit, battery, charger, pump, panel }: Option): ElectricFacts => ({
  circuit,
  battery,
  charger,
  pump,
  panel,
});

/** A one-off item of the order itself. */
export function extraItem(extra: Extra, index: number, place: Place, shop: Workshop): BuildItem {
  return {
    ...fittedItem(extra, extra.quantity, extra.at, shop),
    key: `extra:${index + 1}`,
    kind: 'extra',
    group: GROUPS.extras,
    notes: extra.note === undefined ? [] : [extra.note],
    serial: false,
    ...(extra.circuit && { electrics: { circuit: extra.circuit } }),
    ...(extra.cost && { otherCost: times(extra.cost, extra.quantity, shop.currency) }),
    ...priced(extra.price, extra.quantity, shop.currency),
    place,
  };
}

/** The outboard on the transom; undefined when it does not come with that shaft. */
export function outboardItem(
  { value }: Sourced<Outboard>,
  { shaft, note }: { readonly shaft: Shaft; readonly note?: string | undefined },
  place: Place,
  { hull, parts }: Workshop,
): BuildItem | undefined {
  const bought = value.shafts[shaft];
  if (!bought) return undefined;
  const beside = resolveParts(value.parts, 1, hull, parts);
  const at = outboardCentre(hull.dimensions);
  return {
    key: 'outboard',
    kind: 'outboard',
    group: GROUPS.outboard,
    name: `${value.name}, ${shaft} shaft`,
    notes: note === undefined ? [] : [note],
    marginClass: value.class,
    quantity: 1,
    parts: [...resolveParts([oneOf(bought.part)], 1, hull, parts), ...beside],
    hours: resolveHours(value.hours, 1, hull),
    mass: bought.mass,
    massGiven: false,
    at,
    rigging: { mass: massOfParts(beside), at: midway(at, helmOf(hull, value)) },
    placed: true,
    current: amperes(0),
    serial: true,
    place,
  };
}

const oneOf = (part: string) => ({ part, quantity: { amount: 1n, scale: 0n } });

const trailerParts = (
  { part, parts: beside }: Trailer,
  hull: Hull,
  parts: Workshop['parts'],
): readonly BuildPart[] => resolveParts([oneOf(part), ...beside], 1, hull, parts);

/** Mass of the empty trailer with all that is listed under it. */
export const tareOf = (trailer: Trailer, hull: Hull, parts: Workshop['parts']): Kilograms =>
  trailer.tare ?? massOfParts(trailerParts(trailer, hull, parts));

/** The trailer: no part of the boat's centre of mass. */
export function trailerItem(
  { value }: Sourced<Trailer>,
  place: Place,
  { hull, parts }: Workshop,
): BuildItem {
  return {
    key: 'trailer',
    kind: 'trailer',
    group: GROUPS.trailer,
    name: value.name,
    notes: [],
    marginClass: value.class,
    quantity: 1,
    parts: trailerParts(value, hull, parts),
    hours: resolveHours(value.hours, 1, hull),
    mass: tareOf(value, hull, parts),
    massGiven: value.tare !== undefined,
    at: middleOf(hull.dimensions),
    placed: true,
    current: amperes(0),
    serial: true,
    place,
  };
}

type FittedFacts = Pick<
  Option,
  'name' | 'description' | 'free' | 'class' | 'parts' | 'hours' | 'mass' | 'current'
>;

function fittedItem(
  facts: FittedFacts,
  quantity: number,
  position: Option['at'],
  { hull, parts }: Workshop,
) {
  const used = resolveParts(facts.parts, quantity, hull, parts);
  const mass = facts.mass === undefined ? massOfParts(used) : kilograms(facts.mass * quantity);
  const at: Point3 = position ? placeInHull(position, hull.dimensions) : middleOf(hull.dimensions);
  return {
    name: facts.name,
    ...(facts.description !== undefined && { description: facts.description }),
    ...(facts.free !== undefined && { free: facts.free }),
    marginClass: facts.class,
    quantity,
    parts: used,
    hours: resolveHours(facts.hours, quantity, hull),
    mass,
    massGiven: facts.mass !== undefined,
    at,
    placed: position !== undefined || mass === 0,
    current: amperes((facts.current ?? 0) * quantity),
  };
}

function priced(
  price: Decimal | undefined,
  quantity: number,
  currency: Currency,
): { fixedPrice?: Money } {
  return price === undefined ? {} : { fixedPrice: times(price, quantity, currency) };
}

function times(each: Decimal, quantity: number, currency: Currency): Money {
  return timesDecimal(moneyOf(each, currency), { amount: BigInt(quantity), scale: ZERO.scale });
}
