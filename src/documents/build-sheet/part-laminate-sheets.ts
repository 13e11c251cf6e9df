import type { Figures, PartLayUp } from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import { wholeUp } from '../../maths/index.ts';
import type { Stage } from '../../schema/index.ts';
import { formatterOf, type Formatter, kilograms, NO_BREAK } from '../../units/index.ts';
import { type Block, row } from '../blocks/block.ts';
import { LAY_UP, layUpRow, notCut, stripName } from './laminate-sheets.ts';
import { workTable } from './work-table.ts';

/**
 * One table for each part that is laid up in a stage, with what is cut and mixed for it below.
 *
 * A part that is one panel bought laminated has nothing to lay: it stands among what is fetched and fitted.
 */
export function partLaminateTables(figures: Figures, stage: Stage): readonly Block[] {
  const { yard } = figures.build;
  const format = formatterOf(yard);
  const laid = figures.partLayUps.filter((part) => part.stage === stage && !isBought(part));
  return laid.map((part, index) => tableOf(part, figures, index === laid.length - 1, format));
}

const isBought = ({ panels, withoutArea }: PartLayUp): boolean =>
  panels.length === 1 &&
  withoutArea.length === 0 &&
  panels.every(({ layers }) => layers.every(({ kind }) => kind === 'ready-made'));

function tableOf(part: PartLayUp, figures: Figures, last: boolean, format: Formatter): Block {
  const { item, process, panels, mass, withoutArea } = part;
  const how = process === 'hand' ? 'by hand' : 'infused';
  const thickness = (name: string): string => {
    const found = mass.panels.find(({ panel }) => panel.name === name);
    return found && found.layUp.thickness > 0 ? format.thickness(found.layUp.thickness) : '';
  };
  return workTable(`Lay-up, ${how}: ${item.name}`, {
    columns: LAY_UP,
    rows: [
      ...panels.map((panel) => layUpRow(panel, thickness(panel.name), format)),
      ...withoutArea.map(({ name, reason }) =>
        row('plain', name, '', '', `Not computed: ${reason}. Ask.`),
      ),
    ],
    notes: [
      [...cutWords(part, format), ...mixWords(part, figures, format)].join(' '),
      ...(last && stageIsNotTheShells(part, figures) ? methodLines('layUp') : []),
    ].filter((note) => note !== ''),
  });
}

/** The shell's own table says how thickness is found. */
const stageIsNotTheShells = ({ stage }: PartLayUp, { laminate }: Figures): boolean =>
  'notComputed' in laminate || stage !== 'laminate';

function cutWords({ kit }: PartLayUp, format: Formatter): readonly string[] {
  const cuts = kit.cuts.map(({ part, list }) => {
    const strips = new Map<string, number>();
    for (const { name, length, width } of list.rows.flatMap((one) => one.strips)) {
      const one = `${stripName(name)} ${format.dimension(length)} × ${format.dimension(width)}`;
      strips.set(one, (strips.get(one) ?? 0) + 1);
    }
    const cut = [...strips].map(([one, times]) => `${times}${NO_BREAK}× ${one}`).join(', ');
    return `Cut from ${part}: ${cut}; ${format.length(list.length)} off the roll.${notCut(list)}`;
  });
  const cores = kit.lines.flatMap(({ part, sheets, sheet }) =>
    sheets === undefined || !sheet
      ? []
      : [
          `${part}: ${sheets}${NO_BREAK}pieces of ${format.dimension(sheet.length)} × ${format.dimension(sheet.width)}.`,
        ],
  );
  return [...cuts, ...cores];
}

/** How much resin, in how many batches. */
function mixWords(
  { kit, resin }: PartLayUp,
  { mixing }: Figures,
  format: Formatter,
): readonly string[] {
  const line = kit.lines.find(({ part }) => part === resin);
  if (!line) return [];
  const mass = kilograms(line.inBoat * line.one);
  const amount = `Resin ${line.part}: ${format.mass(mass)}`;
  const table = mixing.find(({ part }) => part === resin)?.table;
  if (!table || 'notComputed' in table) return [`${amount}.`];
  const batches = wholeUp(mass / table.largestBatch);
  return [
    `${amount}, in at least ${batches} ${batches === 1 ? 'batch' : 'batches'} of at most ${format.mass(table.largestBatch)}.`,
  ];
}
