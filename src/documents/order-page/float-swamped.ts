import type { Afloat } from '../../figures/index.ts';
import { type Formatter, kilograms } from '../../units/index.ts';
import { captioned, figureColumns, row, type Table } from '../blocks/block.ts';

type Swamped = NonNullable<Afloat['swamped']>;

/** What foam is asked for, and whether what floats carries what sinks. */
export function swampedTable({ foam, rule, balance, counted }: Swamped, format: Formatter): Table {
  const needed =
    'notComputed' in rule
      ? [row('plain', 'Foam required by the method', `not computed: ${rule.notComputed}`)]
      : [
          row('plain', 'Foam for the boat', format.volume(rule.foam.boat)),
          row(
            'plain',
            'Foam for outboard, controls and battery',
            format.volume(rule.foam.propulsion),
          ),
          row('plain', 'Foam for people and gear', format.volume(rule.foam.people)),
          row(
            'sum',
            rule.applies ? 'Foam required by the method' : 'Foam, if the method applied',
            format.volume(rule.foam.total),
          ),
          row(
            rule.stillNeeded > 0 ? 'flag' : 'plain',
            'Foam still needed',
            format.volume(rule.stillNeeded),
          ),
        ];
  return captioned('When swamped', figureColumns('What', 'Amount'), [
    ...needed,
    row('plain', 'Foam fitted', format.volume(foam)),
    ...counted.map(({ name, weight }) =>
      row(
        'plain',
        `${weight < 0 ? 'Lift of' : 'Weight under water of'} ${name}`,
        format.mass(kilograms(Math.abs(weight))),
      ),
    ),
    row(
      balance.reserve < 0 ? 'flag' : 'plain',
      'Lift left: all lift, foam included, less all weight under water',
      format.mass(balance.reserve),
    ),
  ]);
}
