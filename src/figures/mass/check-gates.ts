import { type Finding, finding } from '../../findings/index.ts';
import { judgeWeighing } from '../../laminate/index.ts';
import { formatterOf } from '../../units/index.ts';
import type { Figures } from '../types.ts';

/** What was weighed after a stage, against the gate of that stage. */
export function checkGates({ build, gates }: Omit<Figures, 'findings'>): readonly Finding[] {
  const format = formatterOf(build.yard);
  return (build.order.record?.masses ?? []).flatMap(({ stage, mass }, index) => {
    const gate = gates.find((one) => one.stage === stage);
    if (!gate) return [];
    const { verdict, todo } = judgeWeighing(gate, mass);
    if (verdict === 'within') return [];
    return [
      finding('MASS_OUT_OF_GATE', build.place(['record', 'masses', index, 'mass']), {
        received: `${format.mass(mass)} weighed after ${stage}`,
        expected: `from ${format.mass(gate.least)} to ${format.mass(gate.most)}`,
        remedy: todo.replace(/\.$/, ''),
      }),
    ];
  });
}
