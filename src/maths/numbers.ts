/** What binary fractions leave behind: a count this near to a whole number is that number. */
const SLACK = 1e-9;

/** The sum of numbers; 0 of none. */
export const sum = (values: readonly number[]): number =>
  values.reduce((total, one) => total + one, 0);

/** A value, or the bound that it lies beyond; the lower one when there is no room between them. */
export const clamp = (value: number, least: number, greatest: number): number =>
  Math.max(Math.min(value, greatest), least);

/** The next whole number up, unless the value is whole but for rounding. */
export const wholeUp = (value: number): number => Math.ceil(value - SLACK);

/** The next whole number down, unless the value is whole but for rounding. */
export const wholeDown = (value: number): number => Math.floor(value + SLACK);
