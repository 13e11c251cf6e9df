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
import { casesIn } from './case-in.ts';
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

const part = (name: string, mass: number, density: number, submerged = true) => ({
  name,
  mass: kilograms(mass),
  density: kilogramsPerCubicMetre(density),
  submerged,
});
const BOAT = [part('laminate', 150, 1500), part('console', 60, 1500, false)];
const CORED = [...BOAT, part('core', 1.6, 80), part('petrol', 37, 740)];
const FRESH = kilogramsPerCubicMetre(1000);
const FOAM = { density: kilogramsPerCubicMetre(32), fitted: cubicMetres(0.1) };
const timeOf = (...tank: Parameters<typeof drained>) => flowing(drained(...tank))?.time;

const float = casesIn('float');

/** Free surfaces, tanks that drain, and what floats when it is swamped. */
export const TANK_CASES: readonly PublishedCase[] = [
  ...float(
    FREE_SURFACE,
    ['{Petrol} in 1.0 x 0.6 m, boat of 1000 kg: rise', 0.01332, 'm', () => rise(1)],
    ['the same with a baffle on the {centreline}', 0.00333, 'm', () => rise(2)],
  ),
  ...float(
    TORRICELLI,
    [
      '0.6 m2, 0.25 m of water, hole of 25 mm: time to drain',
      459.997,
      's',
      () => timeOf(0.6, 0.25, 0, hole(0.025)),
      5e-4,
    ],
    [
      'the same: first rate',
      39.1307,
      'L/min',
      () => (flowing(drained(0.6, 0.25, 0, hole(0.025)))?.firstRate ?? Number.NaN) * 60_000,
      5e-5,
    ],
    [
      'the same from 0.30 m to 0.05 m',
      298.184,
      's',
      () => timeOf(0.6, 0.3, 0.05, hole(0.025)),
      5e-4,
    ],
    [
      'A cockpit of 2.4 m2, 0.2 m deep, two drains of 38 mm',
      356.158,
      's',
      () => timeOf(2.4, 0.2, 0, hole(0.038, 2)),
      5e-4,
    ],
    [
      'The tank of 0.6 m2 filling to the level of the sea',
      459.997,
      's',
      () => flowing(filled())?.time,
      5e-4,
    ],
  ),
  ...float('derived: equal pressure is lost to water and to air, so 1 / sqrt 2', [
    'A vent of sqrt(rho air / rho water) of the outlet: share of the open rate',
    Math.SQRT1_2,
    '',
    () => flowing(drained(0.6, 0.25, 0, 0.01, 0.01 * Math.sqrt(1.225 / 999.1)))?.ventShare,
  ]),
  ...float('derived: Archimedes, 150 / 3 + 60', [
    '150 kg of laminate at 1500 kg/m3 in fresh water, 60 kg dry: weight',
    110,
    'kg',
    () => swampedBalance(BOAT, FOAM, FRESH).weight,
  ]),
  ...float('derived: Archimedes, 110 - 20 x 0.92 - 50 + 37', [
    'The same with 20 L of core at 80 kg/m3 and 37 kg of {petrol} at 740 kg/m3',
    78.6,
    'kg',
    () => CORED.reduce((sum, one) => sum + weightSwamped(one, FRESH), 0),
  ]),
];
