import type { Figures, LimitsFigures } from '../figures/index.ts';
import { type EstimatePrinter, estimatePrinter, marginTable, textOf } from './estimate-words.ts';
import {
  figureColumn,
  plainRow,
  type Section,
  section,
  type SectionTable,
  textColumn,
} from './section.ts';

/** What she may carry by each method beside the shop's rating, the screening, and the outboard's fit. */
export function limitsSection({ build, limits }: Figures): Section {
  const print = estimatePrinter(build);
  const { ratings, categories, engine } = limits;
  const known = 'notComputed' in ratings ? [] : ratings;
  const screened = 'notComputed' in categories ? [] : categories;
  return section('limits', 'Limits', {
    words: [
      ...('notComputed' in ratings ? [`Ratings: not computed: ${ratings.notComputed}.`] : []),
      ...('notComputed' in categories
        ? [`Design categories: not computed: ${categories.notComputed}.`]
        : []),
      ...(engine ? engineWords(engine, print) : []),
    ],
    tables: [
      ratingTable(build, known, print),
      ...screened.map(({ category, checks, passes }) =>
        marginTable(
          `Screening for category ${category}: ${passes ? 'stands up to it' : 'does not stand up to it'}; an estimate, not a category`,
          checks,
          print.format,
        ),
      ),
      ...(engine
        ? [marginTable('The outboard on this hull', engine.fit.margins, print.format)]
        : []),
    ],
    notes: [
      ...known.map(
        ({ name, validity, loadMeans, caution }) =>
          `${name}: for ${validity}; its load is ${loadMeans}; ${caution}.`,
      ),
      'Screening: estimated to ISO 12217-1:2015, second hand, loaded as ordered; verify by the tests of ISO 12217. None of these is a certificate or a statement of compliance.',
    ],
  });
}

type Ratings = Exclude<LimitsFigures['ratings'], { readonly notComputed: string }>;

function ratingTable(
  { hull }: Figures['build'],
  ratings: Ratings,
  { format }: EstimatePrinter,
): SectionTable {
  const { people, load, power } = hull.ratings;
  return {
    caption: 'People, load and power: the shop’s rating and each method, estimated',
    columns: [
      textColumn('By'),
      ...['People', 'Load', 'Power'].map(figureColumn),
      textColumn('What binds the people'),
    ],
    rows: [
      plainRow(
        'The shop’s rating',
        format.number(people, 0),
        format.mass(load),
        format.power(power),
        '',
      ),
      ...ratings.map((rating) =>
        plainRow(
          rating.name,
          textOf(rating.people, (count) => format.number(count, 0)),
          textOf(rating.load, format.mass),
          textOf(rating.power, format.power),
          rating.binding?.words ?? '',
        ),
      ),
    ],
  };
}

function engineWords(
  { fit, trim, stern, testAbove }: NonNullable<LimitsFigures['engine']>,
  { format, knots, degrees }: EstimatePrinter,
): readonly string[] {
  const height = textOf(
    stern,
    ({ value, limit }) =>
      `${format.number(value, 2)} m, where ${format.number(limit, 2)} m is wanted (common practice, no source)`,
  );
  return [
    ...fit.faults.map((fault) => `Outboard and helm do not go together: ${fault}.`),
    `Trim by the stern from the outboard: ${textOf(trim, degrees)}. Freeboard at the transom, nobody aboard: ${height}. Estimated from the lines; verify afloat.`,
    `A manoeuvring test is wanted above ${textOf(testAbove, knots)}: estimated to ISO 11592-1, second hand; verify by that test.`,
  ];
}
