import { type Finding, finding } from '../findings/index.ts';
import type { Hull, SourcedOrder, Yard } from '../schema/index.ts';
import type { Entries } from './look-up.ts';

const SHOWN = 12;

/**
 * Findings for the parts of an order that no price list has, or whose rows could not be read: without them the order
 * would be priced and weighed too low.
 *
 * @param broken - ids of catalogue entries that could not be read
 */
export function checkBrokenParts(
  order: SourcedOrder,
  hull: Hull,
  { options, outboard, trailer }: Entries,
  parts: ReadonlyMap<string, unknown>,
  broken: ReadonlySet<string>,
): readonly Finding[] {
  const shaft = order.value.outboard?.shaft;
  const engine = shaft && outboard?.value.shafts[shaft]?.part;
  const uses = [
    ...hull.shell.parts,
    ...hull.structure.parts,
    ...options.flatMap(({ entry }) => entry.value.parts),
    ...(outboard?.value.parts ?? []),
    ...(trailer?.value.parts ?? []),
  ].map(({ part }) => part);
  const ofCatalogue = [
    ...uses,
    ...(engine ? [engine] : []),
    ...(trailer ? [trailer.value.part] : []),
  ];
  const ofExtras = order.value.extras.flatMap((extra) => extra.parts.map(({ part }) => part));
  const lacking = (codes: readonly string[]) =>
    [...new Set(codes)].filter((code) => !parts.has(code));
  return [
    ...lacking([...ofCatalogue, ...ofExtras])
      .filter((code) => broken.has(code))
      .map((code) =>
        finding('UNKNOWN_ID', order.place(), {
          received: `the part "${code}", which has mistakes of its own`,
          remedy: `Fix ${code} in its price list first`,
        }),
      ),
    ...unlisted(
      order,
      lacking(ofCatalogue).filter((code) => !broken.has(code)),
    ),
  ];
}

/** One finding for all of them: a price list that cannot be read lacks many at once. */
function unlisted(order: SourcedOrder, codes: readonly string[]): readonly Finding[] {
  if (codes.length === 0) return [];
  const shown = codes.slice(0, SHOWN).join(', ');
  const more = codes.length > SHOWN ? ` and ${codes.length - SHOWN} more` : '';
  return [
    finding('UNKNOWN_ID', order.place(), {
      received: `parts without a price: ${shown}${more}`,
      expected: 'a row in a price list that can be read, for every part that the order takes',
      remedy: 'Fix the price list, or the part’s code in the catalogue, first',
    }),
  ];
}

/** The margin class or the rate of an hour that what is ordered lacks: the catalogue tells where. */
export function checkPriced(
  order: SourcedOrder,
  hull: Hull,
  { options, outboard, trailer }: Entries,
  { margins, rates, stages }: Yard,
): readonly Finding[] {
  const sold = [
    { class: hull.class, hours: [...hull.shell.hours, ...hull.structure.hours], name: hull.id },
    ...[...options.map(({ entry }) => entry), outboard, trailer].flatMap((entry) =>
      entry ? [{ ...entry.value, name: entry.value.id }] : [],
    ),
  ];
  const unpriced = sold.filter(
    (one) =>
      !(one.class in margins) ||
      one.hours.some(({ stage }) => !rates[stage] && stages[stage]?.trade === undefined),
  );
  return [...new Set(unpriced.map(({ name }) => name))].map((name) =>
    finding('UNKNOWN_ID', order.place(), {
      received: `"${name}", whose margin class or rate of an hour is not in the yard file`,
      remedy: `Fix ${name} in the catalogue first`,
    }),
  );
}
