import { type Figures, type Gate, weighedAt, judgeWeighing } from '../../figures/index.ts';
import type { Stage } from '../../schema/index.ts';
import { formatterOf, kilograms } from '../../units/index.ts';
import { gateContents } from './masses.ts';
import { type Block, column, heads, row } from '../blocks/block.ts';
import { workTable } from './work-table.ts';

/** Target weights when a stage is over, with a blank for what it does weigh and what to do outside the band. */
export function gateTables({ build, gates }: Figures, stage: Stage): readonly Block[] {
  const gate = gates.find((one) => one.stage === stage);
  if (!gate) return [];
  const format = formatterOf(build.yard);
  const weighed = weighedAt(build, gate.stage);
  return [
    workTable('Weigh gate', {
      columns: [
        column('text', 'Target weight'),
        ...heads('num', 'Expected', 'From', 'To'),
        column('write', 'Weighed'),
      ],
      rows: [
        row(
          'plain',
          gateContents(build, gate.stage),
          format.mass(gate.expected),
          format.mass(gate.least),
          format.mass(gate.most),
          weighed ? format.mass(weighed.mass) : '',
        ),
      ],
      said: [`Within: sign and go on. Lighter: ${outside(gate, -1)} Heavier: ${outside(gate, 1)}`],
    }),
  ];
}

function outside(gate: Gate, sign: -1 | 1): string {
  const limit = sign < 0 ? gate.least : gate.most;
  const { todo } = judgeWeighing(gate, kilograms(limit + sign));
  return `${todo.charAt(0).toLowerCase()}${todo.slice(1)}`;
}
