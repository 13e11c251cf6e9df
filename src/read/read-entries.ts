import type { z } from 'zod';
import { type Finding, hasErrors } from '../findings/index.ts';
import type { Sourced } from '../schema/index.ts';
import { partOf, type PlacedValue, valueAt } from './placed.ts';
import { readYaml, type YamlText } from './read-yaml.ts';
import { sourcedOf, validate, type Validated } from './validate.ts';

/** More would hide the first ones. */
const MAX_FINDINGS_OF_A_FILE = 200;

/**
 * Reads and checks a YAML text that holds one value.
 *
 * @returns the typed value when nothing is wrong with it; else the findings of the text and of the value, without
 * those that only repeat that something at the same place is refused
 */
export function readChecked<T>(
  schema: z.ZodType<T>,
  text: string,
  file: string,
): Validated<T> & { readonly source: YamlText } {
  const source = readYaml(text, file);
  if (source.value === undefined) return { source, findings: source.findings };
  const checked = validate(schema, source);
  const findings = [...source.findings, ...newPlaces(checked.findings, source.findings)];
  if (hasErrors(findings) || !checked.sourced) return { source, findings: capped(findings) };
  return { source, sourced: checked.sourced, findings };
}

/** Of a file with mistakes, the entries of its list that have none, and the ids of all that it names. */
export function validEntries<T>(
  entry: z.ZodType<T>,
  source: YamlText,
  key: string,
): { readonly sound: readonly Sourced<T>[]; readonly broken: readonly string[] } {
  const list = valueAt(source.value, [key]);
  const sound: Sourced<T>[] = [];
  const broken: string[] = [];
  for (const index of Array.isArray(list) ? list.keys() : []) {
    const part = partOf(source, [key, index]);
    const result = refusedWithin(source, part) ? undefined : entry.safeParse(part.value);
    if (result?.success) sound.push(sourcedOf(result.data, part));
    else broken.push(...idOf(part));
  }
  return { sound, broken };
}

/** The id that a block gives itself, whatever else is wrong with it. */
export function idOf(source: PlacedValue, key = 'id'): readonly string[] {
  const id = valueAt(source.value, [key]);
  return typeof id === 'string' ? [id] : [];
}

/** The entries of a list in a sound file, each with its places. */
export function entriesOf<T>(values: readonly T[], source: PlacedValue, key: string): Sourced<T>[] {
  return values.map((value, index) => sourcedOf(value, partOf(source, [key, index])));
}

function refusedWithin(source: YamlText, part: PlacedValue): boolean {
  const whole = part.place().range;
  return source.findings.some(({ place: { range } }) => {
    if (!whole || !range) return true;
    return range[0] >= whole[0] && range[1] <= whole[1];
  });
}

function newPlaces(findings: readonly Finding[], earlier: readonly Finding[]): readonly Finding[] {
  const taken = new Set(earlier.map(({ place }) => String(place.range)));
  return findings.filter(({ place }) => !taken.has(String(place.range)));
}

const capped = (findings: readonly Finding[]): readonly Finding[] =>
  findings.slice(0, MAX_FINDINGS_OF_A_FILE);
