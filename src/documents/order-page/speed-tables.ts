import { type DriveLoading, type EngineRow, type Figures, reserveOf } from '../../figures/index.ts';
import { UNIT_KINDS } from '../../units/index.ts';
import type { PerformancePrinter } from '../sections/performance-words.ts';
import {
  figureColumn,
  flagRow,
  plainRow,
  type SectionTable,
  textColumn,
} from '../sections/section.ts';
import { capital } from '../sections/words.ts';
import { NO_BREAK } from '../../units/index.ts';

/** Speeds as ordered, by every outboard that she may carry, and what she burns. */
export function speedTables(figures: Figures, print: PerformancePrinter): readonly SectionTable[] {
  const { loadings, engines, fuel } = figures.drive;
  return [
    loadingTable(loadings, print),
    ...(engines.length > 0 ? [engineTable(engines, print)] : []),
    ...(fuel.length > 0 ? [fuelTable(figures, print)] : []),
  ];
}

function loadingTable(loadings: readonly DriveLoading[], print: PerformancePrinter): SectionTable {
  return {
    caption: 'At full throttle, as ordered',
    columns: [
      textColumn('Loading'),
      ...['Mass', 'Speed', 'Likely', 'By Crouch', 'Trim', 'Porpoises above', 'Hump'].map(
        figureColumn,
      ),
      textColumn('Range of the method'),
    ],
    rows: loadings.map((one) => loadingRow(one, print)),
  };
}

function loadingRow(
  { name, loading, speed, porpoisingAbove, hump }: DriveLoading,
  print: PerformancePrinter,
): SectionTable['rows'][number] {
  const mass = print.format.mass(loading.mass);
  const highest = humpText(hump, print);
  if ('notComputed' in speed) {
    return flagRow(name, mass, 'not computed', '', '', '', '', highest, speed.notComputed);
  }
  const limit = typeof porpoisingAbove === 'number' ? porpoisingAbove : undefined;
  const row = limit !== undefined && speed.state.trim > limit ? flagRow : plainRow;
  const { outside, trim } = speed.state;
  return row(
    name,
    mass,
    print.band(speed.speed),
    print.knots(speed.speed.likely),
    print.knots(speed.crouch),
    print.degrees(trim),
    limit === undefined ? 'not computed' : print.degrees(limit),
    highest,
    outside.length === 0 ? 'within' : outside.join('; '),
  );
}

function humpText(hump: DriveLoading['hump'], print: PerformancePrinter): string {
  if ('notComputed' in hump) return 'not computed';
  const { state, isClimb } = hump;
  const climb = isClimb ? ', a climb' : '';
  const knots = print.format.number(state.speed / UNIT_KINDS.speed.kn, 0);
  return `${print.degrees(state.trim)} at about ${knots}${NO_BREAK}kn${climb}`;
}

function engineTable(engines: readonly EngineRow[], print: PerformancePrinter): SectionTable {
  const loadings = engines[0]?.speeds.map(({ name }) => capital(name)) ?? [];
  return {
    caption: 'By every outboard that the hull may carry, at full throttle',
    columns: [textColumn('Outboard'), ...['Power', 'Mass', ...loadings].map(figureColumn)],
    rows: engines.map(({ model, mass, ordered, speeds }) =>
      plainRow(
        `${model.name}${ordered ? ', as ordered' : ''}`,
        print.format.power(model.power),
        print.format.mass(mass),
        ...speeds.map(({ speed }) => {
          if ('notComputed' in speed) return 'does not plane';
          return `${print.band(speed.speed)}${speed.state.outside.length > 0 ? '*' : ''}`;
        }),
      ),
    ),
  };
}

/** In a narrow cell; why it is not computed stands in the table of loadings. */
const known = <Value extends number>(
  value: Value | { readonly notComputed: string },
  print: (value: Value) => string,
): string => (typeof value === 'object' ? 'not computed' : print(value));

function fuelTable({ drive, build }: Figures, print: PerformancePrinter): SectionTable {
  const fuel = build.order.fuel === undefined ? 'no fuel' : print.format.volume(build.order.fuel);
  return {
    caption: `Loaded, on ${fuel} with ${print.format.percent(reserveOf(build), 0)} kept back`,
    columns: [textColumn('At'), ...['Speed', 'Fuel', 'Range'].map(figureColumn)],
    rows: drive.fuel.map(({ name, speed, flow, range }) =>
      plainRow(name, known(speed, print.knots), known(flow, print.flow), known(range, print.range)),
    ),
  };
}
