import type { Figures, Known } from '../../figures/index.ts';
import { type Formatter, formatterOf } from '../../units/index.ts';
import { column, heads, type Part, row, section, smallPrint, table } from '../blocks/block.ts';
import { sizeText } from '../sections/fact-words.ts';
import { capital } from '../sections/words.ts';

const NAMES: Readonly<Record<Known['name'], string>> = {
  load: 'Load aboard, tanks full',
  people: 'People that the rated load leaves room for',
  freeboard: 'Lowest opening above the water, fully loaded',
  'people to one side': 'The same with as many to one side as may go there',
  trailer: 'Boat, trailer and gear on the road',
  'ball load': 'Load on the ball',
  speed: 'Speed, loaded',
};

/** Share of how well a figure is known below which a cause does not matter. */
const SMALL = 0.1;

/** What has a limit, by how much it keeps to it, and how well that is known. */
export function knownSection({ build, known }: Figures): Part {
  const format = formatterOf(build.yard);
  return section(
    'known',
    'How near to the limits, and how well known',
    ...table(
      [
        column('text', 'Figure'),
        ...heads('num', 'Value'),
        ...heads('text', 'Within its limit', 'Moved by'),
      ],
      known.map((one) => knownRow(one, format)),
    ),
    ...smallPrint([
      'Known to: what the shop’s weighing band, the place of the masses (1 % of the length), the lines taken the other way, the share of the power and half of the air’s drag each do to the figure, as the root of the sum of their squares. The last three spreads are common practice, no source. Estimates: weigh, float and try the boat before a figure is promised that is nearer to its limit than it is known.',
    ]),
  );
}

function knownRow(one: Known, format: Formatter) {
  const { name, value, spare, known, causes } = one;
  const print = (figure: number): string => sizeText(one.as, figure, format);
  const isClose = spare !== undefined && spare < known;
  return row(
    isClose ? 'flag' : 'plain',
    NAMES[name],
    print(value),
    capital(verdict(one, print)),
    causes.flatMap(({ of, by }) => (by < SMALL * known ? [] : [`${of} ${print(by)}`])).join(', '),
  );
}

function verdict({ as, spare, known }: Known, print: (figure: number) => string): string {
  const to = `${as === 'mass' ? 'the weight' : 'it'} is known to ${print(known)}`;
  if (spare === undefined) return to;
  if (spare < 0) return `past its limit by ${print(-spare)}; ${to}`;
  if (as === 'people')
    return known > 0
      ? `fewer if what is fitted is heavier`
      : 'the same if what is fitted is heavier';
  return `${print(spare)} to spare; ${to}${spare < known ? ': closer than it is known, measure first' : ''}`;
}
