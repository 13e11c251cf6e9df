import type { DriveFigures, Figures } from '../figures/index.ts';
import { type Metres, UNIT_KINDS } from '../units/index.ts';
import { type EstimatePrinter, estimatePrinter, textOf } from './estimate-words.ts';
import {
  figureColumn,
  plainRow,
  type Section,
  section,
  type SectionTable,
  textColumn,
} from './section.ts';

const LITRE_AN_HOUR = UNIT_KINDS.volume.L / UNIT_KINDS.duration.h;
const NAUTICAL_MILE = 1852;

/** Speed in each loading and by each outboard, fuel, propeller and bow motor: estimates, for the yard. */
export function driveSection({ build, drive }: Figures): Section {
  const print = estimatePrinter(build);
  return section('drive', 'Speed and fuel', {
    words: [...propellerWords(drive, print), ...bowMotorWords(drive, print)],
    tables: [
      speedTable(drive, print),
      ...(drive.engines.length > 0 ? [engineTable(drive, print)] : []),
      ...(drive.fuel.length > 0 ? [fuelTable(drive, print)] : []),
    ],
    notes: [
      'Speed: estimated to Savitsky’s method (1964) and an overall efficiency of the propeller from the yard file; verify by trial. Calm water, clean bottom, one hull with hard chines.',
      'Second opinion: Crouch’s formula, from mass and power alone. Trim above which she may porpoise: estimated to Celano 1998; verify by trial.',
      'Fuel: power x specific consumption / density, and a reserve kept back; estimated; verify by trial and carry more than it says.',
    ],
  });
}

function speedTable(
  { loadings }: DriveFigures,
  { format, knots, degrees }: EstimatePrinter,
): SectionTable {
  return {
    caption: 'Speed with the outboard as ordered, estimated',
    columns: [
      textColumn('Loading'),
      ...['Mass', 'Least', 'Likely', 'Most', 'By Crouch', 'Trim', 'May porpoise above'].map(
        figureColumn,
      ),
    ],
    rows: loadings.map(({ loading, speed, porpoisingAbove }) => {
      const what = [loading.name, format.mass(loading.mass)];
      if ('notComputed' in speed) {
        return plainRow(...what, '', textOf(speed, String), '', '', '', '');
      }
      const { low, likely, high } = speed.speed;
      return plainRow(
        ...what,
        knots(low),
        knots(likely),
        knots(high),
        knots(speed.crouch),
        degrees(speed.state.trim),
        textOf(porpoisingAbove, degrees),
      );
    }),
  };
}

function engineTable({ engines }: DriveFigures, { format, knots }: EstimatePrinter): SectionTable {
  return {
    caption: 'Likely speed by each outboard that the hull is rated for, estimated',
    columns: [textColumn('Outboard'), ...['Power', 'Mass', 'Light', 'Loaded'].map(figureColumn)],
    rows: engines.map(({ model, mass, ordered, light, loaded }) =>
      plainRow(
        `${model.name}${ordered ? ', as ordered' : ''}`,
        format.power(model.power),
        format.mass(mass),
        textOf(light, ({ speed }) => knots(speed.likely)),
        textOf(loaded, ({ speed }) => knots(speed.likely)),
      ),
    ),
  };
}

function fuelTable({ fuel }: DriveFigures, { format, knots }: EstimatePrinter): SectionTable {
  return {
    caption: 'Fuel, loaded, estimated',
    columns: [textColumn('At'), ...['Speed', 'Fuel', 'Range, reserve kept'].map(figureColumn)],
    rows: fuel.map(({ name, speed, flow, range }) =>
      plainRow(
        name,
        textOf(speed, knots),
        textOf(flow, (known) => `${format.number(known / LITRE_AN_HOUR, 1)}\u00A0L/h`),
        textOf(range, (known) => `${format.number(known / NAUTICAL_MILE, 0)}\u00A0nmi`),
      ),
    ),
  };
}

function propellerWords(
  { propeller }: DriveFigures,
  { format }: EstimatePrinter,
): readonly string[] {
  if (!propeller) return [];
  const inches = (pitch: Metres): string => format.number(pitch / UNIT_KINDS.length.in, 1);
  return [
    `Pitch of the propeller for full throttle, loaded: ${textOf(
      propeller,
      ({ finest, middle, coarsest }) =>
        `about ${inches(middle)} in, from ${inches(finest)} to ${inches(coarsest)} in, estimated; verify by trial`,
    )}.`,
  ];
}

function bowMotorWords({ bowMotor }: DriveFigures, { format }: EstimatePrinter): readonly string[] {
  if (!bowMotor) return [];
  const { name, thrust, needed, time } = bowMotor;
  const push = (force: number): string => `${format.number(force, 0)}\u00A0N`;
  const wanted = textOf(needed, (known) => push(known.needed));
  const hours = textOf(time, (known) => `${format.number(known.hours, 1)}\u00A0h`);
  return [
    `${name}: thrust ${push(thrust)}; to hold her against the wind and current of the yard file: ${wanted}; time on the batteries: ${hours}. Estimated from wind, gusts and current from one side; verify by trial.`,
  ];
}
