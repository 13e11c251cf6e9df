import { FOOT, type Kilograms, kilograms, POUND } from '../units/index.ts';

/** Length below which 33 CFR 183 applies: 20 ft, m. */
export const TWENTY_FEET = 20 * FOOT;

/**
 * A mass in pounds, as the law counts.
 *
 * @source International yard and pound agreement, 1959: 0.45359237 kg, exact
 */
export const inPounds = (mass: Kilograms): number => mass / POUND;

/**
 * A mass given in pounds.
 *
 * @source as `inPounds`
 */
export const ofPounds = (pounds: number): Kilograms => kilograms(pounds * POUND);
