import type { Figures, LimitsFigures } from '../../figures/index.ts';
import { type Formatter, known } from '../../units/index.ts';
import {
  figureColumn,
  flagRow,
  plainRow,
  type SectionTable,
  textColumn,
} from '../sections/section.ts';
import { capital, marginText } from '../sections/words.ts';

const COLUMNS = ['Value', 'Limit', 'Left'].map(figureColumn);

/** Ratings side by side, the screening, and the outboard on the hull. */
export function limitsTables(figures: Figures, format: Formatter): readonly SectionTable[] {
  const { limits } = figures;
  return [
    ratingTable(figures, format),
    ...('notComputed' in limits.categories || limits.categories.length === 0
      ? []
      : [categoryTable(limits.categories, format)]),
    ...(limits.engine ? [engineTable(limits.engine, format)] : []),
  ];
}

function ratingTable({ build, limits, mass }: Figures, format: Formatter): SectionTable {
  const { ratings } = build.hull;
  const ordered = build.order.boat.people;
  const methods = 'notComputed' in limits.ratings ? [] : limits.ratings;
  const engine = build.outboard ? format.power(build.outboard.model.power) : 'no outboard';
  return {
    caption: 'People, load and power, side by side',
    columns: [
      textColumn('By'),
      ...['People', 'Load', 'Power'].map(figureColumn),
      textColumn('What limits the people'),
    ],
    rows: [
      plainRow(
        'As ordered, loads as the shop counts them',
        format.number(ordered, 0),
        format.mass(mass.load),
        engine,
        '',
      ),
      ...asOrderedRows(limits, ordered, format),
      plainRow(
        'The shop’s rating',
        format.number(ratings.people, 0),
        format.mass(ratings.load),
        format.power(ratings.power),
        ratings.basis,
      ),
      ...methods.map(({ name, people, load, power, governing }) => {
        const isOver = typeof people === 'number' && ordered > people;
        return (isOver ? flagRow : plainRow)(
          name,
          known(people, (count) => format.number(count, 0)),
          known(load, format.mass),
          typeof power === 'number' ? format.power(power) : 'not computed',
          governing ? capital(governing.words) : '',
        );
      }),
    ],
  };
}

/** The order's load once more, as the ISO-style method counts it. */
function asOrderedRows(
  { asOrdered }: LimitsFigures,
  people: number,
  format: Formatter,
): SectionTable['rows'] {
  if (!asOrdered) return [];
  const { onPlate, greatest, left } = asOrdered;
  const isOver = typeof left === 'number' && left < 0;
  return [
    (isOver ? flagRow : plainRow)(
      'As ordered, loads as the ISO small craft standards count them',
      format.number(people, 0),
      format.mass(onPlate),
      '',
      greatest > onPlate ? `${format.mass(greatest)} with what is in fixed tanks` : '',
    ),
  ];
}

type Categories = Exclude<LimitsFigures['categories'], { readonly notComputed: string }>;

function categoryTable(categories: Categories, format: Formatter): SectionTable {
  return {
    caption: 'Design-category check, loaded as ordered',
    columns: [textColumn('Category and check'), ...COLUMNS],
    rows: categories.flatMap(({ category, checks }) =>
      checks.map(({ name, value: found, limit, left, unit, holds }) =>
        (holds ? plainRow : flagRow)(
          `${category}: ${name}`,
          ...[found, limit, left].map((value) => marginText(value, unit, format)),
        ),
      ),
    ),
  };
}

type Engine = NonNullable<LimitsFigures['engine']>;

function engineTable({ fit, trim, stern, testAbove }: Engine, format: Formatter): SectionTable {
  const margins = [...fit.margins, ...('notComputed' in stern ? [] : [stern])];
  return {
    caption: 'The outboard on this hull',
    columns: [textColumn('What'), ...COLUMNS],
    rows: [
      ...margins.map(({ name, value: found, limit, left, unit, holds }) =>
        (holds ? plainRow : flagRow)(
          name,
          ...[found, limit, left].map((value) => marginText(value, unit, format)),
        ),
      ),
      ...fit.faults.map((fault) => flagRow(fault, '', '', '')),
      plainRow('trim by the stern that it brings at rest', known(trim, format.angle), '', ''),
      plainRow(
        'speed from which ISO 11592-1 wants its manoeuvring test',
        known(testAbove, format.speed),
        '',
        '',
      ),
    ],
  };
}
