import { type FloatingBody, immerse } from '../../float/index.ts';
import type { Build } from '../../resolve/index.ts';
import {
  FRESH_WATER_DENSITY,
  type Kilograms,
  kilograms,
  type Metres,
  metres,
  radians,
} from '../../units/index.ts';
import { openingsOf } from './input.ts';

/**
 * Mass of fresh water that she displaces, level and upright, when it stands at a height above the baseline: the lighter
 * water, so the least that she carries.
 */
export function displacedTo(body: FloatingBody, level: Metres): Kilograms {
  const fresh = { ...body, water: FRESH_WATER_DENSITY };
  return kilograms(
    immerse(fresh, { level, trim: radians(0), heel: radians(0) }).volume * FRESH_WATER_DENSITY,
  );
}

/** Height above the baseline at which water first comes aboard: the lowest opening, or the sheer. */
export function downfloodingHeight(build: Build): Metres {
  const sheer = build.hull.lines.map(({ points }) => points.at(-1)?.[1] ?? 0);
  const openings = openingsOf(build).map(({ at }) => at.z);
  return metres(Math.min(...sheer, ...openings));
}
