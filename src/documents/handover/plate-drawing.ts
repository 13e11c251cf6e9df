import { drawCapacityPlate, type PlateFact } from '../../draw/index.ts';
import type { CustomerFigures } from '../../figures/index.ts';
import { formatterOf, known } from '../../units/index.ts';
import { type Block, column, heads, row, smallPrint, table } from '../blocks/block.ts';
import { sideLimitOf } from '../sections/float-words.ts';
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
    facts: plateFactsOf(figures),
    cautions: cautionsOf(figures),
    fontCss,
  });
  const caption =
    'Draft of the capacity plate: the least of the shop’s rating, the methods and the boat as loaded. Not valid until signed by the builder.';
  return [{ ...pictureOf(drawing), caption }];
}

/** One figure a line, the least of all limits; what is not settled yet is blank. */
function plateFactsOf({ build, limits: { carries } }: CustomerFigures): readonly PlateFact[] {
  const { hull, yard, order } = build;
  const format = formatterOf(yard);
  return [
    { label: 'Builder', value: yard.shop.name },
    { label: 'Hull identification number', value: order.record?.hullNumber ?? '' },
    { label: 'Most people', value: format.number(carries.people.people, 0) },
    {
      label: 'Most load: people, gear, fuel and options, without the outboard',
      value: format.mass(carries.load.mass),
    },
    { label: 'Greatest power of the outboard', value: format.power(carries.power.power) },
    { label: 'Greatest mass of the outboard', value: format.mass(hull.ratings.engineMass) },
    { label: 'Design category, or waters', value: '' },
    { label: 'Buoyancy when swamped', value: '' },
  ];
}

/** Where the figures of the plate come from: the shop's rating, each method, and the boat as it floats loaded. */
export function plateBases(figures: CustomerFigures): readonly Block[] {
  const { build, limits } = figures;
  const { ratings: shop } = build.hull;
  const format = formatterOf(build.yard);
  const ratings = 'notComputed' in limits.ratings ? [] : limits.ratings;
  const loaded = limits.asLoaded;
  const count = (people: number): string => format.number(people, 0);
  return [
    ...table(
      [column('text', 'By'), ...heads('num', 'People', 'Load', 'Power')],
      [
        row(
          'plain',
          'The shop’s rating',
          count(shop.people),
          format.mass(shop.load),
          format.power(shop.power),
        ),
        ...('notComputed' in loaded
          ? []
          : [
              row(
                'plain',
                'As loaded: seated, tanks full, to the least freeboard',
                known(loaded.people, count),
                known(loaded.load, format.mass),
                '',
              ),
            ]),
        ...ratings.map(({ name, people, load, power, loadMeans }) =>
          row(
            'plain',
            { text: name, under: `Load: ${loadMeans}.` },
            typeof people === 'number' ? count(people) : 'not computed',
            typeof load === 'number' ? format.mass(load) : 'not computed',
            typeof power === 'number' ? format.power(power) : 'not computed',
          ),
        ),
      ],
    ),
    ...smallPrint(limits.carries.standing.map((line) => `${line}.`)),
  ];
}

function cautionsOf({ limits, build, float }: CustomerFigures): readonly string[] {
  const side = float.afloat && sideLimitOf(float.afloat.crew.rated);
  const ratings = 'notComputed' in limits.ratings ? [] : limits.ratings;
  const lists = limits.plate.lists.filter(({ facts }) => facts.length > 0);
  return [
    ...(side === undefined ? [] : [`${side}.`]),
    build.hull.ratings.basis,
    ...ratings.map(({ caution }) => `${capital(caution)}.`),
    ...lists.map(({ method, facts }) => {
      const name = ratings.find((rating) => rating.method === method)?.name ?? method;
      return `${name}: the plate lists ${facts.join('; ')}.`;
    }),
    'In open water, wind or waves the figures may have to be lower. Nothing here claims compliance.',
  ];
}
