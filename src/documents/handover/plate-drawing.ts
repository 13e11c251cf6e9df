import { drawCapacityPlate, type PlateFact } from '../../draw/index.ts';
import type { CustomerFigures } from '../../figures/index.ts';
import { formatterOf } from '../../units/index.ts';
import { type CaptionedPicture, pictureOf } from '../sections/picture.ts';
import { boatName, capital } from '../sections/words.ts';

/** A draft of the capacity plate; nothing where no method could rate the boat. */
export function plateDrawing(
  figures: CustomerFigures,
  fontCss: string,
): readonly CaptionedPicture[] {
  const { build, limits } = figures;
  if ('notComputed' in limits.ratings) return [];
  const drawing = drawCapacityPlate({
    standing: limits.plate.standing,
    boat: boatName(build),
    facts: [...shopFacts(figures), ...methodFacts(figures)],
    cautions: cautionsOf(figures),
    fontCss,
  });
  const caption =
    'Draft of the capacity plate: the shop’s ratings beside estimates by method. Not valid until signed by the builder.';
  return [{ ...pictureOf(drawing), caption }];
}

/** What the shop stands for; what is not settled yet is blank. */
function shopFacts({ build }: CustomerFigures): readonly PlateFact[] {
  const { hull, yard, order } = build;
  const format = formatterOf(yard);
  return [
    { label: 'Builder', value: yard.shop.name },
    { label: 'Hull identification number', value: order.record?.hullNumber ?? '' },
    { label: 'Most people', value: format.number(hull.ratings.people, 0) },
    {
      label: 'Most load: people, gear, fuel and options, without the outboard',
      value: format.mass(hull.ratings.load),
    },
    { label: 'Greatest power of the outboard', value: format.power(hull.ratings.power) },
    { label: 'Greatest mass of the outboard', value: format.mass(hull.ratings.engineMass) },
    { label: 'Design category, or waters', value: '' },
    { label: 'Buoyancy when swamped', value: '' },
  ];
}

/** What each method estimates, and what it wants on the plate. */
function methodFacts({ build, limits }: CustomerFigures): readonly PlateFact[] {
  const format = formatterOf(build.yard);
  const ratings = 'notComputed' in limits.ratings ? [] : limits.ratings;
  return ratings.map(({ name, people, peopleLoad, load, power, loadMeans }) => {
    const parts = [
      typeof people === 'number' ? `${format.number(people, 0)} people` : 'people not computed',
      ...(peopleLoad === undefined ? [] : [`${format.mass(peopleLoad)} of people`]),
      typeof load === 'number' ? `${format.mass(load)} (${loadMeans})` : 'load not computed',
      typeof power === 'number' ? format.power(power) : 'power not computed',
    ];
    return { label: `${name}, estimated`, value: parts.join('; ') };
  });
}

function cautionsOf({ limits, build }: CustomerFigures): readonly string[] {
  const ratings = 'notComputed' in limits.ratings ? [] : limits.ratings;
  const lists = limits.plate.lists.filter(({ facts }) => facts.length > 0);
  return [
    build.hull.ratings.basis,
    ...ratings.map(({ caution }) => `${capital(caution)}.`),
    ...lists.map(({ method, facts }) => {
      const name = ratings.find((rating) => rating.method === method)?.name ?? method;
      return `${name}: the plate lists ${facts.join('; ')}.`;
    }),
    'In open water, wind or waves the figures may have to be lower. Nothing here claims compliance.',
  ];
}
