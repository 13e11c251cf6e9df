import type { Figures } from '../../figures/index.ts';
import type { Stage } from '../../schema/index.ts';
import type { StageSheet } from './types.ts';
import { infusionTables } from './infusion-sheets.ts';
import { laminateTables } from './laminate-sheets.ts';
import { mixingTables } from './mixing-sheets.ts';
import { partLaminateTables } from './part-laminate-sheets.ts';
import { oneLinePicture, panelStripPicture } from '../sections/wiring-drawing.ts';
import { wiringTables } from './wiring-sheets.ts';

/** The tables that a stage's trade works by. */
export function tablesOfStage(figures: Figures, stage: Stage): StageSheet['tables'] {
  return [
    ...(stage === 'laminate' ? laminateTables(figures) : []),
    ...partLaminateTables(figures, stage),
    ...(stage === 'infusion' ? infusionTables(figures) : []),
    ...mixingTables(figures, stage),
    ...(stage === 'wiring' ? wiringTables(figures) : []),
  ];
}

/** The drawings that a stage's trade works by. */
export function picturesOfStage(
  figures: Figures,
  stage: Stage,
  fontCss: string,
): StageSheet['pictures'] {
  if (stage !== 'wiring') return [];
  return [oneLinePicture(figures, fontCss), panelStripPicture(figures, fontCss)].filter(
    (picture) => picture !== undefined,
  );
}
