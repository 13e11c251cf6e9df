import {
  australianPeople,
  isoLoad,
  isoPower,
  offsetHeelAllowed,
  type RatedHull,
} from '../limits/index.ts';
import { cubicMetres, kilograms, KNOT, metres, radians } from '../units/index.ts';
import { CFR_183_CASES } from './cases-cfr-183.ts';
import { casesIn, type Row } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const ISO_POWER = 'ISO 11592-1:2016 annex C, second hand (a transcription)';
const TABLE_4 = 'ISO 12217-1:2015 table 4, second hand';
const ISO_LOAD = 'ISO 14946:2021 clauses 4 to 6, public preview; worked by hand';

const limits = casesIn('limits');

const power = (
  length: number,
  transomBeam: number,
  steering: RatedHull['steering'],
  deadrise: number,
) => {
  const result = isoPower({
    length: metres(length),
    beam: metres(transomBeam * 1.1),
    transomBeam: metres(transomBeam),
    transomHeight: metres(0.51),
    deadrise: radians(deadrise),
    hardChine: true,
    monohull: true,
    steering,
  });
  return 'notComputed' in result ? undefined : result;
};
const kilowatts = (...hull: Parameters<typeof power>): number =>
  (power(...hull)?.power ?? Number.NaN) / 1000;

const load = (people: number, gear: number, fixed: number) =>
  isoLoad({
    people,
    gear: kilograms(gear),
    fixedFuel: cubicMetres(fixed),
    portableFuel: cubicMetres(0),
    fuelDensity: 740,
    ballastWater: kilograms(0),
  });

const byIso = (
  length: number,
  beam: number,
  steering: RatedHull['steering'],
  wanted: number,
): Row => [
  `${length.toFixed(1)} m x ${beam.toFixed(1)} m, ${steering === 'tiller' ? steering : 'wheel'}`,
  wanted,
  'kW',
  () => kilowatts(length, beam, steering, 0.3),
];
const heel = (length: number, wanted: number): Row => [
  `Heel in the offset-load test, ${length} m`,
  wanted,
  '°',
  () => offsetHeelAllowed(length),
  0.06,
];

/** Load, people and power by law and standards, against their tables and worked numbers. */
export const LIMITS_CASES: readonly PublishedCase[] = [
  ...CFR_183_CASES,
  ...limits(
    ISO_POWER,
    byIso(5.5, 2, 'remote', 109),
    byIso(4.5, 1.7, 'remote', 55.4),
    byIso(6.5, 2.3, 'remote', 172.2),
    byIso(5.5, 2, 'tiller', 51.4),
    [
      'Speed above which 5.5 m wants the avoidance test',
      16.416,
      'kn',
      () => (power(5.5, 2, 'remote', 0.3)?.testAbove ?? Number.NaN) / KNOT,
      1e-3,
    ],
  ),
  ...limits('33 CFR 183.53(a), 2F - 90, in SI: 16.053 FD - 67.11', [
    '5.5 m x 2.0 m, wheel, against the American formula in {metres}',
    109.47,
    'kW',
    () => kilowatts(5.5, 2, 'remote', 0.3),
    1,
  ]),
  ...limits(
    TABLE_4,
    heel(6, 22.7),
    heel(7, 20.9),
    heel(8, 19.4),
    heel(9, 18),
    heel(10, 16.8),
    heel(12, 14.8),
    heel(15, 12.9),
    heel(18, 11.9),
    heel(24, 11.5),
  ),
  ...limits(
    ISO_LOAD,
    ['5 crew and 60 kg of gear', 435, 'kg', () => load(5, 60, 0).greatest],
    [
      '100 L of {petrol} in a fixed tank',
      70.3,
      'kg',
      () => load(5, 60, 0.1).greatest - load(5, 60, 0.1).onPlate,
    ],
  ),
  ...limits('ISO 14945:2021, second hand; Directive 2013/53/EU annex I, 2.2', [
    'Load on the plate of 560 kg with 70.3 kg of fixed fuel',
    489.7,
    'kg',
    () => load(5, 114.7, 0.1).onPlate,
  ]),
  ...limits('AS 1799.1:2009 as a reader sums it up, worked by hand: 7.11', [
    'People for 900 kg with an outboard of 260 kg',
    7,
    '',
    () => australianPeople(kilograms(900), kilograms(260)),
  ]),
];
