import { type Finding, finding, nearestName, type Place } from '../findings/index.ts';
import type { Catalogue, GroupedOption, Hull } from '../schema/index.ts';

/** An option of the catalogue at the place where an order names it. */
export interface Chosen {
  readonly option: GroupedOption;
  readonly quantity: number;
  readonly place: Place;
}

type Requirement = string | readonly string[];

/** Everything that can be wrong between the options of one order, its hull and each other. */
export function checkCompatibility(
  chosen: readonly Chosen[],
  hull: Hull,
  catalogue: Catalogue,
): readonly Finding[] {
  const ordered = new Set(chosen.map(({ option }) => option.value.id));
  return [
    ...orderedTwice(chosen),
    ...placesTaken(chosen),
    ...chosen.flatMap(({ option: { value }, quantity, place }) => [
      ...checkFits(value, hull, place),
      ...checkQuantity(value, quantity, place),
      ...checkRequirements(value.name, value.requires, ordered, place, catalogue),
      ...excludedBy(value, chosen, place),
    ]),
  ];
}

/** Findings for what an item requires and the order lacks. */
export function checkRequirements(
  name: string,
  requires: readonly Requirement[],
  ordered: ReadonlySet<string>,
  place: Place,
  catalogue: Catalogue,
): readonly Finding[] {
  const nameOf = (id: string): string => catalogue.options.get(id)?.value.name ?? id;
  return requires
    .map((requirement) => (typeof requirement === 'string' ? [requirement] : requirement))
    .filter((anyOf) => !anyOf.some((id) => ordered.has(id)))
    .map((anyOf) =>
      finding('REQUIREMENT_UNMET', place, {
        received: name,
        expected: anyOf.map(nameOf).join(' or '),
        remedy: `Add ${anyOf.join(' or ')} to the options, or take ${name} out`,
      }),
    );
}

/** A finding for a name that the catalogue does not have, with the nearest that it has. */
export function unknownId(
  kind: string,
  id: string,
  known: Iterable<string>,
  place: Place,
): Finding {
  const all = [...known];
  const near = nearestName(id, all);
  const article = /^[aeiou]/.test(kind) ? 'an' : 'a';
  return finding('UNKNOWN_ID', place, {
    received: `the ${kind} "${id}"`,
    expected:
      near === undefined
        ? `${article} ${kind} of the catalogue${few(all)}`
        : `${article} ${kind} of the catalogue; the nearest is "${near}"`,
    ...(near !== undefined && { remedy: `Write ${near}, or add ${id} to the catalogue` }),
  });
}

const FEW = 12;

/** The names that there are, where they can be read at a glance. */
function few(known: readonly string[]): string {
  if (known.length === 0) return ', which has none';
  return known.length > FEW ? '' : `: ${known.join(', ')}`;
}

function orderedTwice(chosen: readonly Chosen[]): readonly Finding[] {
  const seen = new Set<string>();
  return chosen.flatMap(({ option: { value }, place }) => {
    if (seen.has(value.id)) return [finding('ORDERED_TWICE', place, { received: value.id })];
    seen.add(value.id);
    return [];
  });
}

function placesTaken(chosen: readonly Chosen[]): readonly Finding[] {
  const takenBy = new Map<string, GroupedOption['value']>();
  return chosen.flatMap(({ option: { value }, place }) =>
    value.occupies.flatMap((spot) => {
      const first = takenBy.get(spot);
      takenBy.set(spot, first ?? value);
      if (!first || first.id === value.id) return [];
      return [
        finding('PLACE_TAKEN', place, {
          received: `${value.name} and ${first.name} at ${spot}`,
          expected: 'one of the two',
        }),
      ];
    }),
  );
}

function checkFits(option: GroupedOption['value'], hull: Hull, place: Place): readonly Finding[] {
  if (option.fits === undefined || option.fits.includes(hull.id)) return [];
  return [
    finding('DOES_NOT_FIT', place, {
      received: `${option.name} on the ${hull.name}`,
      expected: `one of the hulls ${option.fits.join(', ')}`,
    }),
  ];
}

function checkQuantity(
  { name, quantity }: GroupedOption['value'],
  ordered: number,
  place: Place,
): readonly Finding[] {
  if (ordered >= quantity.least && ordered <= quantity.most) return [];
  return [
    finding('QUANTITY_OUT_OF_RANGE', place, {
      received: `${ordered} of ${name}`,
      expected:
        quantity.least === quantity.most
          ? `${quantity.least}`
          : `from ${quantity.least} to ${quantity.most}`,
    }),
  ];
}

/** An exclusion holds both ways but is reported once, at the later of the two. */
function excludedBy(
  { id, name }: GroupedOption['value'],
  chosen: readonly Chosen[],
  place: Place,
): readonly Finding[] {
  const self = chosen.findIndex(({ option }) => option.value.id === id);
  const excludes = new Set(chosen[self]?.option.value.excludes);
  return chosen
    .slice(0, Math.max(self, 0))
    .map(({ option }) => option.value)
    .filter((earlier) => excludes.has(earlier.id) || earlier.excludes.includes(id))
    .map((earlier) =>
      finding('EXCLUDED', place, {
        received: `${name} together with ${earlier.name}`,
        expected: 'one of the two',
      }),
    );
}
