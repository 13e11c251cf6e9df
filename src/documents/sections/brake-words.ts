import type { CustomerTrailer } from '../../figures/index.ts';
import { whyNot } from '../../units/index.ts';
import { capital, sentence } from './words.ts';

/** Rules that a place has, in words. */
const PLACES = {
  AU: 'Australia',
  NZ: 'New Zealand',
  'UK-EU': 'the United Kingdom and the European Union',
  US: 'the United States',
} as const;

/** What the rules of the place ask for, and what the trailer has. */
export function brakeWords({
  place,
  trailer,
  brakes,
}: Pick<CustomerTrailer, 'place' | 'trailer' | 'brakes'>): string {
  if ('notComputed' in place) return `Brakes: ${whyNot(place)}.`;
  const where = PLACES[place.place];
  if ('notComputed' in brakes) return `Brakes in ${where}: ${whyNot(brakes)}.`;
  const need =
    brakes.braked === 'none' ? 'the rules ask for none' : `brakes on ${brakes.braked} are needed`;
  const wheels = trailer.brakedWheels === undefined ? '' : ` on ${trailer.brakedWheels}`;
  const has =
    trailer.brakes === 'none' ? 'it has none' : `it has ${trailer.brakes} brakes${wheels}`;
  const besides = brakes.notes.map((note) => ` ${sentence(capital(note))}`).join('');
  return `Brakes in ${where}: ${need}; ${has}.${besides}`;
}
