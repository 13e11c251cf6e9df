import { type Finding, finding, type Place } from '../findings/index.ts';

/** Findings that are not among others, by what they say. */
export function onlyOf(
  findings: readonly Finding[],
  others: readonly Finding[],
): readonly Finding[] {
  const said = new Set(others.map(wordsOf));
  return findings.filter((one) => !said.has(wordsOf(one)));
}

/** True for a name that points to nothing: a mistake of the file, where all else is a fact of the changed boat. */
export function isMisspelt({ code }: Finding): boolean {
  return code === 'UNKNOWN_ID';
}

/**
 * A finding for every option that a change takes out although it is not there.
 *
 * @param place - where the change names what it takes out
 * @param lacks - what the order does not do: "does not have", or "does not have then"
 */
export function notRemoved(
  options: readonly string[],
  place: Place,
  lacks: string,
): readonly Finding[] {
  return options.map((option) =>
    finding('UNKNOWN_ID', place, {
      received: `${option}, which the order ${lacks}`,
      expected: 'an option of the order',
      remedy: 'Take it out of remove:',
    }),
  );
}

const wordsOf = ({ code, received, expected }: Finding): string =>
  JSON.stringify([code, received, expected]);
