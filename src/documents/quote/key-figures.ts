import type { CustomerFigures } from '../../figures/index.ts';
import { type Formatter, formatterOf, percentText } from '../../units/index.ts';
import { floatKeyFigures } from '../sections/float-customer.ts';
import { performanceFigures } from './speed-figures.ts';
import type { KeyFigure } from './types.ts';
import { capital } from '../sections/words.ts';

const TO_CONFIRM = 'to be confirmed by test under local rules';

/** The figures that a customer asks about first, each with how it was found and who confirms it. */
export function keyFigures(figures: CustomerFigures): readonly KeyFigure[] {
  const { build } = figures;
  const format = formatterOf(build.yard);
  const { dimensions } = build.hull;
  return [
    {
      label: 'Length of the hull',
      value: format.length(dimensions.length),
      method: 'From the mould, without outboard and fittings.',
    },
    { label: 'Beam', value: format.length(dimensions.beam), method: 'From the mould, greatest.' },
    boatMass(figures, format),
    ...trailerMass(figures, format),
    outboardPower(figures, format),
    people(figures, format),
    load(figures, format),
    ...performanceFigures(figures),
    ...floatKeyFigures(figures, format),
  ];
}

function boatMass({ build, mass }: CustomerFigures, format: Formatter): KeyFigure {
  const { outboard, order, yard } = build;
  const fuel = order.fuel === undefined || order.fuel === 0 ? undefined : format.volume(order.fuel);
  const aboard = [
    ...(outboard === undefined ? [] : ['the outboard']),
    ...(fuel === undefined ? [] : [`${fuel} of fuel`]),
  ];
  const lacking = outboard === undefined ? 'without an outboard, nobody aboard' : 'nobody aboard';
  const condition =
    aboard.length === 0 ? capital(lacking) : `With ${aboard.join(' and ')}, ${lacking}`;
  return {
    label: 'Mass, ready to launch',
    value: format.mass(mass.ready.mass),
    method: `${condition}. Computed from the items with ${percentText(yard.massContingency)} contingency; weighed at handover.`,
  };
}

function trailerMass(
  { build, mass, trailerLoad }: CustomerFigures,
  format: Formatter,
): KeyFigure[] {
  if (!build.trailer || !trailerLoad) return [];
  return [
    {
      label: 'Mass on the trailer',
      value: format.mass(mass.onTrailer),
      method: `Boat, fuel, loose gear and trailer, computed; the trailer is rated to ${format.mass(build.trailer.rating)}. Check what your vehicle may tow; weighed at handover.`,
    },
  ];
}

function outboardPower({ build }: CustomerFigures, format: Formatter): KeyFigure {
  const { ratings } = build.hull;
  const most = `The shop rates this hull for up to ${format.power(ratings.power)}`;
  return build.outboard
    ? {
        label: 'Outboard',
        value: format.power(build.outboard.model.power),
        method: `${most}, ${TO_CONFIRM}. It puts ${format.mass(build.outboard.mass)} on the transom; the shop allows ${format.mass(ratings.engineMass)} there.`,
      }
    : {
        label: 'Outboard',
        value: 'not in this price',
        method: `${most} and ${format.mass(ratings.engineMass)}, ${build.hull.shaft} shaft, ${TO_CONFIRM}.`,
      };
}

type Rating = Exclude<
  CustomerFigures['limits']['ratings'],
  { readonly notComputed: string }
>[number];

/** What keeps the number of people where it is, and what would take more. */
function governingWords({ by, not: [next] }: NonNullable<Rating['governing']>): string {
  const sets = `${by.join(' and ')} ${by.length === 1 ? 'sets' : 'set'} that`;
  return next ? `${sets}, while ${next.name} would take ${next.people}` : sets;
}

/** What each method that the yard goes by makes of the people, and what binds. */
function estimates({ limits }: CustomerFigures): string {
  const ratings = 'notComputed' in limits.ratings ? [] : limits.ratings;
  return ratings
    .flatMap(({ name, people: most, governing }) =>
      typeof most === 'number' && governing
        ? [` ${name}, estimated: ${most}; ${governingWords(governing)}.`]
        : [],
    )
    .join('');
}

function people(figures: CustomerFigures, format: Formatter): KeyFigure {
  const { build } = figures;
  return {
    label: 'People',
    value: format.number(build.order.boat.people, 0),
    method: `As ordered. The shop rates this hull for up to ${format.number(build.hull.ratings.people, 0)}, ${TO_CONFIRM}.${estimates(figures)}`,
  };
}

function load({ build, mass }: CustomerFigures, format: Formatter): KeyFigure {
  const { ratings } = build.hull;
  const { personMass, gearPerPerson } = build.yard;
  return {
    label: 'Load as ordered',
    value: format.mass(mass.load),
    method: `People at ${format.mass(personMass)} and ${format.mass(gearPerPerson)} of gear each, fuel and fitted items. The shop rates this hull for up to ${format.mass(ratings.load)}, ${TO_CONFIRM}.`,
  };
}
