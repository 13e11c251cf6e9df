import {
  drainTime,
  fillTime,
  type FlowTime,
  freeSurfaceMoment,
  swampedBalance,
  weightSwamped,
} from '../float/index.ts';
import {
  cubicMetres,
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  squareMetres,
} from '../units/index.ts';
import { floatCase } from './float-case.ts';
import type { PublishedCase } from './types.ts';

const FREE_SURFACE = 'derived: virtual rise = density x l b3 / 12 over displacement';
const TORRICELLI = 'derived: Torricelli, t = 2 A (sqrt h1 - sqrt h2) / (Cd a sqrt 2g), Cd 0.6';

const rise = (compartments: number): number =>
  freeSurfaceMoment([
    {
      length: metres(1),
      breadth: metres(0.6),
      density: kilogramsPerCubicMetre(740),
      compartments,
    },
  ]) / 1000;

const hole = (diameter: number, count = 1) => squareMetres((count * Math.PI * diameter ** 2) / 4);
const prism = (area: number, height: number) => [[0, area] as const, [height, area] as const];

const drained = (area: number, from: number, to: number, outlet: number, vent?: number): FlowTime =>
  drainTime({
    areas: prism(area, from),
    from: metres(from),
    to: metres(to),
    outletHeight: metres(0),
    outlet: squareMetres(outlet),
    discharge: 0.6,
    ...(vent !== undefined && { vent: { area: squareMetres(vent), discharge: 0.6 } }),
  });

const filled = (): FlowTime =>
  fillTime({
    areas: prism(0.6, 0.25),
    from: metres(0),
    to: metres(0.25),
    outside: [metres(0.25), metres(0.25)],
    outlet: hole(0.025),
    discharge: 0.6,
  });

const flowing = (flow: FlowTime) => (flow.outcome === 'flows' ? flow : undefined);

/** Free surfaces, tanks that drain, and what floats when it is swamped. */
export const TANK_CASES: readonly PublishedCase[] = [
  floatCase('{Petrol} in 1.0 x 0.6 m, boat of 1000 kg: rise', FREE_SURFACE, 0.01332, 'm', () =>
    rise(1),
  ),
  floatCase('the same with a baffle on the {centreline}', FREE_SURFACE, 0.00333, 'm', () =>
    rise(2),
  ),
  floatCase(
    '0.6 m2, 0.25 m of water, hole of 25 mm: time to drain',
    TORRICELLI,
    459.997,
    's',
    () => flowing(drained(0.6, 0.25, 0, hole(0.025)))?.time,
    { within: 5e-4 },
  ),
  floatCase(
    'the same: first rate',
    TORRICELLI,
    39.1307,
    'L/min',
    () => (flowing(drained(0.6, 0.25, 0, hole(0.025)))?.firstRate ?? Number.NaN) * 60_000,
    { within: 5e-5 },
  ),
  floatCase(
    'the same from 0.30 m to 0.05 m',
    TORRICELLI,
    298.184,
    's',
    () => flowing(drained(0.6, 0.3, 0.05, hole(0.025)))?.time,
    { within: 5e-4 },
  ),
  floatCase(
    'A cockpit of 2.4 m2, 0.2 m deep, two drains of 38 mm',
    TORRICELLI,
    356.158,
    's',
    () => flowing(drained(2.4, 0.2, 0, hole(0.038, 2)))?.time,
    { within: 5e-4 },
  ),
  floatCase(
    'The tank of 0.6 m2 filling to the level of the sea',
    TORRICELLI,
    459.997,
    's',
    () => flowing(filled())?.time,
    { within: 5e-4 },
  ),
  floatCase(
    'A vent of sqrt(rho air / rho water) of the outlet: share of the open rate',
    'derived: equal pressure is lost to water and to air, so 1 / sqrt 2',
    Math.SQRT1_2,
    '',
    () => flowing(drained(0.6, 0.25, 0, 0.01, 0.01 * Math.sqrt(1.225 / 999.1)))?.ventShare,
  ),
  floatCase(
    '150 kg of laminate at 1500 kg/m3 in fresh water, 60 kg dry: weight',
    'derived: Archimedes, 150 / 3 + 60',
    110,
    'kg',
    () =>
      swampedBalance(
        [
          {
            name: 'laminate',
            mass: kilograms(150),
            density: kilogramsPerCubicMetre(1500),
            submerged: true,
          },
          {
            name: 'console',
            mass: kilograms(60),
            density: kilogramsPerCubicMetre(1500),
            submerged: false,
          },
        ],
        { density: kilogramsPerCubicMetre(32), fitted: cubicMetres(0.1) },
        kilogramsPerCubicMetre(1000),
      ).weight,
  ),
  floatCase(
    'The same with 20 L of core at 80 kg/m3 and 37 kg of {petrol} at 740 kg/m3',
    'derived: Archimedes, 110 - 20 x 0.92 - 50 + 37',
    78.6,
    'kg',
    () =>
      [
        [150, 1500, true],
        [60, 1500, false],
        [1.6, 80, true],
        [37, 740, true],
      ].reduce(
        (sum, [mass, density, submerged]) =>
          sum +
          weightSwamped(
            {
              name: 'part',
              mass: kilograms(Number(mass)),
              density: kilogramsPerCubicMetre(Number(density)),
              submerged: Boolean(submerged),
            },
            kilogramsPerCubicMetre(1000),
          ),
        0,
      ),
  ),
];
