import {
  type Computed,
  planeAt,
  type PlaningHull,
  type PlaningState,
  runAt,
  SEA_WATER,
  type Water,
} from '../performance/index.ts';
import {
  DEGREE,
  FOOT,
  HORSEPOWER,
  kilograms,
  kilogramsPerCubicMetre,
  KNOT,
  metres,
  metresPerSecond,
  POUND,
  UNIT_KINDS,
  radians,
} from '../units/index.ts';
import { caseIn } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const POUND_FORCE = UNIT_KINDS.force.lbf;

const PAPER =
  'Savitsky, Marine Technology 1(1), 1964, worked example: 60,000 lb, 40 kn, beam 14 ft, deadrise 10° (printed value from secondary sources, not checked against the standard)';
const WORKED =
  'Savitsky, Marine Technology 1(1), 1964: his example, his equations solved in closed form, independently of this code, where he read charts';
const PRESSURE =
  'Savitsky 1964: (0.75 - 1/(5.21 Cv²/λ² + 2.39)) λ b for his example at Cv 3.18 and the λ above, worked by hand';
const SMALL =
  'Savitsky 1964: 1,100 kg, beam 1.7 m, deadrise 15°, solved in closed form, independently of this code';

const EXAMPLE: PlaningHull = {
  mass: kilograms(60_000 * POUND),
  beam: metres(14 * FOOT),
  deadrise: radians(10 * DEGREE),
  length: metres(80 * FOOT),
  centre: { x: metres(29 * FOOT), z: metres(2 * FOOT) },
  // Thrust at 4° to the keel, passing 0.5 ft below the centre of mass, measured square to it.
  thrust: {
    x: metres(29 * FOOT),
    z: metres((2 - 0.5 / Math.cos(4 * DEGREE)) * FOOT),
    angle: radians(4 * DEGREE),
  },
};
const SLUGS: Water = {
  density: kilogramsPerCubicMetre((1.99 * POUND_FORCE) / FOOT ** 4),
  viscosity: 1e-5 * FOOT ** 2,
};
const SMALL_HULL: PlaningHull = {
  mass: kilograms(1100),
  beam: metres(1.7),
  deadrise: radians(15 * DEGREE),
  length: metres(5.5),
  centre: { x: metres(1.9), z: metres(0.45) },
  thrust: { x: metres(0), z: metres(-0.25), angle: radians(0) },
};

const take = <Value>(state: Computed<PlaningState>, get: (state: PlaningState) => Value) =>
  'notComputed' in state ? Number.NaN : get(state);
const example = (degrees: number, get: (state: PlaningState) => number) => (): number =>
  take(
    planeAt(
      { hull: EXAMPLE, water: SLUGS },
      metresPerSecond(67.5 * FOOT),
      radians(degrees * DEGREE),
    ),
    get,
  );
const balanced = (get: (state: PlaningState) => number) => (): number =>
  take(runAt({ hull: EXAMPLE, water: SLUGS }, metresPerSecond(67.5 * FOOT)), get);
const small = (knots: number, get: (state: PlaningState) => number) => (): number =>
  take(runAt({ hull: SMALL_HULL, water: SEA_WATER }, metresPerSecond(knots * KNOT)), get);
const drive = caseIn('drive');

const EXAMPLE_CASES: readonly PublishedCase[] = [
  drive(
    'Lift coefficient CLβ',
    WORKED,
    0.0675,
    '',
    5e-5,
    example(2, ({ lift }) => lift),
  ),
  drive(
    'Flat lift coefficient CL0',
    WORKED,
    0.082,
    '',
    5e-5,
    example(2, (one) => one.flatLift),
  ),
  drive(
    'Speed coefficient Cv',
    WORKED,
    3.18,
    '',
    0.005,
    example(2, (one) => one.speedCoefficient),
  ),
  drive(
    'Wetted length ratio at 2°, read off his chart',
    PAPER,
    3.85,
    '',
    0.03 * 3.85,
    example(2, (one) => one.wettedRatio),
  ),
  drive(
    'Friction coefficient at 2°',
    PAPER,
    0.00174,
    '',
    1.5e-5,
    example(2, (one) => one.friction),
  ),
  drive(
    'Friction coefficient at 3°',
    PAPER,
    0.00184,
    '',
    1.5e-5,
    example(3, (one) => one.friction),
  ),
  drive(
    'Friction along the bottom at 2°',
    PAPER,
    7340,
    'lbf',
    0.03 * 7340,
    example(2, (one) => one.frictionDrag / POUND_FORCE),
  ),
  ...(
    [
      [2, 3.767, 30.91, 9326, -109_084],
      [3, 2.516, 23.13, 8149, 353_138],
      [4, 1.72, 16.87, 7725, 723_385],
    ] as const
  ).flatMap(([trim, ratio, pressed, drag, moment]) => [
    drive(
      `Wetted length ratio at ${trim}°`,
      WORKED,
      ratio,
      '',
      0.0006,
      example(trim, (one) => one.wettedRatio),
    ),
    drive(
      `{Centre} of pressure forward of the transom at ${trim}°`,
      PRESSURE,
      pressed,
      'ft',
      0.01,
      example(trim, (one) => one.centreOfPressure / FOOT),
    ),
    drive(
      `Drag at ${trim}°`,
      WORKED,
      drag,
      'lbf',
      1,
      example(trim, (one) => one.bareDrag / POUND_FORCE),
    ),
    drive(
      `Moment at ${trim}°`,
      WORKED,
      moment,
      'ft·lbf',
      10,
      example(trim, (one) => one.moment / (POUND_FORCE * FOOT)),
    ),
  ]),
  drive(
    'Trim in balance (paper: about 2.3°, from memory)',
    PAPER,
    2.3,
    '°',
    0.1,
    balanced((one) => one.trim / DEGREE),
  ),
  drive(
    'Trim in balance',
    WORKED,
    2.216,
    '°',
    0.001,
    balanced((one) => one.trim / DEGREE),
  ),
  drive(
    'Drag in balance',
    WORKED,
    8978,
    'lbf',
    1,
    balanced((one) => one.drag / POUND_FORCE),
  ),
  drive(
    'Effective power in balance',
    WORKED,
    1102,
    'hp',
    0.5,
    balanced((one) => one.effectivePower / HORSEPOWER),
  ),
];

const SMALL_CASES: readonly PublishedCase[] = (
  [
    [20, 4.5043, 1586.9, 16.327],
    [25, 3.3956, 1736.7, 22.336],
    [30, 2.667, 2024.9, 31.252],
    [35, 2.1714, 2418.4, 43.545],
  ] as const
).flatMap(([knots, trim, drag, power]) => [
  drive(
    `Trim at ${knots} kn`,
    SMALL,
    trim,
    '°',
    1e-4,
    small(knots, (one) => one.trim / DEGREE),
  ),
  drive(
    `Drag at ${knots} kn`,
    SMALL,
    drag,
    'N',
    0.06,
    small(knots, (one) => one.drag),
  ),
  drive(
    `Effective power at ${knots} kn`,
    SMALL,
    power,
    'kW',
    6e-4,
    small(knots, (one) => one.effectivePower / 1000),
  ),
]);

/** Savitsky's method against his own example and independent workings of it. */
export const SAVITSKY_CASES: readonly PublishedCase[] = [...EXAMPLE_CASES, ...SMALL_CASES];
