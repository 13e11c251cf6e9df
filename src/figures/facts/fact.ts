import type { Audience } from '../../findings/index.ts';
import type { Money } from '../../money/index.ts';
import type { Decimal, NotComputed, QuantityName } from '../../units/index.ts';
import type { MethodId } from './methods.ts';

/** What a fact is about; a star in `name` is where `of` stands: "group.*" of "Engine". */
export interface FactKey {
  readonly subject: string;
  readonly name: string;
  readonly of?: string;
}

/**
 * How a fact is told: a quantity by its name, a count by what it counts, an amount in the unit that a supplier sells by,
 * exact decimals, money, words.
 */
export type As =
  | QuantityName
  | 'people'
  | 'feed lines'
  | 'amount'
  | 'exact hours'
  | 'exact share'
  | 'money'
  | 'text';

type ValueOf<Told extends As> = Told extends 'money'
  ? Money
  : Told extends 'text'
    ? string
    : Told extends 'exact hours' | 'exact share'
      ? Decimal
      : number;

/** What a fact may say. Numbers are SI. */
export type Said = Money | Decimal | number | string | NotComputed;

/** One stated result, the same for every document, page and script; plain data and nothing else. */
export interface Fact<Who extends Audience = Audience, Says extends Said = Said> {
  readonly key: FactKey;
  readonly label: string;
  readonly for: Who;
  readonly as: As;
  readonly says: Says;
  /** Least and greatest, where it says the likely value of a band. */
  readonly low?: number;
  readonly high?: number;
  /** Of an amount. */
  readonly unit?: string;
  readonly method: MethodId;
  /** What the shop's own files or a method of a place name as the source; it comes before the method's. */
  readonly source?: string;
  /** The facts that it comes from, the governing one first. */
  readonly from: readonly FactKey[];
}

/** What one order's fact has beside its value. */
export type More = Partial<Pick<Fact, 'low' | 'high' | 'unit' | 'source' | 'from' | 'label'>> & {
  readonly of?: string;
};

/** Facts of one subject: `define` says what is the same in every order, what it returns states the fact of one. */
export const factsOf =
  (subject: string) =>
  <const Who extends Audience, const Told extends As>(
    who: Who,
    as: Told,
    name: string,
    label: string,
    method: MethodId,
  ) =>
  <Says extends ValueOf<Told> | NotComputed>(
    says: Says,
    { of, from = [], ...more }: More = {},
  ): Fact<Who, Says> => ({
    key: { subject, name, ...(of !== undefined && { of }) },
    label,
    for: who,
    as,
    says,
    method,
    from,
    ...more,
  });

/** The value of a result, or why it has none: for a fact of one part of it. */
export function valueOf<Result, Value>(
  result: Result | NotComputed,
  value: (known: Result) => Value,
): Value | NotComputed {
  return isNotComputed(result) ? result : value(result);
}

/** True for what was not computed. */
export const isNotComputed = (value: unknown): value is NotComputed =>
  typeof value === 'object' && value !== null && 'notComputed' in value;
