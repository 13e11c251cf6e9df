import type { Figures, LimitsFigures } from '../../figures/index.ts';
import { type Formatter, known, whyNot } from '../../units/index.ts';
import { captioned, column, heads, row, type Table } from '../blocks/block.ts';
import { capital, marginText } from '../sections/words.ts';

const COLUMNS = heads('num', 'Value', 'Limit', 'Left');

/** Ratings side by side, the screening, and the outboard on the hull. */
export function limitsTables(figures: Figures, format: Formatter): readonly Table[] {
  const { limits } = figures;
  return [
    ratingTable(figures, format),
    ...('notComputed' in limits.categories || limits.categories.length === 0
      ? []
      : [categoryTable(limits.categories, format)]),
    ...(limits.engine ? [engineTable(limits.engine, format)] : []),
  ];
}

function ratingTable({ build, limits, mass }: Figures, format: Formatter): Table {
  const { ratings } = build.hull;
  const ordered = build.order.boat.people;
  const methods = 'notComputed' in limits.ratings ? [] : limits.ratings;
  const engine = build.outboard ? format.power(build.outboard.model.power) : 'no outboard';
  return captioned(
    'People, load and power, side by side',
    [
      column('text', 'By'),
      ...heads('num', 'People', 'Load', 'Power'),
      column('text', 'What limits the people'),
    ],
    [
      row(
        'plain',
        'As ordered, loads as the shop counts them',
        format.number(ordered, 0),
        format.mass(mass.load),
        engine,
        '',
      ),
      ...asOrderedRows(limits, ordered, format),
      row(
        'plain',
        'The shop’s rating',
        format.number(ratings.people, 0),
        format.mass(ratings.load),
        format.power(ratings.power),
        ratings.basis,
      ),
      ...asLoadedRows(limits.asLoaded, format),
      ...methods.map(({ name, people, load, power, governing }) => {
        const isOver = typeof people === 'number' && ordered > people;
        return row(
          isOver ? 'flag' : 'plain',
          name,
          known(people, (count) => format.number(count, 0)),
          known(load, format.mass),
          typeof power === 'number' ? format.power(power) : 'not computed',
          governing ? capital(governing.words) : '',
        );
      }),
    ],
  );
}

/** The boat as it floats loaded, beside the methods' level one. */
function asLoadedRows(loaded: LimitsFigures['asLoaded'], format: Formatter): Table['rows'] {
  if ('notComputed' in loaded) return [row('plain', 'As loaded', whyNot(loaded), '', '', '')];
  const { people, load } = loaded;
  return [
    row(
      'plain',
      'As loaded: seated, tanks full, trimmed as the boat then lies',
      known(people, (count) => format.number(count, 0)),
      known(load, format.mass),
      '',
      'Least freeboard, heel and the lowest opening',
    ),
  ];
}

/** The order's load once more, as the ISO-style method counts it. */
function asOrderedRows(
  { asOrdered }: LimitsFigures,
  people: number,
  format: Formatter,
): Table['rows'] {
  if (!asOrdered) return [];
  const { onPlate, greatest, left } = asOrdered;
  const isOver = typeof left === 'number' && left < 0;
  return [
    row(
      isOver ? 'flag' : 'plain',
      'As ordered, loads as the ISO small craft standards count them',
      format.number(people, 0),
      format.mass(onPlate),
      '',
      greatest > onPlate ? `${format.mass(greatest)} with what is in fixed tanks` : '',
    ),
  ];
}

type Categories = Exclude<LimitsFigures['categories'], { readonly notComputed: string }>;

function categoryTable(categories: Categories, format: Formatter): Table {
  return captioned(
    'Design-category check, loaded as ordered',
    [column('text', 'Category and check'), ...COLUMNS],
    categories.flatMap(({ category, checks }) =>
      checks.map(({ name, value: found, limit, left, unit, holds }) =>
        row(
          holds ? 'plain' : 'flag',
          `${category}: ${name}`,
          ...[found, limit, left].map((value) => marginText(value, unit, format)),
        ),
      ),
    ),
  );
}

type Engine = NonNullable<LimitsFigures['engine']>;

function engineTable({ fit, trim, stern, testAbove }: Engine, format: Formatter): Table {
  const margins = [...fit.margins, ...('notComputed' in stern ? [] : [stern])];
  return captioned(
    'The outboard on this hull',
    [column('text', 'What'), ...COLUMNS],
    [
      ...margins.map(({ name, value: found, limit, left, unit, holds }) =>
        row(
          holds ? 'plain' : 'flag',
          name,
          ...[found, limit, left].map((value) => marginText(value, unit, format)),
        ),
      ),
      ...fit.faults.map((fault) => row('flag', fault, '', '', '')),
      row('plain', 'trim by the stern that it brings at rest', known(trim, format.angle), '', ''),
      row(
        'plain',
        'speed from which ISO 11592-1 wants its manoeuvring test',
        known(testAbove, format.speed),
        '',
        '',
      ),
    ],
  );
}
