/**
 * A figure that could not be had, and why, in words for a person.
 *
 * Without `because` the method does not apply: the boat lies outside what it holds for.
 */
export interface NotComputed {
  readonly notComputed: string;
  readonly because?: 'data missing' | 'search failed';
  /** The field that is missing, as a person would type it: "tow: place". */
  readonly field?: string;
}

/** A result, or why there is none. */
export type Computed<Result> = Result | NotComputed;

/** What cannot be said before somebody has filled in a field. */
export const dataMissing = (notComputed: string, field: string): NotComputed => ({
  notComputed,
  because: 'data missing',
  field,
});

/** What a search did not find: a fact about the program, never about the boat. */
export const searchFailed = (notComputed: string): NotComputed => ({
  notComputed,
  because: 'search failed',
});

/** "not computed: why". */
export const whyNot = ({ notComputed }: NotComputed): string => `not computed: ${notComputed}`;

/** A value as printed, or why there is none. */
export const known = <Value extends number>(
  value: Computed<Value>,
  print: (value: Value) => string,
): string => (typeof value === 'number' ? print(value) : whyNot(value));
