import {
  addedDragAt,
  type Burning,
  type Computed,
  CROUCH_CONSTANTS,
  crouchSpeed,
  FOUR_STROKE,
  fuelFlow,
  fuelRange,
  ittc57,
  porpoisingTrim,
  SEA_WATER,
  pitchFor,
} from '../performance/index.ts';
import {
  cubicMetres,
  DEGREE,
  HORSEPOWER,
  HOUR,
  INCH,
  kilograms,
  kilogramsPerCubicMetre,
  KNOT,
  LITRE_AN_HOUR,
  metresPerSecond,
  NAUTICAL_MILE,
  POUND,
  radians,
  squareMetres,
  UNIT_KINDS,
  watts,
} from '../units/index.ts';
import { SAVITSKY_CASES } from './cases-savitsky.ts';
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

/** A figure in another unit; what is not computed stays so. */
const inUnits = (value: Computed<number>, unit: number) =>
  typeof value === 'number' ? value / unit : value;

const ITTC = 'ITTC 1957 line, 0.075/(log10 Re - 2)²: exact form';
const CROUCH = 'Crouch’s table of constants (172, 218, 240, 253 in mph), worked by hand';
const CELANO = 'Celano 1998, regression of the critical trim (from memory), worked by hand';
const FLAT: Burning = {
  ...FOUR_STROKE,
  partLoad: [
    [0, 1],
    [1, 1],
  ],
};
/** Half a pound an hour for each horsepower, 6.1 lb to the gallon. */
const AMERICAN: Burning = {
  ...FLAT,
  consumption: (0.5 * POUND) / (HORSEPOWER / 1000),
  density: kilogramsPerCubicMetre((6.1 * POUND) / UNIT_KINDS.volume['US gal']),
};
const PLATE = {
  name: 'plate',
  medium: 'air',
  area: squareMetres(1),
  coefficient: 1,
} as const;

const friction = (reynolds: number, cf: number): Row => [
  `Cf at Re ${reynolds.toExponential(0)}`,
  cf,
  '',
  () => ittc57(reynolds),
  1e-9,
];
const crouch = (constant: number) =>
  crouchSpeed(constant, watts(90 * HORSEPOWER), kilograms(2200 * POUND));
const byCrouch = (kind: keyof typeof CROUCH_CONSTANTS, mph: number): Row => [
  `90 hp on 2,200 lb, ${kind}`,
  mph,
  'mph',
  () => inUnits(crouch(CROUCH_CONSTANTS[kind]), UNIT_KINDS.speed.mph),
  1e-3,
];
const porpoising = (loading: number, deadrise: number, trim: number): Row => [
  `Porpoising limit at a deadrise of ${deadrise}°, √(CL/2) of ${loading}`,
  trim,
  '°',
  () => inUnits(porpoisingTrim(2 * loading ** 2, radians(deadrise * DEGREE)), DEGREE),
  2e-3,
];

const drive = casesIn('drive');

/** Planing, friction, speed by formula, fuel and propeller against published and worked values. */
export const DRIVE_CASES: readonly PublishedCase[] = [
  ...drive(
    ITTC,
    friction(1e6, 0.0046875),
    friction(1e7, 0.003),
    friction(1e8, 0.075 / 36),
    friction(1e9, 0.075 / 49),
  ),
  ...SAVITSKY_CASES,
  ...drive(
    CROUCH,
    byCrouch('runabout', 34.789),
    byCrouch('fast runabout', 44.093),
    byCrouch('race boat', 48.542),
    byCrouch('three-point hydroplane', 51.172),
  ),
  ...drive('Crouch’s constant 150 in knots (from memory); the two tables differ by 0.4 %', [
    '90 hp on 2,200 lb, against the table in knots',
    30.339,
    'kn',
    () => inUnits(crouch(CROUCH_CONSTANTS.runabout), KNOT),
    0.13,
  ]),
  ...drive(CELANO, porpoising(0.2, 20, 4.948), porpoising(0.25, 10, 5.95)),
  ...drive('derived: power x consumption / density', [
    '85 kW at full throttle, 0.32 kg/(kW·h), 0.74 kg/L',
    36.757,
    'L/h',
    () => inUnits(fuelFlow(watts(85_000), 1, FLAT), LITRE_AN_HOUR),
    1e-3,
  ]),
  ...drive('rule of the trade, second hand from makers: 150 lb/h, printed as 24.5 US gal/h', [
    '300 hp at 0.50 lb/(hp·h), 6.1 lb/US gal',
    24.59,
    'US gal/h',
    () =>
      inUnits(fuelFlow(watts(300 * HORSEPOWER), 1, AMERICAN), UNIT_KINDS.volume['US gal'] / HOUR),
    0.005,
  ]),
  ...drive('derived: usable fuel x speed / flow', [
    'Range on 100 L with a tenth kept back, 22 kn at 18.378 L/h',
    107.74,
    'nmi',
    () =>
      inUnits(
        fuelRange(cubicMetres(0.1), 0.1, metresPerSecond(22 * KNOT), 18.378 * LITRE_AN_HOUR),
        NAUTICAL_MILE,
      ),
    0.005,
  ]),
  ...drive(
    'rule of the trade, second hand: mph = rpm x pitch / (ratio x 1056), exact in inches and statute miles',
    [
      'Pitch for 39.0625 mph at 5500 rpm, 2:1, no slip',
      15,
      'in',
      () =>
        inUnits(
          pitchFor(metresPerSecond(39.0625 * UNIT_KINDS.speed.mph), 5500, { ratio: 2, slip: 0 }),
          INCH,
        ),
    ],
  ),
  ...drive('BS CP3 chapter V part 2 (from memory): dynamic pressure 0.613 V²', [
    'Wind of 10 m/s on 1 m² with a coefficient of 1',
    61.3,
    'N',
    () => addedDragAt([PLATE], metresPerSecond(10), SEA_WATER),
    0.06,
  ]),
];
