import {
  type AddedDrag,
  type Climb,
  climbOf,
  type Computed,
  CROUCH_CONSTANTS,
  type CrouchHull,
  fastestOn,
  findHump,
  type Hump,
  joinedCurve,
  pitchBand,
  type PitchChoice,
  planingStates,
  porpoisingTrim,
  type Running,
  type SlowEstimate,
  type SpeedEstimate,
  speedFor,
} from '../../performance/index.ts';
import {
  centreOf,
  type Loading,
  type LoadingName,
  type MassResult,
  type WeightedCentre,
} from '../../mass/index.ts';
import { type Build, outboardCentre } from '../../resolve/index.ts';
import type { Outboard } from '../../schema/index.ts';
import {
  decimalToNumber,
  type Kilograms,
  type MetresPerSecond,
  type NotComputed,
  type Radians,
  type Watts,
  watts,
} from '../../units/index.ts';
import type { ElectricsFigures } from '../electrics/electrics.ts';
import type { FloatFigures } from '../float/types.ts';
import { inWorseWater, type NamedWater, watersOf } from '../water.ts';
import { type BowMotorFigures, bowMotorFigures } from './bow-motor.ts';
import { type FuelUse, fuelUse } from './fuel-use.ts';
import { atRest, dragsOf, runningOf } from './running.ts';

/** The loadings that the boat is driven in, by the names that speed has for them. */
const DRIVEN = [
  ['light', 'one aboard'],
  ['light with ballast', 'one aboard with ballast'],
  ['loaded', 'as ordered'],
  ['loaded with ballast', 'as ordered with ballast'],
] as const satisfies readonly (readonly [string, LoadingName])[];
type DriveName = (typeof DRIVEN)[number][0];

/** Lowest, likely and highest speed. */
export type SpeedBand = SpeedEstimate['speed'];

/** The boat in one loading, with the outboard that is ordered. */
export interface DriveLoading {
  readonly name: DriveName;
  readonly loading: Loading;
  /** The boat as the planing method sees it. */
  readonly running: Computed<Running>;
  /** False where the method is not for such a hull. */
  readonly applies: boolean;
  readonly speed: Computed<SpeedEstimate>;
  readonly hump: Computed<Hump>;
  /** Where it does not plane: the speed before planing. */
  readonly slow: Computed<SlowEstimate>;
  /** What stands in the way of planing, and what it takes; `rises` where nothing does. */
  readonly climb: Computed<Climb | { readonly rises: true }>;
  /** The trim above which it may porpoise, at the likely speed. */
  readonly porpoisingAbove: Computed<Radians>;
  /** Power that likely drives it at each planing speed. */
  readonly curve: readonly { readonly speed: MetresPerSecond; readonly power: Watts }[];
}

/** An outboard of the catalogue that the hull may carry. */
export interface EngineRow {
  readonly model: Outboard;
  readonly mass: Kilograms;
  readonly ordered: boolean;
  /** One for each loading of `DriveFigures`, in their order. */
  readonly speeds: readonly {
    readonly name: DriveName;
    readonly speed: Computed<SpeedEstimate>;
  }[];
}

/** Speed, fuel and propeller, estimated. */
export interface DriveFigures {
  /** Of the waters that the boat is used in, the one in which it is slower: speed and fuel are in it. */
  readonly water: NamedWater['name'];
  readonly loadings: readonly DriveLoading[];
  /** What is reckoned to drag beside the bottom. */
  readonly drags: readonly AddedDrag[];
  /** Crouch's constant for the hull, mph, hp and lb. */
  readonly crouchConstant: number;
  /** Loaded, with the outboard that is ordered; empty without one. */
  readonly fuel: readonly FuelUse[];
  /** Pitch for full throttle, loaded. */
  readonly propeller?: Computed<PitchChoice>;
  readonly bowMotor?: BowMotorFigures;
}

const NO_OUTBOARD = { notComputed: 'no outboard is in this order' };

/** Speed in every loading, by every outboard that it may carry; fuel, propeller and bow motor as ordered. */
export function driveFigures(
  build: Build,
  { loadings }: MassResult,
  float: FloatFigures,
  electrics: ElectricsFigures | NotComputed,
): DriveFigures {
  const { outboard } = build;
  const water = slowerWater(build, loadings['as ordered']);
  const driven = DRIVEN.flatMap(([name, aboard]) => {
    const loading = loadings[aboard];
    return loading ? [driveLoading(build, float, water, name, loading)] : [];
  });
  const loaded = driven.find(({ name }) => name === 'loaded');
  const bowMotor = bowMotorFigures(build, loadings['as ordered'], float, electrics);
  return {
    water: water.name,
    loadings: driven,
    drags: dragsOf(build),
    crouchConstant: CROUCH_CONSTANTS[build.hull.performance.crouch],
    fuel: outboard && loaded ? fuelUse(build, loaded.running, loaded.speed) : [],
    ...(outboard && loaded && { propeller: propellerFor(build, outboard.model, loaded.speed) }),
    ...(bowMotor && { bowMotor }),
  };
}

/** Of the waters that it is used in, the one in which it is slower as ordered, or does not plane. */
function slowerWater(build: Build, loading: Loading): NamedWater {
  const { outboard } = build;
  if (!outboard) return watersOf(build)[0];
  return inWorseWater(
    build,
    (water) => water,
    (water) => {
      const running = runningOf(build, loading, water);
      const speed = 'notComputed' in running ? running : speedOf(build, running, outboard.model);
      return 'notComputed' in speed ? Infinity : 0 - speed.speed.likely;
    },
  );
}

function driveLoading(
  build: Build,
  float: FloatFigures,
  water: NamedWater,
  name: DriveName,
  loading: Loading,
): DriveLoading {
  const running = runningOf(build, loading, water);
  if ('notComputed' in running) {
    return {
      name,
      loading,
      running,
      applies: false,
      speed: running,
      hump: running,
      slow: running,
      climb: running,
      porpoisingAbove: running,
      curve: [],
    };
  }
  const speed = build.outboard ? speedOf(build, running, build.outboard.model) : NO_OUTBOARD;
  return {
    name,
    loading,
    running,
    applies: true,
    speed,
    hump: findHump(running),
    ...beforePlaning(build, running, atRest(float, loading, water)),
    porpoisingAbove:
      'notComputed' in speed
        ? { notComputed: 'the boat has no planing speed' }
        : porpoisingTrim(speed.state.lift, running.hull.deadrise),
    curve: planingStates(running).map(({ speed: at, effectivePower }) => ({
      speed: at,
      power: watts(effectivePower / efficiencyOf(build).likely),
    })),
  };
}

/** What the outboard does with the boat before it planes. */
function beforePlaning(
  build: Build,
  running: Running,
  hull: Parameters<typeof joinedCurve>[1],
): Pick<DriveLoading, 'slow' | 'climb'> {
  const power = build.outboard?.model.power;
  if (power === undefined) return { slow: NO_OUTBOARD, climb: NO_OUTBOARD };
  const curve = joinedCurve(running, hull);
  if ('notComputed' in curve) return { slow: curve, climb: curve };
  const efficiency = efficiencyOf(build);
  return {
    slow: fastestOn(curve, power, efficiency),
    climb: climbOf(curve, power, efficiency.likely) ?? { rises: true },
  };
}

/** Outboards within the hull's ratings, with the shaft that its transom is built for. */
function enginesFor({ hull, outboards }: Build) {
  return outboards.flatMap((model) => {
    const mass = model.shafts[hull.shaft]?.mass;
    const isFit =
      mass !== undefined && mass <= hull.ratings.engineMass && model.power <= hull.ratings.power;
    return isFit ? [{ model, mass }] : [];
  });
}

const ROWS = new WeakMap<DriveFigures, readonly EngineRow[]>();

/** Speed by every outboard that the hull may carry; found when somebody asks for it, and once. */
export function enginesOf({ build, drive }: Driven): readonly EngineRow[] {
  const known = ROWS.get(drive);
  if (known) return known;
  const water = watersOf(build).find(({ name }) => name === drive.water);
  const rows = water
    ? enginesFor(build).map((one) => engineRow(build, water, one, drive.loadings))
    : [];
  ROWS.set(drive, rows);
  return rows;
}

interface Driven {
  readonly build: Build;
  readonly drive: DriveFigures;
}

function engineRow(
  build: Build,
  water: NamedWater,
  { model, mass }: { readonly model: Outboard; readonly mass: Kilograms },
  driven: readonly DriveLoading[],
): EngineRow {
  const ordered = build.outboard?.model.id === model.id;
  const speeds = driven.map(({ name, loading, speed }) => {
    if (ordered && build.outboard?.mass === mass) return { name, speed };
    const running = runningOf(build, withOutboard(loading, build, mass), water);
    return { name, speed: 'notComputed' in running ? running : speedOf(build, running, model) };
  });
  return { model, mass, ordered, speeds };
}

/** The same with another outboard, or one where there was none. */
function withOutboard({ masses }: Loading, { hull }: Build, mass: Kilograms): WeightedCentre {
  const others = masses.filter(({ kind }) => kind !== 'outboard');
  return centreOf([...others, { mass, at: outboardCentre(hull.dimensions) }]);
}

function speedOf(build: Build, running: Running, model: Outboard): Computed<SpeedEstimate> {
  const kind: CrouchHull = build.hull.performance.crouch;
  return speedFor({ running, power: model.power, efficiency: efficiencyOf(build), kind });
}

function efficiencyOf({ yard }: Build) {
  const { low, likely, high } = yard.drive.efficiency;
  return {
    low: decimalToNumber(low),
    likely: decimalToNumber(likely),
    high: decimalToNumber(high),
  };
}

function propellerFor(
  { yard }: Build,
  model: Outboard,
  speed: Computed<SpeedEstimate>,
): Computed<PitchChoice> {
  if ('notComputed' in speed) return speed;
  return pitchBand(speed.speed.likely, model.fullThrottle, {
    ratio: decimalToNumber(model.gearRatio),
    slip: decimalToNumber(yard.drive.slip),
  });
}
