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
import { caseIn } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const number = (value: Computed<number>): number =>
  typeof value === 'number' ? value : Number.NaN;
const crouch = (constant: number): number =>
  crouchSpeed(constant, watts(90 * HORSEPOWER), kilograms(2200 * POUND));

const drive = caseIn('drive');

const ITTC = 'ITTC 1957 line, 0.075/(log10 Re - 2)²: exact form';
const CROUCH = 'Crouch’s table of constants (172, 218, 240, 253 in mph), worked by hand';
const FLAT: Burning = {
  ...FOUR_STROKE,
  partLoad: [
    [0, 1],
    [1, 1],
  ],
};

/** Planing, friction, speed by formula, fuel and propeller against published and worked values. */
export const DRIVE_CASES: readonly PublishedCase[] = [
  ...(
    [
      [1e6, 0.0046875],
      [1e7, 0.003],
      [1e8, 0.075 / 36],
      [1e9, 0.075 / 49],
    ] as const
  ).map(([reynolds, cf]) =>
    drive(`Cf at Re ${reynolds.toExponential(0)}`, ITTC, cf, '', 1e-9, () => ittc57(reynolds)),
  ),
  ...SAVITSKY_CASES,
  ...(
    [
      ['runabout', 34.789],
      ['fast runabout', 44.093],
      ['race boat', 48.542],
      ['three-point hydroplane', 51.172],
    ] as const
  ).map(([kind, mph]) =>
    drive(
      `90 hp on 2,200 lb, ${kind}`,
      CROUCH,
      mph,
      'mph',
      1e-3,
      () => crouch(CROUCH_CONSTANTS[kind]) / UNIT_KINDS.speed.mph,
    ),
  ),
  drive(
    '90 hp on 2,200 lb, against the table in knots',
    'Crouch’s constant 150 in knots (from memory); the two tables differ by 0.4 %',
    30.339,
    'kn',
    0.13,
    () => crouch(CROUCH_CONSTANTS.runabout) / KNOT,
  ),
  ...(
    [
      [0.2, 20, 4.948],
      [0.25, 10, 5.95],
    ] as const
  ).map(([loading, deadrise, trim]) =>
    drive(
      `Porpoising limit at a deadrise of ${deadrise}°, √(CL/2) of ${loading}`,
      'Celano 1998, regression of the critical trim (from memory), worked by hand',
      trim,
      '°',
      2e-3,
      () => number(porpoisingTrim(2 * loading ** 2, radians(deadrise * DEGREE))) / DEGREE,
    ),
  ),
  drive(
    '85 kW at full throttle, 0.32 kg/(kW·h), 0.74 kg/L',
    'derived: power x consumption / density',
    36.757,
    'L/h',
    1e-3,
    () => number(fuelFlow(watts(85_000), 1, FLAT)) / LITRE_AN_HOUR,
  ),
  drive(
    '300 hp at 0.50 lb/(hp·h), 6.1 lb/US gal',
    'rule of the trade, second hand from makers: 150 lb/h, printed as 24.5 US gal/h',
    24.59,
    'US gal/h',
    0.005,
    () =>
      (number(
        fuelFlow(watts(300 * HORSEPOWER), 1, {
          ...FLAT,
          consumption: (0.5 * POUND) / (HORSEPOWER / 1000),
          density: kilogramsPerCubicMetre((6.1 * POUND) / UNIT_KINDS.volume['US gal']),
        }),
      ) *
        HOUR) /
      UNIT_KINDS.volume['US gal'],
  ),
  drive(
    'Range on 100 L with a tenth kept back, 22 kn at 18.378 L/h',
    'derived: usable fuel x speed / flow',
    107.74,
    'nmi',
    0.005,
    () =>
      number(fuelRange(cubicMetres(0.1), 0.1, metresPerSecond(22 * KNOT), 18.378 * LITRE_AN_HOUR)) /
      NAUTICAL_MILE,
  ),
  drive(
    'Pitch for 39.0625 mph at 5500 rpm, 2:1, no slip',
    'rule of the trade, second hand: mph = rpm x pitch / (ratio x 1056), exact in inches and statute miles',
    15,
    'in',
    1e-9,
    () =>
      number(
        pitchFor(metresPerSecond(39.0625 * UNIT_KINDS.speed.mph), 5500, { ratio: 2, slip: 0 }),
      ) / INCH,
  ),
  drive(
    'Wind of 10 m/s on 1 m² with a coefficient of 1',
    'BS CP3 chapter V part 2 (from memory): dynamic pressure 0.613 V²',
    61.3,
    'N',
    0.06,
    () =>
      addedDragAt(
        [{ name: 'plate', medium: 'air', area: squareMetres(1), coefficient: 1 }],
        metresPerSecond(10),
        SEA_WATER,
      ),
  ),
];
