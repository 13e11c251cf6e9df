import { drawPowerCurve, type PowerLine } from '../../draw/index.ts';
import type { DriveLoading, EngineRow, Figures } from '../../figures/index.ts';
import { type Formatter, formatterOf } from '../../units/index.ts';
import { pictureOf } from '../sections/picture.ts';
import { type Section, section } from '../sections/section.ts';
import { speedNotes } from './speed-notes.ts';
import { speedTables } from './speed-tables.ts';
import { speedWords } from './speed-words.ts';

/** Speed by every outboard that she may carry, fuel, range, propeller and bow motor. */
export function speedSection(figures: Figures, fontCss: string): Section {
  const format = formatterOf(figures.build.yard);
  return section('speed', 'Speed and fuel', {
    words: speedWords(figures, format),
    tables: speedTables(figures, format),
    pictures: speedPictures(figures, fontCss, format),
    notes: speedNotes(figures, format),
  });
}

/** Power against speed, with every outboard marked; nothing where she planes in no loading. */
function speedPictures(
  { drive, build }: Figures,
  fontCss: string,
  format: Formatter,
): Section['pictures'] {
  const dryFirst = (['light', 'loaded', 'light with ballast', 'loaded with ballast'] as const)
    .map((wanted) => drive.loadings.find(({ name }) => name === wanted))
    .filter((one) => one !== undefined);
  const lines = dryFirst.map((one) => powerLine(one, drive.engines, format));
  if (lines.every(({ marks }) => marks.length === 0)) return [];
  const drawing = drawPowerCurve({
    subject: `the ${build.hull.name}`,
    lines,
    ordered: build.outboard?.model.name ?? '',
    format,
    fontCss,
  });
  const caption =
    'Power needed for a speed, likely value, with the outboard’s mass as ordered. The marks are the speeds of the outboards that the hull may carry, each with its own mass, so they may lie beside the line. Estimated to Savitsky 1964; trial to confirm.';
  return [{ ...pictureOf(drawing), caption }];
}

function powerLine(
  { name, loading, curve }: DriveLoading,
  engines: readonly EngineRow[],
  format: Formatter,
): PowerLine {
  const marks = engines.flatMap(({ model, ordered, speeds }) => {
    const speed = speeds.find((one) => one.name === name)?.speed;
    if (!speed || 'notComputed' in speed) return [];
    return [{ speed: speed.speed.likely, power: model.power, ordered }];
  });
  const most = 1.15 * Math.max(0, ...marks.map(({ power }) => power));
  const points = curve.flatMap(({ speed, power }) =>
    'notComputed' in power || power.likely > most ? [] : [{ speed, power: power.likely }],
  );
  const people = `${loading.people} aboard`;
  return { name: `${name}: ${format.mass(loading.mass)}, ${people}`, points, marks };
}
