import { type Finding, finding } from '../findings/index.ts';
import type { Sourced } from '../schema/index.ts';

/** Question marks where something is to be filled in, as a new order has them, or the words of older ones. */
const PLACEHOLDER = /\?\?\?|^What she is for, in one sentence\.?$|^Customer to be named$/;

/** A finding for every text that was left to be filled in. */
export function checkFilledIn(files: readonly Sourced<unknown>[]): readonly Finding[] {
  return files.flatMap((file) =>
    textsIn(file.value, []).flatMap(([path, text]) =>
      PLACEHOLDER.test(text)
        ? [finding('PLACEHOLDER_LEFT', file.place(path), { received: text })]
        : [],
    ),
  );
}

type Path = readonly (string | number)[];

function textsIn(value: unknown, path: Path): readonly (readonly [Path, string])[] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  const parts: readonly (readonly [string | number, unknown])[] = Array.isArray(value)
    ? [...value.entries()]
    : Object.entries(value);
  return parts.flatMap(([key, part]) => textsIn(part, [...path, key]));
}
