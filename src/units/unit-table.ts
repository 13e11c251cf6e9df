/**
 * Every unit that a file may write, with its exact factor to SI.
 *
 * @source foot, inch, pound, ounce: international yard and pound agreement of 1959 (exact); US gallon 231 in^3
 * (exact); imperial gallon 4.54609 L (exact); horsepower 550 ft.lbf/s, metric horsepower 75 kgf.m/s with
 * g = 9.80665 m/s^2 (exact); knot 1852 m/h (exact); AWG is not here: a wire size is not a quantity.
 */
const FOOT = 0.3048;
const POUND = 0.45359237;
const US_GALLON = 0.003785411784;

/** Standard acceleration of gravity, m/s2 (General Conference on Weights and Measures, 1901; exact). */
export const GRAVITY = 9.80665;
/** Metres; exact. */
export const NAUTICAL_MILE = 1852;

export const UNIT_KINDS = {
  length: { m: 1, mm: 0.001, cm: 0.01, km: 1000, ft: FOOT, in: FOOT / 12, yd: 3 * FOOT },
  area: {
    m2: 1,
    'm²': 1,
    cm2: 1e-4,
    mm2: 1e-6,
    ft2: FOOT ** 2,
    'ft²': FOOT ** 2,
    yd2: 9 * FOOT ** 2,
    'yd²': 9 * FOOT ** 2,
  },
  volume: {
    m3: 1,
    'm³': 1,
    L: 0.001,
    l: 0.001,
    mL: 1e-6,
    'US gal': US_GALLON,
    'imp gal': 0.00454609,
  },
  mass: { kg: 1, g: 0.001, t: 1000, lb: POUND, oz: POUND / 16 },
  power: { W: 1, kW: 1000, hp: 550 * FOOT * POUND * GRAVITY, PS: 75 * GRAVITY },
  current: { A: 1, mA: 0.001 },
  voltage: { V: 1 },
  angle: { rad: 1, deg: Math.PI / 180, '°': Math.PI / 180 },
  speed: { 'm/s': 1, kn: NAUTICAL_MILE / 3600, 'km/h': 1 / 3.6, mph: (5280 * FOOT) / 3600 },
  density: { 'kg/m3': 1, 'kg/m³': 1, 'lb/ft3': POUND / FOOT ** 3, 'lb/US gal': POUND / US_GALLON },
  force: { N: 1, kN: 1000, lbf: POUND * GRAVITY },
  duration: { s: 1, min: 60, h: 3600, d: 86400 },
  'areal mass': { 'kg/m2': 1, 'kg/m²': 1, 'g/m2': 0.001, 'g/m²': 0.001 },
  pressure: { Pa: 1, kPa: 1000, MPa: 1e6, mbar: 100, bar: 1e5 },
  viscosity: { 'Pa.s': 1, 'mPa.s': 0.001 },
  charge: { Ah: 3600 },
  flow: { 'L/s': 0.001, 'L/h': 0.001 / 3600, 'L/min': 0.001 / 60 },
} as const satisfies Readonly<Record<string, Readonly<Record<string, number>>>>;

export type UnitKind = keyof typeof UNIT_KINDS;

/** Which kind a written unit belongs to, or undefined when it is in no table. */
export function kindOfUnit(unit: string): UnitKind | undefined {
  for (const kind of Object.keys(UNIT_KINDS) as UnitKind[]) {
    if (factorOf(kind, unit) !== undefined) return kind;
  }
  return undefined;
}

/** The factor from a written unit of a kind to SI, or undefined when the kind has no such unit. */
export function factorOf(kind: UnitKind, unit: string): number | undefined {
  const units: Readonly<Record<string, number>> = UNIT_KINDS[kind];
  return Object.hasOwn(units, unit) ? units[unit] : undefined;
}

/** The units that a kind may be written in, for a message to a person. */
export function unitsOf(kind: UnitKind): readonly string[] {
  return Object.keys(UNIT_KINDS[kind]);
}
