import { clamp } from '../maths/index.ts';
import { atLeast, atMost, DEGREE, type Metres, type Radians } from '../units/index.ts';
import type { Margin } from './types.ts';

/** Conditions that a category stands for (Directive 2013/53/EU, annex I, 1; from memory). */
export const CATEGORIES = {
  C: { wind: 'to Beaufort 6', waves: 'significant height to 2 m' },
  D: { wind: 'to Beaufort 4', waves: 'significant height to 0.3 m, at times 0.5 m' },
} as const;
export type Category = keyof typeof CATEGORIES;

export interface ScreenInput {
  readonly length: Metres;
  /** Lowest height above the water, fully loaded and upright, at which water can get in. */
  readonly downflooding: Metres;
  /** With everyone at one side, fully loaded. */
  readonly offsetHeel: Radians;
  /** Lowest height above the water at which water can get in, then. */
  readonly offsetFreeboard: Metres;
}

export interface Screening {
  readonly category: Category;
  readonly checks: readonly Margin[];
  readonly passes: boolean;
}

/** Least and greatest of the required downflooding height, m. */
const HEIGHTS: Readonly<Record<Category, readonly [number, number]>> = {
  C: [0.3, 0.75],
  D: [0.2, 0.4],
};
/** Freeboard that is left with everyone at one side, m. */
const OFFSET_FREEBOARD = 0.075;

/**
 * Downflooding height that a category asks for: length / 17 within bounds.
 *
 * @returns m
 * @validity the basic height, without the reductions that openings and quick drains bring
 * @source ISO 12217-1, basic downflooding height (from memory); C 0.30 to 0.75 m, D 0.20 to 0.40 m
 */
export function downfloodingNeeded(length: Metres, category: Category): number {
  const [least, greatest] = HEIGHTS[category];
  return clamp(length / 17, least, greatest);
}

/**
 * Heel that the offset-load test allows, 11.5 + (24 - LH)³/520 degrees.
 *
 * @param length - LH, m
 * @returns degrees
 * @validity 6 m <= LH <= 24 m in the standard; below 6 m ISO 12217-3 has limits of its own, and this value is used here
 * at 6 m so as not to be more generous
 * @source ISO 12217-1:2015, 6.2.3 a), second hand
 */
export function offsetHeelAllowed(length: number): number {
  return 11.5 + (24 - Math.max(length, 6)) ** 3 / 520;
}

/**
 * Which of the categories C and D a boat might be looked at for.
 *
 * @returns a screening for each; passing is no category: that is set by ISO 12217 with its tests
 * @validity small open boats; freeboard, offset load and downflooding height only, at full load
 * @source ISO 12217-1:2015 as in the functions above; least freeboard heeled: UK MCA small vessel code, 11.4.1 (75 mm)
 */
export function screenCategories(input: ScreenInput): readonly Screening[] {
  return (['C', 'D'] as const).map((category) => {
    const heel = input.offsetHeel / DEGREE;
    const checks = [
      atLeast(
        'height of the lowest opening above the water',
        input.downflooding,
        downfloodingNeeded(input.length, category),
        'm',
      ),
      atMost('heel with everyone at one side', heel, offsetHeelAllowed(input.length), '°'),
      atLeast('freeboard with everyone at one side', input.offsetFreeboard, OFFSET_FREEBOARD, 'm'),
    ];
    return { category, checks, passes: checks.every(({ holds }) => holds) };
  });
}
