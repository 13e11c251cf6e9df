import type { FiguredAlternative, Figures } from '../../figures/index.ts';
import { FINDING_CODES } from '../../findings/index.ts';
import { decimalToNumber, formatterOf } from '../../units/index.ts';
import { captioned, column, heads, type Part, row, section } from '../blocks/block.ts';
import { changeText } from '../sections/fact-words.ts';

/** What each alternative changes, its margin among it: for the yard's half only. */
export function alternativesSection(
  alternatives: readonly FiguredAlternative[],
  { build }: Figures,
): Part {
  const format = formatterOf(build.yard);
  const rows = alternatives.map(({ name, figures, differences, findings }) => {
    const share = figures?.price.marginShare;
    const said = findings.map(({ code, received }) => `${FINDING_CODES[code].means}: ${received}`);
    if (!differences)
      return row('plain', name, 'cannot be built', '', '', '', '', '', '', said.join('; '));
    const { driveAway, margin, massOnTrailer, people, speed, onBall } = differences;
    return row(
      'plain',
      name,
      changeText(driveAway, format),
      changeText(margin, format),
      share ? format.percent(decimalToNumber(share), 1) : '',
      changeText(massOnTrailer, format),
      changeText(people, format),
      changeText(speed, format),
      onBall ? changeText(onBall, format) : '',
      said.join('; '),
    );
  });
  return section(
    'alternatives',
    'Alternatives',
    captioned('What each changes, against the order', COLUMNS, rows),
  );
}

const COLUMNS = [
  column('text', 'Alternative'),
  ...heads(
    'num',
    '{Final price}',
    'Margin',
    'Margin share',
    'Mass to tow',
    'People',
    'Speed',
    'On the ball',
  ),
  column('text', 'Findings'),
];
