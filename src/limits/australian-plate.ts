import { wholeDown } from '../maths/index.ts';
import type { Kilograms, Metres } from '../units/index.ts';

/** A person with gear in the reckoning of AS 1799.1: 80 kg and 10 kg. */
const PERSON_WITH_GEAR = 90;

/**
 * People in protected waters in the manner of AS 1799.1: load less the largest outboard, at 90 kg each.
 *
 * @param greatestLoad - engine included, as the builder found it: this method does not compute it
 * @param engine - heaviest outboard
 * @returns a whole number, 0 or more
 * @validity outboard boats in smooth or protected water; fewer in open water
 * @source AS 1799.1:2009, persons capacity, as a reader of the standard sums it up; the load's own coefficients are in
 * the bought text and are not used here
 */
export function australianPeople(greatestLoad: Kilograms, engine: Kilograms): number {
  return Math.max(0, wholeDown((greatestLoad - engine) / PERSON_WITH_GEAR));
}

/**
 * The facts that an Australian Builders Plate lists, in the order in which a builder settles them.
 *
 * @returns one phrase for each fact
 * @validity an aid for the builder, who confirms and signs
 * @source National Standard for the Australian Builders Plate, edition 5 (2020/21): below 6 m the plate also states
 * the buoyancy
 */
export function australianPlateFacts(length: Metres): readonly string[] {
  const facts = [
    'builder',
    'standard used to find the figures',
    'greatest power of the outboard',
    'greatest mass of the outboard',
    'most people',
    'greatest load: people, engine and gear',
    'warning that the figures may have to be lower in open water',
  ];
  return length < 6 ? [...facts, 'buoyancy: basic or level'] : facts;
}
