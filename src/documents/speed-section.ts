import { drawPowerCurve, type PowerLine } from '../draw/index.ts';
import { type DriveLoading, type EngineRow, type Figures, reserveOf } from '../figures/index.ts';
import { decimalToNumber, UNIT_KINDS } from '../units/index.ts';
import { notComputed, type PerformancePrinter, performancePrinter } from './performance-words.ts';
import { pictureOf } from './picture.ts';
import {
  figureColumn,
  flagRow,
  plainRow,
  type Section,
  section,
  type SectionTable,
  textColumn,
} from './section.ts';

const KNOT = UNIT_KINDS.speed.kn;

/** Speed by every outboard that she may carry, fuel, range, propeller and bow motor. */
export function speedSection(figures: Figures, fontCss: string): Section {
  const print = performancePrinter(figures.build);
  const { drive } = figures;
  return section('speed', 'Speed and fuel', {
    words: speedWords(figures, print),
    tables: [
      loadingTable(drive.loadings, print),
      engineTable(drive.engines, print),
      ...(drive.fuel.length > 0 ? [fuelTable(figures, print)] : []),
    ],
    pictures: speedPictures(figures, fontCss, print),
    notes: speedNotes(figures, print),
  });
}

function speedWords(figures: Figures, print: PerformancePrinter): readonly string[] {
  const { build, drive } = figures;
  const words = build.outboard
    ? [
        'Estimated, trial to confirm. Each speed is a band, for the least and the most of the outboard’s power that may reach the water.',
      ]
    : ['No outboard is in this order: the speeds are those of outboards that the hull may carry.'];
  return [...words, ...propellerWords(drive, print), ...bowWords(drive, print)];
}

function propellerWords({ propeller }: Figures['drive'], { format }: PerformancePrinter) {
  if (!propeller) return [];
  if ('notComputed' in propeller) return [`Propeller: ${notComputed(propeller)}.`];
  const inches = (pitch: number): string =>
    `${format.number(pitch * 1000, 0)} mm (${format.number(pitch / UNIT_KINDS.length.in, 1)} in)`;
  return [
    `Propeller: a pitch of about ${inches(propeller.middle)}, from ${inches(propeller.finest)} to ${inches(propeller.coarsest)}, puts full throttle inside the engine’s range of speeds, loaded.`,
  ];
}

function bowWords({ bowMotor }: Figures['drive'], { format }: PerformancePrinter) {
  if (!bowMotor) return [];
  const { name, thrust, needed, time } = bowMotor;
  if ('notComputed' in needed) return [`${name}: ${notComputed(needed)}.`];
  const hours =
    'notComputed' in time
      ? `hours on the batteries ${notComputed(time)}`
      : `the batteries last about ${format.number(time.hours, 1)} h at ${format.number(time.current, 0)} A`;
  return [
    `${name}: holding her takes about ${format.number(needed.needed, 0)} N of its ${format.number(thrust, 0)} N; ${hours}.`,
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
    ],
    rows: loadings.map(({ loading, speed, porpoisingAbove, hump }) => {
      const mass = print.format.mass(loading.mass);
      const highest =
        'notComputed' in hump
          ? 'not computed'
          : `${print.degrees(hump.state.trim)} at ${print.knots(hump.state.speed)}`;
      if ('notComputed' in speed) {
        return flagRow(loading.name, mass, notComputed(speed), '', '', '', '', highest);
      }
      const limit = typeof porpoisingAbove === 'number' ? porpoisingAbove : undefined;
      const row = limit !== undefined && speed.state.trim > limit ? flagRow : plainRow;
      return row(
        loading.name,
        mass,
        print.band(speed.speed),
        print.knots(speed.speed.likely),
        print.knots(speed.crouch),
        print.degrees(speed.state.trim),
        limit === undefined ? 'not computed' : print.degrees(limit),
        highest,
      );
    }),
  };
}

function engineTable(engines: readonly EngineRow[], print: PerformancePrinter): SectionTable {
  const speedOf = (speed: EngineRow['light']): string =>
    'notComputed' in speed ? 'does not plane' : print.band(speed.speed);
  return {
    caption: 'By every outboard that the hull may carry',
    columns: [textColumn('Outboard'), ...['Power', 'Mass', 'Light', 'Loaded'].map(figureColumn)],
    rows: engines.map(({ model, mass, ordered, light, loaded }) =>
      plainRow(
        `${model.name}${ordered ? ', as ordered' : ''}`,
        print.format.power(model.power),
        print.format.mass(mass),
        speedOf(light),
        speedOf(loaded),
      ),
    ),
  };
}

function fuelTable({ drive, build }: Figures, print: PerformancePrinter): SectionTable {
  const fuel = build.order.fuel === undefined ? 'no fuel' : print.format.volume(build.order.fuel);
  return {
    caption: `Loaded, on ${fuel} with ${print.format.percent(reserveOf(build), 0)} kept back`,
    columns: [textColumn('At'), ...['Speed', 'Fuel', 'Range'].map(figureColumn)],
    rows: drive.fuel.map(({ name, speed, flow, range }) =>
      plainRow(name, print.knots(speed), print.flow(flow), print.range(range)),
    ),
  };
}

/** Power against speed, with every outboard marked; nothing where she planes in no loading. */
function speedPictures(
  { drive, build }: Figures,
  fontCss: string,
  print: PerformancePrinter,
): Section['pictures'] {
  const lines = drive.loadings
    .filter(({ loading }) => loading.name === 'light' || loading.name === 'loaded')
    .map((one) => powerLine(one, drive.engines, print));
  if (lines.every(({ marks }) => marks.length === 0)) return [];
  const drawing = drawPowerCurve({
    subject: `the ${build.hull.name}`,
    lines,
    ordered: build.outboard?.model.name ?? '',
    fontCss,
  });
  const caption =
    'Power that a speed takes, likely, and what each outboard that she may carry drives her to. Estimated to Savitsky 1964; trial to confirm.';
  return [{ ...pictureOf(drawing), caption }];
}

function powerLine(
  { loading, curve }: DriveLoading,
  engines: readonly EngineRow[],
  print: PerformancePrinter,
): PowerLine {
  const marks = engines.flatMap(({ model, ordered, light, loaded }) => {
    const speed = loading.name === 'light' ? light : loaded;
    if ('notComputed' in speed) return [];
    return [{ speed: speed.speed.likely / KNOT, power: model.power / 1000, ordered }];
  });
  const most = 1.15 * Math.max(0, ...marks.map(({ power }) => power));
  const points = curve.flatMap(({ speed, power }) =>
    'notComputed' in power || power.likely / 1000 > most
      ? []
      : [{ speed: speed / KNOT, power: power.likely / 1000 }],
  );
  const people = `${loading.people} aboard`;
  return { name: `${loading.name}: ${print.format.mass(loading.mass)}, ${people}`, points, marks };
}

function speedNotes({ build }: Figures, { format }: PerformancePrinter): readonly string[] {
  const { efficiency, slip, holding, water } = build.yard.drive;
  const share = (value: typeof slip): string => format.percent(decimalToNumber(value), 0);
  const knots = (speed: number): string => `${format.number(speed / KNOT, 0)} kn`;
  return [
    `Light: ready to launch with one person. Loaded: with everybody ordered for and their gear. ${water === 'sea' ? 'Sea' : 'Fresh'} water, calm, no wind, clean bottom.`,
    `Drag by Savitsky, Hydrodynamic Design of Planing Hulls, Marine Technology 1(1), 1964, for planing only; ${share(efficiency.low)} to ${share(efficiency.high)} of the power moves the boat, ${share(efficiency.likely)} likely (common practice, no source). Crouch’s formula knows mass and power only. Estimated; verify by trial.`,
    'Porpoising by Celano’s regression, US Naval Academy, 1998, with the outboard trimmed level; not computed for a lightly loaded hull. Verify by trial.',
    `Fuel from the engine’s consumption at part load (common practice, no source); cruise is the speed that the order names, or seven tenths of full speed. A slip of ${share(slip)}, and the gear ratio of the catalogue. Verify by trial.`,
    `A bow motor is held against ${knots(holding.wind)} of wind, with gusts, and ${knots(holding.current)} of current from the same side. Estimated; verify by trial.`,
  ];
}
