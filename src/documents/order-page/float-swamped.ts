import type { Afloat } from '../../figures/index.ts';
import { type Formatter, kilograms } from '../../units/index.ts';
import {
  figureColumn,
  flagRow,
  plainRow,
  type SectionTable,
  sumRow,
  textColumn,
} from '../sections/section.ts';

type Swamped = NonNullable<Afloat['swamped']>;

/** What foam is asked for, and whether what floats carries what sinks. */
export function swampedTable(
  { foam, rule, balance, counted }: Swamped,
  format: Formatter,
): SectionTable {
  const needed =
    'notComputed' in rule
      ? [plainRow('Foam required by the method', `not computed: ${rule.notComputed}`)]
      : [
          plainRow('for the boat', format.volume(rule.foam.boat)),
          plainRow('for outboard, controls and battery', format.volume(rule.foam.propulsion)),
          plainRow('for people and gear', format.volume(rule.foam.people)),
          sumRow(
            rule.applies ? 'Foam required by the method' : 'Foam, if the method applied',
            format.volume(rule.foam.total),
          ),
          (rule.stillNeeded > 0 ? flagRow : plainRow)(
            'Foam still needed',
            format.volume(rule.stillNeeded),
          ),
        ];
  return {
    caption: 'When swamped',
    columns: [textColumn('What'), figureColumn('Amount')],
    rows: [
      ...needed,
      plainRow('Foam fitted', format.volume(foam)),
      ...counted.map(({ name, weight }) =>
        plainRow(
          `${weight < 0 ? 'Lift of' : 'Weight under water of'} ${name}`,
          format.mass(kilograms(Math.abs(weight))),
        ),
      ),
      (balance.reserve < 0 ? flagRow : plainRow)(
        'Lift left: all lift, foam included, less all weight under water',
        format.mass(balance.reserve),
      ),
    ],
  };
}
