/** The fields that are named, of those that there are, and no other. */
export function only<Whole extends object, Name extends keyof Whole>(
  whole: Whole,
  names: readonly Name[],
): Pick<Whole, Name>;
export function only(whole: object, names: readonly PropertyKey[]): object {
  const wanted = new Set<PropertyKey>(names);
  return Object.fromEntries(Object.entries(whole).filter(([name]) => wanted.has(name)));
}
