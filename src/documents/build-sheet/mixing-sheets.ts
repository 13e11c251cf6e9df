import { type Figures, type MixingFigures, MIXING_CAUTIONS } from '../../figures/index.ts';
import type { Stage } from '../../schema/index.ts';
import { createFormatter, type Formatter } from '../../units/index.ts';
import { figure, row, stageTable, type StageTable, text } from './stage-table.ts';
import { sentence } from '../sections/words.ts';
import { NO_BREAK } from '../../units/index.ts';

/** Catalyst by the batch for what is mixed in a stage: coats, hand-laid resins, or the infused resin. */
export function mixingTables({ build, mixing: all }: Figures, stage: Stage): readonly StageTable[] {
  const format = createFormatter(build.yard.locale, build.yard.units);
  return all
    .filter(({ stages }) => stages.includes(stage))
    .flatMap((mixing) => tablesOf(mixing, stage, build, format));
}

function tablesOf(
  { part, catalyst, share, celsius, table, others }: MixingFigures,
  stage: Stage,
  { items }: Figures['build'],
  format: Formatter,
): readonly StageTable[] {
  const name = items.flatMap(({ parts }) => parts).find(({ code }) => code === part)?.description;
  const heading = `Mixing ${part}`;
  const id = `mixing-${stage}-${part}`;
  if ('notComputed' in table) {
    const words = [`Not computed: ${table.notComputed}. Do not mix; ask.`];
    return [stageTable(id, heading, { words, columns: [], rows: [] })];
  }
  const tooMuch = table.rows.some(({ withinPotLife }) => !withinPotLife);
  const amount = (value: number): string => format.number(value, value < 10 ? 1 : 0);
  const mixing = stageTable(id, heading, {
    half: 'left',
    // The code begins its line, so that no line ends within it.
    words: [
      ...(name === undefined ? [] : [sentence(name)]),
      `${catalyst}, catalyst: ${format.percent(share, 1)} by mass.`,
    ],
    columns: [
      text('Resin'),
      ...table.rows.map(({ resin, withinPotLife }) =>
        figure(`${format.mass(resin)}${withinPotLife ? '' : ' !'}`),
      ),
    ],
    rows: [
      row('Catalyst, g', ...table.rows.map(({ catalystGrams }) => amount(catalystGrams))),
      row('or mL', ...table.rows.map(({ catalystMillilitres }) => amount(catalystMillilitres))),
    ],
    notes: [`${tooMuch ? '! Too much at once: it gels before it is laid. ' : ''}${MIXING_NOTE}`],
  });
  return [mixing, potTable(id, celsius, [{ celsius, table }, ...others], format)];
}

/** How long a batch may be worked, and how large it may be, at each temperature of the shop. */
function potTable(
  id: string,
  today: number,
  tables: MixingFigures['others'],
  format: Formatter,
): StageTable {
  const told = tables.toSorted((a, b) => a.celsius - b.celsius);
  const minutes = (value: number): string => `${format.number(value, 0)}${NO_BREAK}min`;
  return stageTable(`${id}-pot`, 'In the pot', {
    half: 'right',
    words: [`The shop is planned at ${format.number(today, 0)}${NO_BREAK}°C; read it first.`],
    columns: [
      text('Shop at'),
      ...told.map(({ celsius }) => figure(`${format.number(celsius, 0)}${NO_BREAK}°C`)),
    ],
    rows: [
      row('Gels in', ...told.map((one) => minutes(one.table.gelMinutes))),
      row('Use up in', ...told.map((one) => minutes(one.table.potMinutes))),
      row('Largest batch', ...told.map((one) => format.mass(one.table.largestBatch))),
    ],
  });
}

/** What the stage's own cautions do not say already. */
const MIXING_NOTE = [MIXING_CAUTIONS[0], MIXING_CAUTIONS.at(-1)].join(' ');
