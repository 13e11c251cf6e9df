import { type Figures, type MixingFigures, MIXING_CAUTIONS } from '../../figures/index.ts';
import type { Stage } from '../../schema/index.ts';
import { type Formatter, formatterOf, UNIT_KINDS } from '../../units/index.ts';
import { type Block, column, row, under } from '../blocks/block.ts';
import { workTable } from './work-table.ts';
import { sentence } from '../sections/words.ts';

/** Catalyst by the batch for what is mixed in a stage: coats, hand-laid resins, or the infused resin. */
export function mixingTables({ build, mixing: all }: Figures, stage: Stage): readonly Block[] {
  const format = formatterOf(build.yard);
  return all
    .filter(({ stages }) => stages.includes(stage))
    .flatMap((mixing) => tablesOf(mixing, build, format));
}

function tablesOf(
  { part, catalyst, share, celsius, table, others }: MixingFigures,
  { items }: Figures['build'],
  format: Formatter,
): readonly Block[] {
  const name = items.flatMap(({ parts }) => parts).find(({ code }) => code === part)?.description;
  const heading = `Mixing ${part}`;
  if ('notComputed' in table) {
    const said = [`Not computed: ${table.notComputed}. Do not mix; ask.`];
    return [workTable(heading, { said, columns: [], rows: [] })];
  }
  const tooMuch = table.rows.some(({ withinPotLife }) => !withinPotLife);
  const { g: GRAM } = UNIT_KINDS.mass;
  const { mL: MILLILITRE } = UNIT_KINDS.volume;
  const mixing = workTable(heading, {
    // The code begins its line, so that no line ends within it.
    said: [
      ...(name === undefined ? [] : [sentence(name)]),
      `${catalyst}, catalyst: ${format.percent(share, 1)} by mass.`,
    ],
    columns: [
      column('text', 'Resin'),
      ...table.rows.map(({ resin, withinPotLife }) =>
        column('num', `${format.mass(resin)}${withinPotLife ? '' : ' !'}`),
      ),
    ],
    rows: [
      row(
        'plain',
        `Catalyst, ${format.unit('smallMass')}`,
        ...table.rows.map((one) => format.bare('smallMass', one.catalystGrams * GRAM)),
      ),
      row(
        'plain',
        `or ${format.unit('smallVolume')}`,
        ...table.rows.map((one) =>
          format.bare('smallVolume', one.catalystMillilitres * MILLILITRE),
        ),
      ),
    ],
    notes: [`${tooMuch ? '! Too much at once: it gels before it is laid. ' : ''}${MIXING_NOTE}`],
  });
  return [under('pair', '', mixing, potTable(celsius, [{ celsius, table }, ...others], format))];
}

/** How long a batch may be worked, and how large it may be, at each temperature of the shop. */
function potTable(today: number, tables: MixingFigures['others'], format: Formatter): Block {
  const told = tables.toSorted((a, b) => a.celsius - b.celsius);
  return workTable('In the pot', {
    said: [`The shop is planned at ${format.temperature(today)}; read it first.`],
    columns: [
      column('text', 'Shop at'),
      ...told.map(({ celsius }) => column('num', format.temperature(celsius))),
    ],
    rows: [
      row('plain', 'Gels in', ...told.map((one) => format.minutes(one.table.gelMinutes * 60))),
      row('plain', 'Use up in', ...told.map((one) => format.minutes(one.table.potMinutes * 60))),
      row('plain', 'Largest batch', ...told.map((one) => format.mass(one.table.largestBatch))),
    ],
  });
}

/** What the stage's own cautions do not say already. */
const MIXING_NOTE = [MIXING_CAUTIONS[0], MIXING_CAUTIONS.at(-1)].join(' ');
