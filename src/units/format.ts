import type { Amperes, Kilograms, Metres, SquareMetres, CubicMetres, Watts } from './quantity.ts';
import { UNIT_KINDS } from './unit-table.ts';

const NOT_COMPUTED = 'not computed';

/** Between a number and its unit: a space that no line breaks at. */
const NO_BREAK = '\u00A0';

/** Which system the workspace's documents are printed in. */
export type UnitSystem = 'metric' | 'us';

/** Formats quantities for one reader: a locale and a unit system. */
export interface Formatter {
  readonly system: UnitSystem;
  readonly locale: string;
  /** "4.30 m", or "14 ft 1 in". */
  length(value: Metres): string;
  /** Workshop dimension: "1,250 mm", or "49.2 in". */
  dimension(value: Metres): string;
  /** "412 kg", or "908 lb"; one decimal below 10. */
  mass(value: Kilograms): string;
  /** "22 kW (30 hp)", or "30 hp (22 kW)". */
  power(value: Watts): string;
  /** "2.40 m²", or "25.8 ft²". */
  area(value: SquareMetres): string;
  /** "25 L", or "6.6 US gal". */
  volume(value: CubicMetres): string;
  /** "3.5 A". */
  current(value: Amperes): string;
  /** An angle without its sign: "1.8 degrees". */
  degrees(angle: number): string;
  /** A share of one as "12.5 %". */
  percent(share: number, decimals: number): string;
  /** A plain number with a fixed count of decimals in the locale's own marks. */
  number(value: number, decimals: number): string;
}

/**
 * Makes the formatter of a workspace.
 *
 * @param locale - a BCP 47 tag, already checked
 * @returns functions that print a value with its unit; a value that is not finite prints "not computed"
 */
export function createFormatter(locale: string, system: UnitSystem): Formatter {
  const formats = new Map<number, Intl.NumberFormat>();
  const formatOf = (decimals: number): Intl.NumberFormat => {
    const format =
      formats.get(decimals) ??
      new Intl.NumberFormat(locale, {
        minimumFractionDigits: decimals,
        maximumFractionDigits: decimals,
        roundingMode: 'halfExpand',
      });
    formats.set(decimals, format);
    return format;
  };
  const number = (value: number, decimals: number): string => {
    if (!Number.isFinite(value)) return NOT_COMPUTED;
    const rounded = Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value;
    return withMinus(formatOf(decimals).format(rounded));
  };
  const metric = system === 'metric';
  const few = (value: number): number => (Math.abs(value) < 10 ? 1 : 0);
  const withUnit = (value: number, decimals: number, unit: string): string =>
    Number.isFinite(value) ? `${number(value, decimals)}${NO_BREAK}${unit}` : NOT_COMPUTED;
  const power = (value: Watts): string => {
    if (!Number.isFinite(value)) return NOT_COMPUTED;
    const kilowatts = withUnit(value / 1000, value < 10_000 ? 1 : 0, 'kW');
    const horsepower = withUnit(value / UNIT_KINDS.power.hp, value < 10_000 ? 1 : 0, 'hp');
    return metric
      ? `${kilowatts}${NO_BREAK}(${horsepower})`
      : `${horsepower}${NO_BREAK}(${kilowatts})`;
  };
  return {
    system,
    locale,
    number,
    power,
    length: (value) => (metric ? withUnit(value, 2, 'm') : feetAndInches(value, number)),
    dimension: (value) =>
      metric ? withUnit(value * 1000, 0, 'mm') : withUnit(value / UNIT_KINDS.length.in, 1, 'in'),
    mass: (value) => {
      const shown = metric ? value : value / UNIT_KINDS.mass.lb;
      return withUnit(shown, few(shown), metric ? 'kg' : 'lb');
    },
    area: (value) =>
      metric ? withUnit(value, 2, 'm²') : withUnit(value / UNIT_KINDS.area.ft2, 1, 'ft²'),
    volume: (value) => {
      const shown = value / (metric ? UNIT_KINDS.volume.L : UNIT_KINDS.volume['US gal']);
      return withUnit(shown, metric ? few(shown) : 1, metric ? 'L' : 'US gal');
    },
    current: (value) => withUnit(value, 1, 'A'),
    degrees: (angle) => withUnit(Math.abs(angle) / UNIT_KINDS.angle.deg, 1, 'degrees'),
    percent: (share, decimals) => withUnit(share * 100, decimals, '%'),
  };
}

/** A number as text, with a minus sign in the place of the hyphen that many locales print before it. */
export const withMinus = (text: string): string => text.replace('-', '−');

function feetAndInches(value: Metres, number: (value: number, decimals: number) => string): string {
  if (!Number.isFinite(value)) return NOT_COMPUTED;
  const inches = Math.round(Math.abs(value) / UNIT_KINDS.length.in);
  const sign = value < 0 && inches > 0 ? '−' : '';
  const parts = [
    `${sign}${number(Math.floor(inches / 12), 0)}`,
    'ft',
    number(inches % 12, 0),
    'in',
  ];
  return parts.join(NO_BREAK);
}
