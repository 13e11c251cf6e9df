import { type Finding, finding } from '../findings/index.ts';
import type { Hull, SourcedOrder } from '../schema/index.ts';
import type { Entries } from './look-up.ts';

/**
 * Findings for the parts of an order whose rows in the price lists could not be read: without them the order would be
 * priced and weighed too low. A part that no list names is told in the catalogue.
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
    ...order.value.extras.flatMap((extra) => extra.parts),
    ...(outboard?.value.parts ?? []),
    ...(trailer?.value.parts ?? []),
  ].map(({ part }) => part);
  const codes = [...uses, ...(engine ? [engine] : []), ...(trailer ? [trailer.value.part] : [])];
  return [...new Set(codes)]
    .filter((code) => !parts.has(code) && broken.has(code))
    .map((code) =>
      finding('UNKNOWN_ID', order.place(), {
        received: `the part "${code}", which has mistakes of its own`,
        mend: `Mend ${code} in its price list first`,
      }),
    );
}
