import type { Figures, LimitsFigures } from '../../figures/index.ts';
import { metres, UNIT_KINDS } from '../../units/index.ts';
import { notComputed, type PerformancePrinter } from '../sections/performance-words.ts';
import {
  figureColumn,
  flagRow,
  plainRow,
  type SectionTable,
  textColumn,
} from '../sections/section.ts';
import { capital } from '../sections/words.ts';
import { NO_BREAK } from '../../units/index.ts';

const COLUMNS = ['Value', 'Limit', 'Left'].map(figureColumn);

/** Ratings side by side, the screening, and the outboard on the hull. */
export function limitsTables(figures: Figures, print: PerformancePrinter): readonly SectionTable[] {
  const { limits } = figures;
  return [
    ratingTable(figures, print),
    ...('notComputed' in limits.categories || limits.categories.length === 0
      ? []
      : [categoryTable(limits.categories, print)]),
    ...(limits.engine ? [engineTable(limits.engine, print)] : []),
  ];
}

function ratingTable(
  { build, limits, mass }: Figures,
  { format }: PerformancePrinter,
): SectionTable {
  const { ratings } = build.hull;
  const ordered = build.order.boat.people;
  const methods = 'notComputed' in limits.ratings ? [] : limits.ratings;
  const engine = build.outboard ? format.power(build.outboard.model.power) : 'no outboard';
  return {
    caption: 'People, load and power, side by side',
    columns: [
      textColumn('By'),
      ...['People', 'Load', 'Power'].map(figureColumn),
      textColumn('What binds the people'),
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
          typeof people === 'number' ? format.number(people, 0) : notComputed(people),
          typeof load === 'number' ? format.mass(load) : notComputed(load),
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
  format: PerformancePrinter['format'],
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

function categoryTable(categories: Categories, { format }: PerformancePrinter): SectionTable {
  const value = (number: number, unit: string): string =>
    unit === 'm' ? format.dimension(metres(number)) : `${format.number(number, 1)}${unit}`;
  return {
    caption: 'Screening for a design category, loaded as ordered',
    columns: [textColumn('Category and check'), ...COLUMNS],
    rows: categories.flatMap(({ category, checks }) =>
      checks.map(({ name, value: found, limit, left, unit, holds }) =>
        (holds ? plainRow : flagRow)(
          `${category}: ${name}`,
          value(found, unit),
          value(limit, unit),
          value(left, unit),
        ),
      ),
    ),
  };
}

type Engine = NonNullable<LimitsFigures['engine']>;

function engineTable(
  { fit, trim, stern, testAbove }: Engine,
  { format, degrees, knots }: PerformancePrinter,
): SectionTable {
  const value = (number: number, unit: string): string => {
    if (unit === 'W') return `${format.number(number / 1000, 1)}${NO_BREAK}kW`;
    return unit === 'm'
      ? `${format.number(number / UNIT_KINDS.length.mm, 0)}${NO_BREAK}mm`
      : `${format.number(number, 0)}${NO_BREAK}${unit}`;
  };
  const margins = [...fit.margins, ...('notComputed' in stern ? [] : [stern])];
  return {
    caption: 'The outboard on this hull',
    columns: [textColumn('What'), ...COLUMNS],
    rows: [
      ...margins.map(({ name, value: found, limit, left, unit, holds }) =>
        (holds ? plainRow : flagRow)(
          name,
          value(found, unit),
          value(limit, unit),
          value(left, unit),
        ),
      ),
      ...fit.faults.map((fault) => flagRow(fault, '', '', '')),
      plainRow('trim by the stern that it brings at rest', degrees(trim), '', ''),
      plainRow('speed from which ISO 11592-1 wants its manoeuvring test', knots(testAbove), '', ''),
    ],
  };
}
