import type { PeopleLimit } from './types.ts';

export interface Governing {
  readonly people: number;
  /** What allows no more than that. */
  readonly by: readonly string[];
  /** What would allow more, from the tightest. */
  readonly not: readonly PeopleLimit[];
  readonly words: string;
}

/**
 * The reason that keeps the number of people where it is.
 *
 * @param limits - the order of equals is kept
 * @source derived: the least of all limits
 */
export function governingLimit(limits: readonly [PeopleLimit, ...PeopleLimit[]]): Governing {
  const people = Math.min(...limits.map((one) => one.people));
  const by = limits.filter((one) => one.people === people).map(({ name }) => name);
  const not = limits
    .filter((one) => one.people > people)
    .toSorted((one, other) => one.people - other.people);
  return { people, by, not, words: wordsFor(by, not) };
}

function wordsFor(by: readonly string[], not: readonly PeopleLimit[]): string {
  const [next] = not;
  const other = next ? ` (by ${next.name}: ${next.people})` : '';
  return `limited by ${by.join(' and ')}${other}`;
}
