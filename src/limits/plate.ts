import type { Metres } from '../units/index.ts';
import { australianPlateFacts } from './australian-plate.ts';
import type { MethodId } from './methods.ts';
import { TWENTY_FEET } from './us-units.ts';

/** What stands above the facts of a plate until somebody has signed for them. */
export const PLATE_CAUTION = 'Draft: for the builder to confirm and sign';

const LISTS: Readonly<Record<MethodId, (length: Metres) => readonly string[]>> = {
  australian: australianPlateFacts,
  'cfr-183': (length) =>
    length >= TWENTY_FEET - 1e-9
      ? []
      : [
          'most people, by number and by weight',
          'greatest weight of people, motor and gear',
          'greatest horsepower of the motor',
        ],
  iso: () => [
    'builder',
    'design category',
    'most people',
    'greatest load, without outboard and fixed fuel',
    'greatest power and mass of the outboard',
  ],
};

/**
 * The facts that a capacity plate lists under a method.
 *
 * @returns one phrase for each; none where the law wants no plate
 * @source 33 CFR 183.23 and 183.25; ISO 14945:2021, second hand; Australian Builders Plate, edition 5
 */
export const plateFacts = (method: MethodId, length: Metres): readonly string[] =>
  LISTS[method](length);
