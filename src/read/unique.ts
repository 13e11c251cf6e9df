import { describePlace, type Finding, finding } from '../findings/index.ts';
import type { Sourced } from '../schema/index.ts';
import { clip } from './words.ts';

/**
 * Entries by a name that must be theirs alone.
 *
 * @param fold - what makes two names the same
 * @returns the first entry of each name, and a finding at each later one that names the place of the first
 */
export function byUniqueName<T extends Sourced<unknown>>(
  entries: readonly T[],
  key: string,
  nameOf: (entry: T) => string,
  sources: ReadonlyMap<string, string>,
  fold: (name: string) => string = (name) => name,
): { readonly byName: ReadonlyMap<string, T>; readonly findings: readonly Finding[] } {
  const byName = new Map<string, T>();
  const firsts = new Map<string, T>();
  const findings: Finding[] = [];
  for (const entry of entries) {
    const name = nameOf(entry);
    const first = firsts.get(fold(name));
    if (!first) {
      firsts.set(fold(name), entry);
      byName.set(name, entry);
      continue;
    }
    const where = describePlace(first.place([key]), sources.get(first.file));
    const received = `the ${key} "${clip(name)}", which stands at ${where} already`;
    findings.push(finding('DUPLICATE_ID', entry.place([key]), { received }));
  }
  return { byName, findings };
}
