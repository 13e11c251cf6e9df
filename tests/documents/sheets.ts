import {
  type BuildSheetView,
  buildSheetView,
} from '../../src/documents/build-sheet/build-sheet.ts';
import type { BuildHours } from '../../src/resolve/index.ts';
import type { Stage } from '../../src/schema/index.ts';
import { parseDecimal, ZERO } from '../../src/units/index.ts';
import { breakable, fittedFigures } from './fitted-build.ts';
import { blocksOf, cellsOf } from './letters.ts';

type Wanted = Parameters<typeof fittedFigures>[0];

export const sheet = (wanted: Wanted = {}): BuildSheetView =>
  breakable(buildSheetView(fittedFigures(wanted), { fontCss: '' }));

export const decimal = (text: string) => parseDecimal(text) ?? ZERO;
export const work = (stage: Stage, hours: string): BuildHours => ({ stage, hours: decimal(hours) });
export const stagesOf = (view: BuildSheetView) =>
  view.parts.filter(({ style }) => style === 'stage');
export const idOf = (stage: Stage) => `stage-${stage}`;
/** The blocks of a part that stand under a style of heading. */
export const underStyle = (view: BuildSheetView, id: string, style: string) =>
  blocksOf(view, id).flatMap((block) =>
    block.block === 'under' && block.style === style ? [...block.blocks] : [],
  );
export const rowsUnder = (view: BuildSheetView, id: string, style: string) =>
  underStyle(view, id, style).flatMap((block) => (block.block === 'table' ? block.rows : []));
export const itemsOf = (view: BuildSheetView, id: string) =>
  rowsUnder(view, id, 'items')
    .filter(({ kind }) => kind !== 'beneath')
    .map(cellsOf);
/** Code, quantity and unit of what is fetched; whether its batch is written down. */
export const materialsOf = (view: BuildSheetView, id: string) => [
  ...rowsUnder(view, id, 'materials')
    .map(cellsOf)
    .map(([, code, , amount]) => ({ code, amount, traced: true })),
  ...underStyle(view, id, 'materials').flatMap((block) =>
    block.block === 'checks'
      ? block.lines.map((line) => {
          const { strong, amount } = typeof line === 'string' ? {} : line;
          return { code: strong, amount, traced: false };
        })
      : [],
  ),
];
