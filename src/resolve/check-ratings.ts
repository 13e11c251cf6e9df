import { type Finding, finding } from '../findings/index.ts';
import type { Hull, Order, Outboard, Shaft, SourcedOrder, Trailer } from '../schema/index.ts';
import type { Formatter, Kilograms } from '../units/index.ts';

interface Rated {
  readonly hull: Hull;
  readonly outboard?: { readonly model: Outboard; readonly shaft: Shaft; readonly mass: Kilograms };
  readonly trailer?: Trailer;
}

/** The people that an order is figured with: where it does not say, all that the hull is rated for. */
export const peopleOf = ({ boat }: Order, { ratings }: Hull): number =>
  boat.people ?? ratings.people;

/** Findings of what is ordered against what the shop rates the hull, and the trailer's maker the trailer, for. */
export function checkRatings(
  order: SourcedOrder,
  { hull, outboard, trailer }: Rated,
  format: Formatter,
): readonly Finding[] {
  const findings: Finding[] = [];
  const { ratings } = hull;
  const model = order.place(['outboard', 'model']);
  if (ratings.draft)
    findings.push(finding('RATING_DRAFT', order.place(['hull']), { received: hull.name }));
  if (order.value.boat.people === undefined)
    findings.push(
      finding('PEOPLE_NOT_SAID', order.place(['boat']), {
        received: `no people:, so ${ratings.people}`,
      }),
    );
  if (outboard && outboard.model.power > ratings.power) {
    findings.push(
      finding('POWER_OVER_RATING', model, {
        received: format.power(outboard.model.power),
        expected: `at most ${format.power(ratings.power)} on the ${hull.name}`,
      }),
    );
  }
  if (outboard && outboard.mass > ratings.engineMass) {
    findings.push(
      finding('ENGINE_TOO_HEAVY', model, {
        received: format.mass(outboard.mass),
        expected: `at most ${format.mass(ratings.engineMass)} on the ${hull.name}`,
      }),
    );
  }
  if (outboard && outboard.shaft !== hull.shaft) {
    findings.push(
      finding('SHAFT_LENGTH', order.place(['outboard', 'shaft']), {
        received: `a ${outboard.shaft} shaft`,
        expected: `a ${hull.shaft} shaft on the ${hull.name}`,
      }),
    );
  }
  const people = peopleOf(order.value, hull);
  if (people > ratings.people) {
    findings.push(
      finding('PEOPLE_OVER_RATING', order.place(['boat', 'people']), {
        received: `${people}`,
        expected: `at most ${ratings.people} on the ${hull.name}`,
      }),
    );
  }
  const { length } = hull.dimensions;
  if (trailer && (length < trailer.shortest || length > trailer.longest)) {
    findings.push(
      finding('TRAILER_LENGTH', order.place(['trailer']), {
        received: `a hull of ${format.length(length)}`,
        expected: `from ${format.length(trailer.shortest)} to ${format.length(trailer.longest)} on ${trailer.name}`,
      }),
    );
  }
  return findings;
}
