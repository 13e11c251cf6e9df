import type { Quantity } from './quantity.ts';
import { NAUTICAL_MILE, UNIT_KINDS, type UnitKind } from './unit-table.ts';

/** So many decimals; "few": one below 10, else none; a pair: as many as it has, from the one to the other. */
export type Decimals = number | 'few' | readonly [least: number, most: number];

/** How a number of one unit is written: SI divided by `factor`, with `offset` added. */
export interface Shown {
  readonly unit: string;
  readonly factor: number;
  readonly decimals: Decimals;
  readonly offset?: number;
}

/** A quantity as scripts read it, and as people do in each system. */
interface QuantityFacts {
  /** Which branded number it takes; any number when left out. */
  readonly kind?: UnitKind;
  readonly data: Shown & { readonly decimals: number };
  readonly metric: Shown;
  readonly us: Shown;
}

const shown = <Count extends Decimals>(unit: string, factor: number, decimals: Count) => ({
  unit,
  factor,
  decimals,
});
const { length, area, volume, mass, power, force, duration, speed, angle, pressure } = UNIT_KINDS;
const STATUTE_MILE = 5280 * length.ft;
const FLUID_OUNCE = volume['US gal'] / 128;
const { ft: FOOT, in: INCH } = length;
const PSI = force.lbf / INCH ** 2;

const data = (unit: string, factor: number, decimals: number) => ({ unit, factor, decimals });
/** The same in every system. */
const same = (
  unit: string,
  factor: number,
  decimals: Decimals,
  dataDecimals: number,
  dataUnit = unit,
): QuantityFacts => ({
  data: data(dataUnit, factor, dataDecimals),
  metric: shown(unit, factor, decimals),
  us: shown(unit, factor, decimals),
});

/**
 * Every quantity that is printed or written for scripts: its decimals and its units, once. Values are SI. A length of a
 * boat prints in feet and inches, a power in two units: their formatter knows.
 *
 * @source units and factors: unit-table.ts; decimals: common practice, no source
 */
export const QUANTITIES = {
  length: {
    kind: 'length',
    data: data('m', 1, 4),
    metric: shown('m', 1, 2),
    us: shown('ft', FOOT, 1),
  },
  /** A workshop dimension. */
  dimension: {
    kind: 'length',
    data: data('m', 1, 4),
    metric: shown('mm', length.mm, 0),
    us: shown('in', INCH, 1),
  },
  /** A thickness, or a small change of a length. */
  thickness: {
    data: data('mm', length.mm, 2),
    metric: shown('mm', length.mm, 1),
    us: shown('in', INCH, 2),
  },
  /** A propeller's; in inches everywhere, in metric beside millimetres: the formatter knows. */
  pitch: same('in', INCH, 0, 4),
  distance: {
    data: data('nmi', NAUTICAL_MILE, 1),
    metric: shown('nmi', NAUTICAL_MILE, 0),
    us: shown('mi', STATUTE_MILE, 0),
  },
  area: {
    kind: 'area',
    data: data('m2', 1, 4),
    metric: shown('m²', 1, 2),
    us: shown('ft²', area.ft2, 1),
  },
  /** A size of a hull as its file declares it. */
  fineLength: {
    data: data('m', 1, 4),
    metric: shown('m', 1, 3),
    us: shown('ft', FOOT, 2),
  },
  bulk: {
    data: data('m3', 1, 4),
    metric: shown('m³', 1, 3),
    us: shown('ft³', FOOT ** 3, 1),
  },
  /** An area and a length to a tenth, of what is cut off a roll. */
  rollArea: {
    data: data('m2', 1, 4),
    metric: shown('m²', 1, 1),
    us: shown('ft²', area.ft2, 0),
  },
  rollLength: {
    data: data('m', 1, 4),
    metric: shown('m', 1, 1),
    us: shown('ft', FOOT, 0),
  },
  smallArea: {
    data: data('m2', 1, 6),
    metric: shown('cm²', area.cm2, 0),
    us: shown('in²', INCH ** 2, 1),
  },
  volume: {
    kind: 'volume',
    data: data('L', volume.L, 2),
    metric: shown('L', volume.L, 'few'),
    us: shown('US gal', volume['US gal'], 1),
  },
  smallVolume: {
    data: data('mL', volume.mL, 1),
    metric: shown('mL', volume.mL, 'few'),
    us: shown('fl oz', FLUID_OUNCE, 2),
  },
  mass: {
    kind: 'mass',
    data: data('kg', 1, 3),
    metric: shown('kg', 1, 'few'),
    us: shown('lb', mass.lb, 'few'),
  },
  /** A mass to a tenth, in tables of what is laid up. */
  fineMass: {
    data: data('kg', 1, 3),
    metric: shown('kg', 1, 1),
    us: shown('lb', mass.lb, 1),
  },
  smallMass: {
    data: data('g', mass.g, 1),
    metric: shown('g', mass.g, 'few'),
    us: shown('oz', mass.oz, 2),
  },
  speed: {
    data: data('kn', speed.kn, 2),
    metric: shown('kn', speed.kn, 1),
    us: shown('mph', speed.mph, 1),
  },
  /** A speed that is not known to a tenth. */
  roundSpeed: {
    data: data('kn', speed.kn, 2),
    metric: shown('kn', speed.kn, 0),
    us: shown('mph', speed.mph, 0),
  },
  flow: {
    data: data('L/h', volume.L / duration.h, 2),
    metric: shown('L/h', volume.L / duration.h, 1),
    us: shown('US gal/h', volume['US gal'] / duration.h, 1),
  },
  pumpFlow: {
    data: data('L/h', volume.L / duration.h, 1),
    metric: shown('L/min', volume.L / duration.min, 0),
    us: shown('US gal/min', volume['US gal'] / duration.min, 1),
  },
  power: {
    kind: 'power',
    data: data('W', 1, 0),
    metric: shown('kW', power.kW, 1),
    us: shown('hp', power.hp, 1),
  },
  /** A power in one unit, to a tenth: of a limit, of a shaft. */
  finePower: {
    data: data('W', 1, 0),
    metric: shown('kW', power.kW, 1),
    us: shown('hp', power.hp, 1),
  },
  force: {
    data: data('N', 1, 1),
    metric: shown('N', 1, 0),
    us: shown('lbf', force.lbf, 0),
  },
  /** The force that a coupling must stand. */
  couplingForce: {
    data: data('kN', force.kN, 2),
    metric: shown('kN', force.kN, 1),
    us: shown('lbf', force.lbf, 0),
  },
  pressure: {
    data: data('kPa', pressure.kPa, 2),
    metric: shown('kPa', pressure.kPa, 1),
    us: shown('psi', PSI, 1),
  },
  /** What a strip of a laminate bears and how stiff it is, by its width. */
  stripStiffness: {
    data: data('N.m2/m', 1, 2),
    metric: shown('N m²/m', 1, 'few'),
    us: shown('lbf in²/in', force.lbf * INCH, 'few'),
  },
  stripMoment: {
    data: data('N.m/m', 1, 2),
    metric: shown('N m/m', 1, 'few'),
    us: shown('lbf in/in', force.lbf, 'few'),
  },
  stripForce: {
    data: data('N/m', 1, 2),
    metric: shown('N/m', 1, 'few'),
    us: shown('lbf/in', force.lbf / INCH, 'few'),
  },
  /** Degrees Celsius, as a yard writes them. */
  temperature: {
    data: data('°C', 1, 1),
    metric: shown('°C', 1, 0),
    us: { ...shown('°F', 5 / 9, 0), offset: 32 },
  },
  /** A mass times a lever, kg.m. */
  massMoment: {
    data: data('kg.m', 1, 2),
    metric: shown('kg·m', 1, 0),
    us: shown('lb·ft', mass.lb * FOOT, 0),
  },
  /** The work that rights a boat over its weight, m.rad. */
  rightingArea: same('m·rad', 1, 3, 5, 'm.rad'),
  angle: same('°', angle.deg, 1, 3),
  current: { kind: 'current', ...same('A', 1, 1, 2) },
  /** A current that is not known to a tenth. */
  roundCurrent: same('A', 1, 0, 2),
  /** Of a fuse, in the sizes they are sold in. */
  fuse: same('A', 1, [0, 1], 2),
  voltage: same('V', 1, [0, 1], 1),
  charge: same('Ah', duration.h, 'few', 2),
  /** A charge to a tenth, in tables that add up. */
  fineCharge: same('Ah', duration.h, 1, 2),
  energy: same('Wh', duration.h, 0, 1),
  wireArea: same('mm²', area.mm2, [0, 1], 2, 'mm2'),
  seconds: same('s', 1, 2, 3),
  minutes: same('min', duration.min, 0, 2),
  hours: same('h', duration.h, 1, 2),
  /** Hours as they are planned and written down. */
  workHours: same('h', duration.h, [0, 2], 2),
  /** Hours of a day, assumed. */
  hoursADay: same('h', duration.h, [1, 2], 2),
  days: same('d', duration.d, 1, 2),
  /** A share of one. */
  share: {
    data: data('1', 1, 4),
    metric: shown('%', 0.01, 1),
    us: shown('%', 0.01, 1),
  },
} as const satisfies Readonly<Record<string, QuantityFacts>>;

export type QuantityName = keyof typeof QUANTITIES;

type KindOf<Facts> = Facts extends { readonly kind: infer Kind extends UnitKind }
  ? Quantity<Kind>
  : number;

/** What a quantity's value is: a branded number where it has a kind. */
export type ValueOf<Name extends QuantityName> = KindOf<(typeof QUANTITIES)[Name]>;

/** True for the name of a quantity. */
export const isQuantity = (name: string): name is QuantityName => Object.hasOwn(QUANTITIES, name);
