import type { Afloat, Figures } from '../../figures/index.ts';
import { DEGREE, type Formatter, formatterOf } from '../../units/index.ts';
import { captioned, figureColumns, row, type Table } from '../blocks/block.ts';
import { capital, signedSize, list } from '../sections/words.ts';

type Growth = Afloat['growth'];

/** What ten kilograms more of the boat change, and how much it may put on; nothing when it does not float. */
export function growthSentences(
  { build }: Figures,
  { growth: { effect, first, allowed, limits } }: Afloat,
): readonly string[] {
  const format = formatterOf(build.yard);
  if (!effect) return [];
  const { mass, draughtAft, draughtFore, trim, freeboard, metacentricHeight } = effect;
  const changes = [
    `the {draught} by ${signedLength(draughtAft, format)} aft and ${signedLength(draughtFore, format)} forward`,
    `the trim by ${format.number(Math.abs(trim) / DEGREE, 2)} degrees by the ${trim < 0 ? 'bow' : 'stern'}`,
    `the least freeboard by ${signedLength(freeboard, format)}`,
    ...(metacentricHeight === undefined
      ? []
      : [`GM by ${signedLength(metacentricHeight, format)}`]),
  ];
  const told = `Each ${format.mass(mass)} that the boat gains over the years changes, fully loaded, ${list(changes)}.`;
  const isPast = limits.some(({ margin }) => margin.outcome === 'already past');
  const room = first
    ? `${isPast ? 'Already past the limits marked below as ordered, the boat' : 'The boat'} may gain ${format.mass(first.growth)} before it reaches ${first.name}`
    : 'Growth reaches none of the limits below';
  const counted = allowed > 0 ? `; the shop allows for ${format.mass(allowed)}.` : '.';
  return [told, `${room}${counted}`];
}

/** Growth until each limit is met. */
export function growthTable({ limits, boat, first, allowed }: Growth, format: Formatter): Table {
  return captioned(
    'How much the boat itself may gain before a limit is reached',
    figureColumns('Limit', 'Growth', 'Share of the completed boat'),
    limits.map(({ name, margin }) => {
      if (margin.outcome === 'already past')
        return row('flag', capital(name), 'past it as ordered', '–');
      if (margin.outcome === 'not met') {
        return row('plain', capital(name), `more than ${format.mass(boat)}`, '–');
      }
      if (margin.outcome === 'not found') return row('flag', capital(name), 'not computed', '–');
      const { growth } = margin;
      const isShort = name === first?.name && growth < allowed;
      return row(
        isShort ? 'flag' : 'plain',
        capital(name),
        format.mass(growth),
        format.percent(growth / boat, 0),
      );
    }),
  );
}

/** "+1.4 mm": changes are told to a tenth of a millimetre, or a hundredth of an inch. */
function signedLength(change: number, format: Formatter): string {
  return signedSize(change, format.thickness(Math.abs(change)));
}
