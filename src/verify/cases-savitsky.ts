import {
  type Computed,
  planeAt,
  type PlaningHull,
  type PlaningState,
  ROUGHNESS_ALLOWANCE,
  runAt,
  SEA_WATER,
  type Water,
} from '../performance/index.ts';
import {
  DEGREE,
  FOOT,
  GRAVITY,
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
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const POUND_FORCE = UNIT_KINDS.force.lbf;

const PAPER =
  'Savitsky, Marine Technology 1(1), 1964, worked example: 60,000 lb, 40 kn, beam 14 ft, deadrise 10° (printed value from secondary sources, not checked against the standard)';
const WORKED =
  'Savitsky, Marine Technology 1(1), 1964: his example, his equations solved in closed form, independently of this code, where he read charts';
const PRESSURE =
  'Savitsky 1964: (0.75 - 1/(5.21 Cv²/λ² + 2.39)) λ b for his example at Cv 3.18 and the λ above, worked by hand';
const MEASURED =
  'Fridsma, Davidson Laboratory report R-1275 (1969), measured in smooth water, second hand (a study that quotes it): beam 9 in, L/b 5, deadrise 20°, CΔ 0.608; water at 20 °C assumed';
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

type Figure = (state: PlaningState) => number;
const take = (state: Computed<PlaningState>, get: Figure) =>
  'notComputed' in state ? state : get(state);
const IN_HIS = { hull: EXAMPLE, water: SLUGS };
const HIS_SPEED = metresPerSecond(67.5 * FOOT);
const example = (degrees: number, get: Figure) => () =>
  take(planeAt(IN_HIS, HIS_SPEED, radians(degrees * DEGREE)), get);
const balanced = (get: Figure) => () => take(runAt(IN_HIS, HIS_SPEED), get);
const small = (knots: number, get: Figure) => () =>
  take(runAt({ hull: SMALL_HULL, water: SEA_WATER }, metresPerSecond(knots * KNOT)), get);

/** A prism 9 in broad and 45 in long that floats freely and is towed at its centre of mass; share of length from the stem. */
function towed(fromStem: number, knotsPerRootFoot: number, get: Figure) {
  const [beam, length] = [9 / 12, 45 / 12];
  const centre = { x: metres((1 - fromStem) * length * FOOT), z: metres(0.294 * beam * FOOT) };
  const hull: PlaningHull = {
    mass: MODEL_MASS,
    beam: metres(beam * FOOT),
    deadrise: radians(20 * DEGREE),
    length: metres(length * FOOT),
    centre,
    thrust: { ...centre, angle: radians(0) },
  };
  const speed = metresPerSecond(knotsPerRootFoot * Math.sqrt(length) * KNOT);
  return () => take(runAt({ hull, water: TANK }, speed), get);
}
/** Fresh water at 20 °C. */
const TANK: Water = { density: kilogramsPerCubicMetre(998.2), viscosity: 1.004e-6 };
/** A load coefficient of 0.608 on a beam of 9 in, in fresh water of 62.4 lb/ft³. */
const MODEL_MASS = kilograms(0.608 * 62.4 * 0.75 ** 3 * POUND);
/** Without the allowance for roughness, which a model has not. */
const smoothShare = ({ bareDrag, frictionDrag, friction, trim }: PlaningState): number =>
  (bareDrag -
    (frictionDrag * ROUGHNESS_ALLOWANCE) / ((friction + ROUGHNESS_ALLOWANCE) * Math.cos(trim))) /
  (MODEL_MASS * GRAVITY);

const drive = casesIn('drive');

const worked = (degrees: number, ratio: number, drag: number, moment: number): readonly Row[] => [
  [
    `Wetted length ratio at ${degrees}°`,
    ratio,
    '',
    example(degrees, (one) => one.wettedRatio),
    0.0006,
  ],
  [`Drag at ${degrees}°`, drag, 'lbf', example(degrees, (one) => one.bareDrag / POUND_FORCE), 1],
  [
    `Moment at ${degrees}°`,
    moment,
    'ft·lbf',
    example(degrees, (one) => one.moment / (POUND_FORCE * FOOT)),
    10,
  ],
];
const pressed = (degrees: number, feet: number): Row => [
  `{Centre} of pressure forward of the transom at ${degrees}°`,
  feet,
  'ft',
  example(degrees, (one) => one.centreOfPressure / FOOT),
  0.01,
];
const smallAt = (knots: number, trim: number, drag: number, power: number): readonly Row[] => [
  [`Trim at ${knots} kn`, trim, '°', small(knots, (one) => one.trim / DEGREE), 1e-4],
  [`Drag at ${knots} kn`, drag, 'N', small(knots, (one) => one.drag), 0.06],
  [
    `Effective power at ${knots} kn`,
    power,
    'kW',
    small(knots, (one) => one.effectivePower / 1000),
    6e-4,
  ],
];

/** Savitsky's method against his own example and independent workings of it. */
export const SAVITSKY_CASES: readonly PublishedCase[] = [
  ...drive(
    WORKED,
    ['Lift coefficient CLβ', 0.0675, '', example(2, (one) => one.lift), 5e-5],
    ['Flat lift coefficient CL0', 0.082, '', example(2, (one) => one.flatLift), 5e-5],
    ['Speed coefficient Cv', 3.18, '', example(2, (one) => one.speedCoefficient), 0.005],
    ...worked(2, 3.767, 9326, -109_084),
    ...worked(3, 2.516, 8149, 353_138),
    ...worked(4, 1.72, 7725, 723_385),
    ['Trim in balance', 2.216, '°', balanced((one) => one.trim / DEGREE), 0.001],
    ['Drag in balance', 8978, 'lbf', balanced((one) => one.drag / POUND_FORCE), 1],
    [
      'Effective power in balance',
      1102,
      'hp',
      balanced((one) => one.effectivePower / HORSEPOWER),
      0.5,
    ],
  ),
  ...drive(PRESSURE, pressed(2, 30.91), pressed(3, 23.13), pressed(4, 16.87)),
  ...drive(
    PAPER,
    [
      'Wetted length ratio at 2°, read off his chart',
      3.85,
      '',
      example(2, (one) => one.wettedRatio),
      0.03 * 3.85,
    ],
    ['Friction coefficient at 2°', 0.00174, '', example(2, (one) => one.friction), 1.5e-5],
    ['Friction coefficient at 3°', 0.00184, '', example(3, (one) => one.friction), 1.5e-5],
    [
      'Friction along the bottom at 2°',
      7340,
      'lbf',
      example(2, (one) => one.frictionDrag / POUND_FORCE),
      0.03 * 7340,
    ],
    [
      'Trim in balance (paper: about 2.3°, from memory)',
      2.3,
      '°',
      balanced((one) => one.trim / DEGREE),
      0.1,
    ],
  ),
  ...drive(
    MEASURED,
    ['Towed model, V/√L 4 kn/√ft: drag over weight', 0.158, '', towed(0.59, 4, smoothShare), 0.003],
    ['Towed model, V/√L 4 kn/√ft: trim', 4, '°', towed(0.59, 4, (one) => one.trim / DEGREE), 0.5],
    ['Towed model, V/√L 6 kn/√ft: drag over weight', 0.206, '', towed(0.62, 6, smoothShare), 0.003],
    ['Towed model, V/√L 6 kn/√ft: trim', 4, '°', towed(0.62, 6, (one) => one.trim / DEGREE), 0.5],
  ),
  ...drive(
    SMALL,
    ...smallAt(20, 4.5043, 1586.9, 16.327),
    ...smallAt(25, 3.3956, 1736.7, 22.336),
    ...smallAt(30, 2.667, 2024.9, 31.252),
    ...smallAt(35, 2.1714, 2418.4, 43.545),
  ),
];
