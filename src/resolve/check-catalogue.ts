import { type Finding, finding, type Place } from '../findings/index.ts';
import type { Catalogue, Sourced } from '../schema/index.ts';
import { unknownId } from './check-compatibility.ts';
import { checkMaterials } from './check-materials.ts';
import { checkMoulds } from './check-plan.ts';
import { checkRates } from './check-rates.ts';

type Path = readonly (string | number)[];

interface Costed {
  readonly class: string;
  readonly parts?: readonly { readonly part: string }[];
}

/**
 * Findings of the catalogue against itself: names that point at nothing, classes without a margin, circles of
 * requirements.
 *
 * @param broken - ids of entries that could not be read: they are known to exist, and have their own findings
 */
export function checkCatalogue(
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
): readonly Finding[] {
  const { hulls, options, outboards, trailers } = catalogue;
  return [
    ...[...hulls.values()].flatMap((hull) => [
      ...checkClass(hull, catalogue),
      ...checkParts(hull, ['shell', 'parts'], hull.value.shell.parts, catalogue, broken),
      ...checkParts(hull, ['structure', 'parts'], hull.value.structure.parts, catalogue, broken),
      ...checkRates(hull, ['shell', 'hours'], hull.value.shell.hours, catalogue.yard.value),
      ...checkRates(hull, ['structure', 'hours'], hull.value.structure.hours, catalogue.yard.value),
    ]),
    ...[...options.values(), ...outboards.values(), ...trailers.values()].flatMap((entry) => [
      ...checkClass(entry, catalogue),
      ...checkParts(entry, ['parts'], entry.value.parts, catalogue, broken),
      ...checkRates(entry, ['hours'], entry.value.hours, catalogue.yard.value),
    ]),
    ...[...options.values()].flatMap((option) =>
      checkNames(option, ['fits'], option.value.fits ?? [], 'hull', hulls, broken),
    ),
    ...[...options.values()].flatMap((option) =>
      (['excludes', 'within'] as const).flatMap((field) =>
        checkNames(option, [field], option.value[field], 'option', options, broken),
      ),
    ),
    ...[...options.values(), ...outboards.values()].flatMap((entry) =>
      entry.value.requires.flatMap((requirement, index) =>
        checkNames(
          entry,
          ['requires', index],
          typeof requirement === 'string' ? [requirement] : requirement,
          'option',
          options,
          broken,
        ),
      ),
    ),
    ...[...trailers.values()].flatMap((entry) =>
      checkPart(entry.place(['part']), entry.value.part, catalogue, broken),
    ),
    ...[...outboards.values()].flatMap((entry) =>
      Object.entries(entry.value.shafts).flatMap(([shaft, facts]) =>
        checkPart(entry.place(['shafts', shaft, 'part']), facts.part, catalogue, broken),
      ),
    ),
    ...checkMoulds(catalogue, broken),
    ...checkPackages(catalogue, broken),
    ...checkMaterials(catalogue, broken),
    ...checkCircles(catalogue),
  ];
}

function checkClass(entry: Sourced<Costed>, { yard }: Catalogue): readonly Finding[] {
  const known = Object.keys(yard.value.margins);
  return known.includes(entry.value.class)
    ? []
    : [unknownId('margin class', entry.value.class, known, entry.place(['class']))];
}

function checkParts(
  entry: Sourced<unknown>,
  path: Path,
  uses: readonly { readonly part: string }[],
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
): readonly Finding[] {
  return uses.flatMap(({ part }, index) =>
    checkPart(entry.place([...path, index, 'part']), part, catalogue, broken),
  );
}

function checkPart(
  place: Place,
  code: string,
  { parts }: Catalogue,
  broken: ReadonlySet<string>,
): readonly Finding[] {
  return parts.has(code) || broken.has(code) ? [] : [unknownId('part', code, parts.keys(), place)];
}

function checkNames(
  entry: Sourced<unknown>,
  path: Path,
  names: readonly string[],
  kind: string,
  known: ReadonlyMap<string, unknown>,
  broken: ReadonlySet<string>,
): readonly Finding[] {
  return names
    .filter((name) => !known.has(name) && !broken.has(name))
    .map((name) =>
      unknownId(kind, name, known.keys(), entry.place([...path, Math.max(names.indexOf(name), 0)])),
    );
}

/** Packages whose options the catalogue does not have, or whose id another has already. */
function checkPackages(
  { yard, options }: Catalogue,
  broken: ReadonlySet<string>,
): readonly Finding[] {
  const offers = yard.value.packages;
  return offers.flatMap(({ id, options: names }, index) => [
    ...checkNames(yard, ['packages', index, 'options'], names, 'option', options, broken),
    ...(offers.findIndex((offer) => offer.id === id) === index
      ? []
      : [finding('DUPLICATE_ID', yard.place(['packages', index, 'id']), { received: id })]),
  ]);
}

/** Requirements that come back to where they began; each circle is reported once. */
function checkCircles({ options }: Catalogue): readonly Finding[] {
  const done = new Set<string>();
  const findings: Finding[] = [];
  const walk = (id: string, trail: readonly string[]): void => {
    const begun = trail.indexOf(id);
    if (begun >= 0) {
      const circle = [...trail.slice(begun), id];
      const option = options.get(id);
      if (option)
        findings.push(
          finding('REQUIREMENT_CIRCULAR', option.place(['requires']), {
            received: circle.join(' -> '),
          }),
        );
      return;
    }
    if (done.has(id)) return;
    // A choice of several is no circle by itself: only what is required without choice is followed.
    for (const next of options.get(id)?.value.requires ?? [])
      if (typeof next === 'string') walk(next, [...trail, id]);
    done.add(id);
  };
  for (const id of options.keys()) walk(id, []);
  return findings;
}
