import type { FiguredAlternative, Figures } from '../../figures/index.ts';
import { FINDING_CODES } from '../../findings/index.ts';
import type { Money } from '../../money/index.ts';
import { formatterOf, decimalToNumber, type Formatter } from '../../units/index.ts';
import { figureColumn, plainRow, type Section, section, textColumn } from '../sections/section.ts';
import { NO_CHANGE, signedMass, signedMoney, signedSize, speedChange } from '../sections/words.ts';

/** What each alternative changes, its margin among it: for the yard's half only. */
export function alternativesSection(
  alternatives: readonly FiguredAlternative[],
  { build }: Figures,
): Section {
  const { locale } = build.yard;
  const format = formatterOf(build.yard);
  const signed = (amount: Money): string => signedMoney(amount, locale);
  return section('alternatives', 'Alternatives', {
    tables: [
      {
        caption: 'What each changes, against the order',
        columns: [
          textColumn('Alternative'),
          ...[
            'Drive-away',
            'Margin',
            'Margin share',
            'Mass to tow',
            'People',
            'Speed',
            'On the ball',
          ].map(figureColumn),
          textColumn('Findings'),
        ],
        rows: alternatives.map(({ name, figures, differences, findings }) => {
          const share = figures?.price.marginShare;
          return plainRow(
            name,
            differences ? signed(differences.driveAway) : 'cannot be built',
            differences ? signed(differences.margin) : '',
            share ? format.percent(decimalToNumber(share), 1) : '',
            differences ? signedMass(differences.massOnTrailer, format) : '',
            differences ? peopleText(differences.people, format) : '',
            differences ? speedChange(differences, format) : '',
            differences?.onBall === undefined ? '' : signedMass(differences.onBall, format),
            findings
              .map(({ code, received }) => `${FINDING_CODES[code].means}: ${received}`)
              .join('; '),
          );
        }),
      },
    ],
  });
}

function peopleText(people: number, format: Formatter): string {
  if (people === 0) return NO_CHANGE;
  return signedSize(people, format.number(Math.abs(people), 0));
}
