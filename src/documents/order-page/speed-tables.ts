import {
  type DriveLoading,
  type EngineRow,
  enginesOf,
  type Figures,
  reserveOf,
} from '../../figures/index.ts';
import type { Formatter } from '../../units/index.ts';
import {
  captioned,
  column,
  figureColumns,
  heads,
  row,
  type Row,
  type Table,
} from '../blocks/block.ts';
import { bandText, capital } from '../sections/words.ts';

/** Speeds as ordered, by every outboard that it may carry, and what it burns. */
export function speedTables(figures: Figures, format: Formatter): readonly Table[] {
  const { loadings, fuel } = figures.drive;
  const engines = enginesOf(figures);
  return [
    loadingTable(loadings, format),
    ...(engines.length > 0 ? [engineTable(engines, format)] : []),
    ...(fuel.length > 0 ? [fuelTable(figures, format)] : []),
  ];
}

function loadingTable(loadings: readonly DriveLoading[], format: Formatter): Table {
  return captioned(
    'At full throttle, as ordered',
    [
      column('text', 'Loading'),
      ...heads('num', 'Mass', 'Speed', 'Likely', 'By Crouch', 'Trim', 'Porpoises above', 'Hump'),
      column('text', 'Range of the method'),
    ],
    loadings.map((one) => loadingRow(one, format)),
  );
}

function loadingRow(
  { name, loading, speed, slow, porpoisingAbove, hump }: DriveLoading,
  format: Formatter,
): Row {
  const mass = format.mass(loading.mass);
  const highest = humpText(hump, format);
  if ('notComputed' in speed) {
    if ('notComputed' in slow)
      return row('flag', name, mass, 'not computed', '', '', '', '', highest, speed.notComputed);
    const range = ['before planing', ...slow.outside].join('; ');
    const { likely } = slow.speed;
    const [band, middle] = [bandText(slow.speed, format), format.speed(likely)];
    return row('flag', name, mass, band, middle, '', '', '', highest, range);
  }
  const limit = typeof porpoisingAbove === 'number' ? porpoisingAbove : undefined;
  const isOver = limit !== undefined && speed.state.trim > limit;
  const { outside, trim } = speed.state;
  return row(
    isOver ? 'flag' : 'plain',
    name,
    mass,
    bandText(speed.speed, format),
    format.speed(speed.speed.likely),
    format.speed(speed.crouch),
    format.angle(trim),
    limit === undefined ? 'not computed' : format.angle(limit),
    highest,
    outside.length === 0 ? 'within' : outside.join('; '),
  );
}

function humpText(hump: DriveLoading['hump'], format: Formatter): string {
  if ('notComputed' in hump) return 'not computed';
  const { state, isClimb } = hump;
  const climb = isClimb ? ', a climb' : '';
  return `${format.angle(state.trim)} at about ${format.roundSpeed(state.speed)}${climb}`;
}

function engineTable(engines: readonly EngineRow[], format: Formatter): Table {
  const loadings = engines[0]?.speeds.map(({ name }) => capital(name)) ?? [];
  return captioned(
    'By every outboard that the hull may carry, at full throttle',
    figureColumns('Outboard', 'Power', 'Mass', ...loadings),
    engines.map(({ model, mass, ordered, speeds }) =>
      row(
        'plain',
        `${model.name}${ordered ? ', as ordered' : ''}`,
        format.power(model.power),
        format.mass(mass),
        ...speeds.map(({ speed }) => {
          if ('notComputed' in speed) return 'does not plane';
          return `${bandText(speed.speed, format)}${speed.state.outside.length > 0 ? '*' : ''}`;
        }),
      ),
    ),
  );
}

/** In a narrow cell; why it is not computed stands in the table of loadings. */
const known = <Value extends number>(
  value: Value | { readonly notComputed: string },
  print: (value: Value) => string,
): string => (typeof value === 'object' ? 'not computed' : print(value));

function fuelTable({ drive, build }: Figures, format: Formatter): Table {
  const fuel = build.order.fuel === undefined ? 'no fuel' : format.volume(build.order.fuel);
  return captioned(
    `Loaded, on ${fuel} with ${format.percent(reserveOf(build), 0)} kept back`,
    figureColumns('At', 'Speed', 'Fuel', 'Range'),
    drive.fuel.map(({ name, speed, flow, range }) =>
      row(
        'plain',
        name,
        known(speed, format.speed),
        known(flow, format.flow),
        known(range, format.distance),
      ),
    ),
  );
}
