import type { CustomerFigures } from '../../figures/index.ts';
import { type Formatter, formatterOf, percentText } from '../../units/index.ts';
import { floatKeyFigures } from '../sections/float-customer.ts';
import { figureOf } from '../sections/fact-words.ts';
import { found, type FoundFigure } from '../sections/method-notes.ts';
import { capital, list } from '../sections/words.ts';
import { roadFigures } from './road-figures.ts';
import { rangeFigure, speedFigure } from './speed-figures.ts';

/** The figures that a customer asks about, each with what it depends on and the methods that found it. */
export function keyFigures(figures: CustomerFigures): readonly FoundFigure[] {
  const { build } = figures;
  const format = formatterOf(build.yard);
  const { dimensions } = build.hull;
  return [
    found('Length of the hull', format.length(dimensions.length), 'Without outboard and fittings.'),
    found('Beam', format.length(dimensions.beam), 'At the widest place.'),
    boatMass(figures, format),
    ...towedMass(figures, format),
    outboardPower(figures, format),
    people(figures, format),
    load(figures, format),
    ...speedFigure(figures),
    ...rangeFigure(figures),
    ...roadFigures(figures),
    ...floatKeyFigures(figures, format),
  ];
}

/** What methods have to say of this boat: the allowance for what is not listed, and the ratings by name. */
export function besideMethods({ build: { yard }, limits }: CustomerFigures): {
  readonly masses: string;
  readonly rating: string;
} {
  const ratings = 'notComputed' in limits.ratings ? [] : limits.ratings;
  return {
    masses: `The allowance is ${percentText(yard.massContingency)}.`,
    rating: ratings.map(({ name, caution }) => `${capital(name)}: ${caution}.`).join(' '),
  };
}

function boatMass({ build, facts }: CustomerFigures, format: Formatter): FoundFigure {
  const { outboard, order } = build;
  const fuel = order.fuel === undefined || order.fuel === 0 ? undefined : format.volume(order.fuel);
  const aboard = [
    ...(outboard === undefined ? [] : ['the outboard']),
    ...(fuel === undefined ? [] : [`${fuel} of fuel`]),
  ];
  const lacking = outboard === undefined ? 'without an outboard, nobody aboard' : 'nobody aboard';
  const condition = aboard.length === 0 ? capital(lacking) : `With ${list(aboard)}, ${lacking}`;
  return figureOf(facts.mass.ready, format, `${condition}. Weighed at handover.`);
}

function towedMass(
  { build: { trailer }, facts }: CustomerFigures,
  format: Formatter,
): readonly FoundFigure[] {
  const { towed } = facts.mass;
  if (!trailer || !towed) return [];
  return [
    figureOf(
      towed,
      format,
      `Boat, fuel, loose gear and trailer. The trailer is rated to ${format.mass(trailer.rating)}. Check what your vehicle may tow; weighed at handover.`,
    ),
  ];
}

function outboardPower({ build, limits }: CustomerFigures, format: Formatter): FoundFigure {
  const { ratings } = build.hull;
  const { power, by } = limits.carries.power;
  const most = `At most ${format.power(power)}, limited by ${by}, and an outboard of ${format.mass(ratings.engineMass)}`;
  return build.outboard
    ? found(
        'Outboard',
        format.power(build.outboard.model.power),
        `It weighs ${format.mass(build.outboard.mass)}. ${most}.`,
        'rating',
      )
    : found('Outboard', 'not in this price', `${most}, ${build.hull.shaft} shaft.`, 'rating');
}

/** What each method that the yard goes by makes of the people, and what limits them. */
function estimates({ limits }: CustomerFigures): string {
  const ratings = 'notComputed' in limits.ratings ? [] : limits.ratings;
  return ratings
    .flatMap(({ name, people: most, governing }) =>
      typeof most === 'number' && governing
        ? [` ${capital(name)}: ${most}, ${governing.words}.`]
        : [],
    )
    .join('');
}

function people(figures: CustomerFigures, format: Formatter): FoundFigure {
  const {
    build,
    limits: { carries },
  } = figures;
  return found(
    'People',
    format.number(build.order.boat.people, 0),
    `As ordered. At most ${format.number(carries.people.people, 0)}, ${carries.people.words}.${estimates(figures)}`,
    'carries',
    'rating',
  );
}

function load({ build, facts, limits }: CustomerFigures, format: Formatter): FoundFigure {
  const { mass: most, by } = limits.carries.load;
  const { personMass, gearPerPerson } = build.yard;
  return figureOf(
    facts.mass.load,
    format,
    `People at ${format.mass(personMass)} and ${format.mass(gearPerPerson)} of gear each, fuel and fitted items. At most ${format.mass(most)}, limited by ${by}.`,
    'carries',
  );
}
