import { UNIT_KINDS } from '../../units/index.ts';
import type { SpeedEstimate } from '../../performance/index.ts';
import { reserveOf } from './fuel-use.ts';
import type { FigureDatum, Figures } from '../types.ts';
import { datumOf } from '../datum.ts';

type Data = Record<string, FigureDatum>;

const KNOT = UNIT_KINDS.speed.kn;
const DEGREE = UNIT_KINDS.angle.deg;
const LITRE_AN_HOUR = UNIT_KINDS.volume.L / UNIT_KINDS.duration.h;
const NAUTICAL_MILE = 1852;
const SAVITSKY = 'estimated to Savitsky 1964 and an overall efficiency; verify by trial';
const CROUCH = 'Crouch’s formula, a second estimate; verify by trial';
const CELANO = 'estimated to Celano 1998; verify by trial';

/** Speed, fuel, propeller and bow motor by stable dotted names. */
export function driveData({ drive, build }: Pick<Figures, 'drive' | 'build'>): Readonly<Data> {
  const data: Data = {};
  for (const { loading, speed, hump, porpoisingAbove } of drive.loadings) {
    const name = `drive.${loading.name.replaceAll(' ', '-')}`;
    data[`${name}.mass`] = datumOf(loading.mass, 'kg', 'ready boat and people with gear', 3);
    addSpeed(data, name, speed);
    data[`${name}.hump-trim`] = datumOf(
      'notComputed' in hump ? hump : hump.state.trim / DEGREE,
      '°',
      SAVITSKY,
      2,
    );
    data[`${name}.porpoises-above`] = datumOf(
      typeof porpoisingAbove === 'number' ? porpoisingAbove / DEGREE : porpoisingAbove,
      '°',
      CELANO,
      2,
    );
  }
  for (const { model, speeds } of drive.engines) {
    for (const { name, speed } of speeds) {
      const likely = 'notComputed' in speed ? speed : speed.speed.likely / KNOT;
      const key = `drive.engine.${model.id}.${name.replaceAll(' ', '-')}`;
      data[key] = datumOf(likely, 'kn', SAVITSKY, 2);
    }
  }
  return { ...data, ...fuelData({ drive, build }), ...propellerData(drive), ...bowData(drive) };
}

function addSpeed(data: Data, name: string, speed: Figures['drive']['loadings'][number]['speed']) {
  const lacks = 'notComputed' in speed;
  const of = (value: (known: SpeedEstimate) => number) => (lacks ? speed : value(speed));
  data[`${name}.speed-low`] = datumOf(
    of((known) => known.speed.low / KNOT),
    'kn',
    SAVITSKY,
    2,
  );
  data[`${name}.speed`] = datumOf(
    of((known) => known.speed.likely / KNOT),
    'kn',
    SAVITSKY,
    2,
  );
  data[`${name}.speed-high`] = datumOf(
    of((known) => known.speed.high / KNOT),
    'kn',
    SAVITSKY,
    2,
  );
  data[`${name}.speed-crouch`] = datumOf(
    of((known) => known.crouch / KNOT),
    'kn',
    CROUCH,
    2,
  );
  data[`${name}.trim`] = datumOf(
    of((known) => known.state.trim / DEGREE),
    '°',
    SAVITSKY,
    2,
  );
}

function fuelData({ drive, build }: Pick<Figures, 'drive' | 'build'>): Data {
  const data: Data = {};
  const share = reserveOf(build).toFixed(2);
  for (const { name, speed, flow, range } of drive.fuel) {
    const key = `drive.${name.replaceAll(' ', '-')}`;
    const scaled = (value: typeof speed | typeof flow | typeof range, unit: number) =>
      typeof value === 'number' ? value / unit : value;
    data[`${key}.speed`] = datumOf(scaled(speed, KNOT), 'kn', SAVITSKY, 2);
    data[`${key}.fuel`] = datumOf(
      scaled(flow, LITRE_AN_HOUR),
      'L/h',
      'power x specific consumption / density; verify by trial',
      2,
    );
    data[`${key}.range`] = datumOf(
      scaled(range, NAUTICAL_MILE),
      'nmi',
      `fuel as ordered less a reserve of ${share}, over the flow; verify by trial`,
      1,
    );
  }
  return data;
}

function propellerData({ propeller }: Figures['drive']): Data {
  if (!propeller) return {};
  const lacks = 'notComputed' in propeller;
  const method = 'speed / (turns of the propeller x (1 - slip)); verify by trial';
  return {
    'drive.propeller.finest': datumOf(lacks ? propeller : propeller.finest, 'm', method, 3),
    'drive.propeller.pitch': datumOf(lacks ? propeller : propeller.middle, 'm', method, 3),
    'drive.propeller.coarsest': datumOf(lacks ? propeller : propeller.coarsest, 'm', method, 3),
  };
}

function bowData({ bowMotor }: Figures['drive']): Data {
  if (!bowMotor) return {};
  const { needed, time } = bowMotor;
  return {
    'drive.bow-motor.needed': datumOf(
      'notComputed' in needed ? needed : needed.needed,
      'N',
      'wind with gusts and current from the same side; verify by trial',
      1,
    ),
    'drive.bow-motor.hours': datumOf(
      'notComputed' in time ? time : time.hours,
      'h',
      'usable charge / current at that thrust; verify by trial',
      2,
    ),
  };
}
