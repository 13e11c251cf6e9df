import type { Place } from '../findings/index.ts';

/** Keys and list positions from the top of a value to a part of it. */
export type Path = readonly (string | number)[];

/** A plain value as typed, that knows where each part of it is written. */
export interface PlacedValue {
  readonly file: string;
  /** Numbers are the text that was typed, so that 0017 and 12.50 stay what they are. */
  readonly value: unknown;
  /** The value at a path; for one that is not written, the key of the nearest block that is. */
  place(path?: Path): Place;
  /** The key at the end of a path. */
  placeOfKey(path: Path): Place;
}

/** A part of a placed value as a placed value of its own. */
export function partOf(whole: PlacedValue, prefix: Path): PlacedValue {
  return {
    file: whole.file,
    value: valueAt(whole.value, prefix),
    place: (path = []) => whole.place([...prefix, ...path]),
    placeOfKey: (path) => whole.placeOfKey([...prefix, ...path]),
  };
}

/** The part of a plain value at a path; undefined when nothing is there. */
export function valueAt(value: unknown, path: Path): unknown {
  let here = value;
  for (const step of path) {
    if (Array.isArray(here) && typeof step === 'number') here = here[step];
    else if (isBlock(here) && Object.hasOwn(here, step)) here = here[step];
    else return undefined;
  }
  return here;
}

/** True for a block of fields: an object that is not a list. */
export function isBlock(value: unknown): value is Readonly<Record<string | number, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
