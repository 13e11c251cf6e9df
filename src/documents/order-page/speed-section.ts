import { drawPowerCurve, type PowerLine } from '../../draw/index.ts';
import type { DriveLoading, EngineRow, Figures } from '../../figures/index.ts';
import { KNOT } from '../../units/index.ts';
import { type PerformancePrinter, performancePrinter } from '../sections/performance-words.ts';
import { pictureOf } from '../sections/picture.ts';
import { type Section, section } from '../sections/section.ts';
import { speedNotes } from './speed-notes.ts';
import { speedTables } from './speed-tables.ts';
import { speedWords } from './speed-words.ts';

/** Speed by every outboard that she may carry, fuel, range, propeller and bow motor. */
export function speedSection(figures: Figures, fontCss: string): Section {
  const print = performancePrinter(figures.build);
  return section('speed', 'Speed and fuel', {
    words: speedWords(figures, print),
    tables: speedTables(figures, print),
    pictures: speedPictures(figures, fontCss, print),
    notes: speedNotes(figures, print),
  });
}

/** Power against speed, with every outboard marked; nothing where she planes in no loading. */
function speedPictures(
  { drive, build }: Figures,
  fontCss: string,
  print: PerformancePrinter,
): Section['pictures'] {
  const dryFirst = (['light', 'loaded', 'light with ballast', 'loaded with ballast'] as const)
    .map((wanted) => drive.loadings.find(({ name }) => name === wanted))
    .filter((one) => one !== undefined);
  const lines = dryFirst.map((one) => powerLine(one, drive.engines, print));
  if (lines.every(({ marks }) => marks.length === 0)) return [];
  const drawing = drawPowerCurve({
    subject: `the ${build.hull.name}`,
    lines,
    ordered: build.outboard?.model.name ?? '',
    fontCss,
  });
  const caption =
    'Power that a speed takes, likely, with the outboard’s mass as ordered; the marks are what each outboard that she may carry drives her to, with its own mass, so that they may stand beside the line. Estimated to Savitsky 1964; trial to confirm.';
  return [{ ...pictureOf(drawing), caption }];
}

function powerLine(
  { name, loading, curve }: DriveLoading,
  engines: readonly EngineRow[],
  print: PerformancePrinter,
): PowerLine {
  const marks = engines.flatMap(({ model, ordered, speeds }) => {
    const speed = speeds.find((one) => one.name === name)?.speed;
    if (!speed || 'notComputed' in speed) return [];
    return [{ speed: speed.speed.likely / KNOT, power: model.power / 1000, ordered }];
  });
  const most = 1.15 * Math.max(0, ...marks.map(({ power }) => power));
  const points = curve.flatMap(({ speed, power }) =>
    'notComputed' in power || power.likely / 1000 > most
      ? []
      : [{ speed: speed / KNOT, power: power.likely / 1000 }],
  );
  const people = `${loading.people} aboard`;
  return { name: `${name}: ${print.format.mass(loading.mass)}, ${people}`, points, marks };
}
