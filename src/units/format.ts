import {
  type Decimals,
  QUANTITIES,
  type QuantityName,
  type Shown,
  type ValueOf,
} from './quantities.ts';
import { UNIT_KINDS } from './unit-table.ts';

const NOT_COMPUTED = 'not computed';

/** Between a number and its unit: a space that no line breaks at. */
export const NO_BREAK = '\u00A0';

/** Which system the workspace's documents are printed in. */
export type UnitSystem = 'metric' | 'us';

/** One function a quantity: "412 kg", or "908 lb". */
type Quantities = { readonly [Name in QuantityName]: (value: ValueOf<Name>) => string };

/** Formats quantities for one reader: a locale and a unit system. What is not finite prints "not computed". */
export interface Formatter extends Quantities {
  readonly system: UnitSystem;
  readonly locale: string;
  /** Any quantity by its name. */
  quantity(name: QuantityName, value: number): string;
  /** Two of a kind with one unit: "22 to 26 kn". */
  band(name: QuantityName, low: number, high: number): string;
  /** The number alone, under a heading that says the unit. */
  bare(name: QuantityName, value: number): string;
  /** The unit alone, for such a heading: "mm". */
  unit(name: QuantityName): string;
  /** An angle without its sign: "1.8 degrees". */
  degrees(angle: number): string;
  /** A share of one as "12.5 %". */
  percent(share: number, decimals: number): string;
  /** A plain number with a fixed count of decimals in the locale's own marks. */
  number(value: number, decimals: number): string;
}

const made = new Map<string, Formatter>();

/** The formatter of a workspace: one for each locale and unit system. */
export function formatterOf(yard: {
  readonly locale: string;
  readonly units: UnitSystem;
}): Formatter {
  const key = `${yard.locale} ${yard.units}`;
  const format = made.get(key) ?? createFormatter(yard.locale, yard.units);
  made.set(key, format);
  return format;
}

/**
 * Makes a formatter.
 *
 * @param locale - a BCP 47 tag, already checked
 * @returns functions that print a value with its unit; a value that is not finite prints "not computed"
 */
export function createFormatter(locale: string, system: UnitSystem): Formatter {
  const numberOf = numberPrinter(locale);
  const number = (value: number, decimals: number): string => numberOf(value, [decimals, decimals]);
  const bareOf = (value: number, { factor, decimals, offset = 0 }: Shown): string => {
    const size = value / factor + offset;
    return numberOf(size, rangeOf(decimals, size));
  };
  const print = (value: number, shown: Shown): string =>
    Number.isFinite(value)
      ? `${bareOf(value, shown)}${shown.unit === '°' ? '' : NO_BREAK}${shown.unit}`
      : NOT_COMPUTED;
  // A product, not a quotient: 0.1255 is 12.55 % and rounds up.
  const percent = (share: number, decimals: number): string =>
    print(share * 100, { unit: '%', factor: 1, decimals });
  const quantity = (name: QuantityName, value: number): string => {
    if (name === 'share') return percent(value, 1);
    if (name === 'length' && system === 'us') return feetAndInches(value, number);
    if (name === 'power') return powerText(value, system, print);
    const text = print(value, QUANTITIES[name][system]);
    return name === 'pitch' && system === 'metric'
      ? `${print(value, QUANTITIES.dimension.metric)}${NO_BREAK}(${text})`
      : text;
  };
  const names = Object.keys(QUANTITIES) as QuantityName[];
  const quantities = Object.fromEntries(
    names.map((name) => [name, (value: number) => quantity(name, value)]),
  ) as unknown as Quantities;
  return {
    ...quantities,
    system,
    locale,
    number,
    quantity,
    band: (name, low, high) =>
      `${bareOf(low, QUANTITIES[name][system])} to ${print(high, QUANTITIES[name][system])}`,
    bare: (name, value) => bareOf(value, QUANTITIES[name][system]),
    unit: (name) => QUANTITIES[name][system].unit,
    degrees: (angle) =>
      print(Math.abs(angle), { unit: 'degrees', factor: UNIT_KINDS.angle.deg, decimals: 1 }),
    percent,
  };
}

type Range = readonly [least: number, most: number];

function rangeOf(decimals: Decimals, size: number): Range {
  if (decimals === 'few') return Math.abs(size) < 10 ? [1, 1] : [0, 0];
  return typeof decimals === 'number' ? [decimals, decimals] : decimals;
}

/** Prints numbers in a locale's marks, rounded half away from zero. */
function numberPrinter(locale: string): (value: number, decimals: Range) => string {
  const formats = new Map<string, Intl.NumberFormat>();
  return (value, [minimumFractionDigits, maximumFractionDigits]) => {
    if (!Number.isFinite(value)) return NOT_COMPUTED;
    const key = `${minimumFractionDigits} ${maximumFractionDigits}`;
    const format =
      formats.get(key) ??
      new Intl.NumberFormat(locale, {
        minimumFractionDigits,
        maximumFractionDigits,
        roundingMode: 'halfExpand',
      });
    formats.set(key, format);
    const rounded = Math.abs(value) < 0.5 * 10 ** -maximumFractionDigits ? 0 : value;
    return withMinus(format.format(rounded));
  };
}

/** A number as text, with a minus sign in the place of the hyphen that many locales print before it. */
export const withMinus = (text: string): string => text.replace('-', '−');

/** "22 kW (30 hp)"; in US customary units "30 hp" alone. */
function powerText(
  watts: number,
  system: UnitSystem,
  print: (value: number, shown: Shown) => string,
): string {
  const decimals = watts < 10_000 ? 1 : 0;
  const horsepower = print(watts, { unit: 'hp', factor: UNIT_KINDS.power.hp, decimals });
  if (system === 'us' || !Number.isFinite(watts)) return horsepower;
  return `${print(watts, { unit: 'kW', factor: 1000, decimals })}${NO_BREAK}(${horsepower})`;
}

function feetAndInches(
  metres: number,
  number: (value: number, decimals: number) => string,
): string {
  if (!Number.isFinite(metres)) return NOT_COMPUTED;
  const inches = Math.round(Math.abs(metres) / UNIT_KINDS.length.in);
  const sign = metres < 0 && inches > 0 ? '−' : '';
  const parts = [
    `${sign}${number(Math.floor(inches / 12), 0)}`,
    'ft',
    number(inches % 12, 0),
    'in',
  ];
  return parts.join(NO_BREAK);
}
