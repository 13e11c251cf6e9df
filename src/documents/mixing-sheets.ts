import { type Figures, type MixingFigures, MIXING_CAUTIONS } from '../figures/index.ts';
import type { Stage } from '../schema/index.ts';
import { createFormatter, type Formatter } from '../units/index.ts';
import { figure, row, stageTable, type StageTable, text } from './stage-table.ts';
import { NO_BREAK } from './words.ts';

/** Catalyst by the batch for what is mixed in a stage: coats, hand-laid resins, or the infused resin. */
export function mixingTables({ build, laminate }: Figures, stage: Stage): readonly StageTable[] {
  if ('notComputed' in laminate) return [];
  const format = createFormatter(build.yard.locale, build.yard.units);
  return laminate.mixing
    .filter(({ stages }) => stages.includes(stage))
    .map((mixing) => mixingTableOf(mixing, stage, build, format));
}

function mixingTableOf(
  { part, catalyst, share, celsius, table, others }: MixingFigures,
  stage: Stage,
  { items }: Figures['build'],
  format: Formatter,
): StageTable {
  const name = items.flatMap(({ parts }) => parts).find(({ code }) => code === part)?.description;
  const heading = `Mixing ${part}${name === undefined ? '' : `, ${name}`}`;
  const columns = [text('Resin'), figure('Catalyst'), figure('or'), text('Note')];
  if ('notComputed' in table) {
    const words = [`Not computed: ${table.notComputed}. Do not mix; ask.`];
    return stageTable(`mixing-${stage}-${part}`, heading, { words, columns, rows: [] });
  }
  const minutes = (value: number): string => `${format.number(value, 0)}${NO_BREAK}min`;
  const told = [{ celsius, table }, ...others]
    .toSorted((a, b) => a.celsius - b.celsius)
    .map(
      (one) =>
        `at ${format.number(one.celsius, 0)}${NO_BREAK}°C gels in ${minutes(one.table.gelMinutes)}, used up in ${minutes(one.table.potMinutes)}, at most ${format.mass(one.table.largestBatch)}`,
    );
  return stageTable(`mixing-${stage}-${part}`, heading, {
    words: [`${format.percent(share, 1)} of ${catalyst} by mass. A batch ${told.join('; ')}.`],
    columns,
    rows: table.rows.map(({ resin, catalystGrams, catalystMillilitres, withinPotLife }) =>
      row(
        format.mass(resin),
        `${format.number(catalystGrams, 0)}${NO_BREAK}g`,
        `${format.number(catalystMillilitres, 0)}${NO_BREAK}mL`,
        withinPotLife ? '' : 'too much at once: it gels before it is laid',
      ),
    ),
    notes: [MIXING_NOTE],
  });
}

/** What the stage's own cautions do not say already. */
const MIXING_NOTE = [MIXING_CAUTIONS[0], MIXING_CAUTIONS.at(-1)].join(' ');
