import { buildHull, type FloatingBody, immerse } from '../float/index.ts';
import type { Build } from '../resolve/index.ts';
import {
  kilogramsPerCubicMetre,
  type Kilograms,
  kilograms,
  type Metres,
  radians,
} from '../units/index.ts';

/** Fresh water, the lighter: what she displaces in it is the least that she carries. */
const FRESH = kilogramsPerCubicMetre(1000);

/** The hull in fresh water, from her lines; undefined when they make no hull. */
export function bodyOf({ hull }: Pick<Build, 'hull'>): FloatingBody | undefined {
  const { form } = buildHull({
    stations: hull.lines,
    between: 'curved',
    length: hull.dimensions.length,
  });
  return form && { hull: form, flooded: [], water: FRESH };
}

/** Mass that she displaces, level and upright, when the water stands at a height above the baseline. */
export function displacedTo(body: FloatingBody, level: Metres): Kilograms {
  return kilograms(
    immerse(body, { level, trim: radians(0), heel: radians(0) }).volume * body.water,
  );
}

/** Height above the baseline at which water first comes aboard. */
export const downfloodingHeight = ({ hull }: Pick<Build, 'hull'>): Metres =>
  hull.performance.downfloodingHeight ?? hull.dimensions.transomHeight;
