import type { Figures, KitFigures, PartLayUp } from '../../figures/index.ts';
import { methodLines } from '../sections/method-notes.ts';
import { formatterOf, type Formatter, metres, NO_BREAK, squareMetres } from '../../units/index.ts';
import { type Block, column, heads, row, type Row } from '../blocks/block.ts';
import { workTable } from './work-table.ts';

type CutList = KitFigures['cuts'][number]['list'];
type Panel = Pick<PartLayUp['panels'][number], 'name' | 'area' | 'layers'>;

/** What a laminator lays, and what is cut for it; nothing when the hull has no lay-up. */
export function laminateTables({ build, laminate }: Figures): readonly Block[] {
  if ('notComputed' in laminate) return [];
  const format = formatterOf(build.yard);
  const thickness = (name: string): string => {
    const found = laminate.mass.panels.find(({ panel }) => panel.name === name);
    return found ? format.thickness(found.layUp.thickness) : '';
  };
  const schedule = workTable('Lay-up, from the {mould} inwards', {
    columns: LAY_UP,
    rows: laminate.panels.map((panel) => layUpRow(panel, thickness(panel.name), format)),
    notes: methodLines('layUp'),
  });
  const { kit } = laminate;
  return [schedule, ...(kit.cuts.length === 0 ? [] : [cutTable(kit, format)]), ...coreTable(kit)];
}

/** Columns of a lay-up. */
export const LAY_UP = [
  column('text', 'Area'),
  ...heads('num', 'Size', 'Cured'),
  column('text', 'Layers, each ticked when it is laid'),
];

/** A panel of a lay-up, its layers to tick. */
export const layUpRow = ({ name, area, layers }: Panel, cured: string, format: Formatter): Row =>
  row('plain', name, format.area(area), cured, {
    text: '',
    ticks: layers.map((layer, index) => `${index + 1}${NO_BREAK}${layer.name}`),
  });

/** A strip of a piece, whichever of its strips it is. */
export const stripName = (name: string): string => name.replace(/, strip \d+ of \d+$/, ' strip');

/** What could not be cut, and why. */
export const notCut = ({ refused }: Pick<CutList, 'refused'>): string =>
  refused.map(({ name, reason }) => ` Not cut: ${name}, ${reason}.`).join('');

function cutTable({ cuts }: KitFigures, format: Formatter): Block {
  return workTable('Cut from the rolls', {
    columns: [
      column('text', 'Fabric'),
      ...heads('num', 'Times', 'Length'),
      column('text', 'Side by side across the roll'),
      column('tick', 'Cut'),
    ],
    rows: cuts.flatMap(({ part, list }) => cutRows(part, list, format)),
    notes: cuts.map(({ part, list }) => {
      const off = format.percent(list.waste, 0);
      const by = list.saving >= 0 ? 'less' : 'more';
      const saved = format.area(squareMetres(Math.abs(list.saving)));
      return `${part}: ${format.length(list.length)} off the roll, ${format.area(list.cutArea)}, ${off} offcut; ${saved} ${by} than the pieces with the yard’s wastage.${notCut(list)}`;
    }),
  });
}

/** Rows that are cut alike stand once, with how often. */
function cutRows(part: string, { rows }: CutList, format: Formatter): readonly Row[] {
  const alike = new Map<string, { readonly length: number; times: number }>();
  for (const { length, strips } of rows) {
    const across = strips
      .map(({ name, width }) => `${stripName(name)} ${format.dimension(width)}`)
      .join(' + ');
    const key = `${across} / ${length}`;
    const before = alike.get(key);
    if (before) before.times += 1;
    else alike.set(key, { length, times: 1 });
  }
  return [...alike].map(([key, { length, times }], index) =>
    row(
      'plain',
      index === 0 ? part : '',
      `${format.number(times, 0)}${NO_BREAK}×`,
      format.dimension(metres(length)),
      key.slice(0, key.lastIndexOf(' / ')),
      '',
    ),
  );
}

function coreTable({ lines }: KitFigures): readonly Block[] {
  const cores = lines.filter(({ sheets }) => sheets !== undefined);
  if (cores.length === 0) return [];
  return [
    workTable('Core', {
      columns: [...heads('text', 'Code', 'Sheet'), column('num', 'Sheets'), column('tick', 'Cut')],
      rows: cores.map(({ part, description, sheets }) =>
        row('plain', part, description, String(sheets), ''),
      ),
    }),
  ];
}
