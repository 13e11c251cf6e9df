import type { Figures, TrailerFigures } from '../../figures/index.ts';
import { type Formatter, kilograms, metres, whyNot } from '../../units/index.ts';
import { captioned, figureColumns, row, type Row, type Table } from '../blocks/block.ts';

type Margins = NonNullable<Figures['tow']['roof']>;
type Known = TrailerFigures['gear'];

/** What is left of every limit of trailer, vehicle, road and roof; nothing where the order has none of them. */
export function towingTables(figures: Figures, format: Formatter): readonly Table[] {
  const { trailer, roof = [] } = figures.tow;
  const rows = [...(trailer ? trailerRows(figures, trailer, format) : []), ...rowsOf(roof, format)];
  if (rows.length === 0) return [];
  return [
    captioned(
      'What is left of every limit on the road',
      figureColumns('What', 'Value', 'Limit', 'Left'),
      rows,
    ),
  ];
}

function trailerRows(
  { trailerLoad, build }: Figures,
  { trailer, gear, vehicle, width, share, lengths, winchPost, brakes }: TrailerFigures,
  format: Formatter,
): readonly Row[] {
  const { mass } = format;
  const whole = trailerLoad
    ? [
        row(
          trailerLoad.left >= 0 ? 'plain' : 'flag',
          'boat and trailer together, by the trailer’s rating',
          mass(trailerLoad.total),
          mass(trailer.rating),
          mass(trailerLoad.left),
        ),
      ]
    : [];
  const rows = (what: string, margins: Known): readonly Row[] =>
    'notComputed' in margins
      ? [row('plain', what, whyNot(margins), '', '')]
      : rowsOf(margins, format);
  const tows = build.order.tow?.vehicle;
  const isHalfKnown = tows?.together !== undefined && tows.laden === undefined;
  return [
    ...whole,
    ...rows('load of axles and {tyres}', gear),
    ...rows('brakes', 'notComputed' in brakes ? brakes : brakes.margins),
    ...rows('share on the ball', share),
    ...rows('winch post', 'notComputed' in winchPost ? winchPost : winchPost.margins),
    ...rows('overall length when towed', lengths),
    ...rows('overall width when towed', 'notComputed' in width ? width : [width]),
    ...rows('towing vehicle', vehicle),
    ...(isHalfKnown
      ? [row('plain', 'vehicle and trailer together', 'not computed: laden: is missing', '', '')]
      : []),
  ];
}

function rowsOf(margins: Margins, format: Formatter): readonly Row[] {
  return margins.map(({ name, value, limit, left, unit, holds }) => {
    const print = (number: number): string => {
      if (unit === 'kg') return format.mass(kilograms(number));
      return unit === 'm' ? format.length(metres(number)) : format.percent(number, 1);
    };
    return row(holds ? 'plain' : 'flag', name, print(value), print(limit), print(left));
  });
}
