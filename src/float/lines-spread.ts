import { kilograms, type Kilograms, metres, type Metres } from '../units/index.ts';
import { findEquilibrium } from './equilibrium.ts';
import { lowestOf } from './freeboard.ts';
import { buildHull } from './hull/build-hull.ts';
import { immerse } from './immerse.ts';
import type { FloatingBody, HullLines, Load, Opening, WaterPlane } from './types.ts';

/** What the same cross-sections give with the lines between them taken the other way: straight for curved. */
export interface LinesSpread {
  readonly other: HullLines['between'];
  /** Of the displacement at the same waterline, above zero when the other way displaces more: mass and share. */
  readonly displacement: Kilograms;
  readonly share: number;
  /** Of the lowest freeboard under the same load; missing when it does not float the other way. */
  readonly freeboard?: Metres;
}

/**
 * How much of the displacement and the freeboard is a guess between the cross-sections.
 *
 * @param plane - at which the body floats with the load
 * @returns undefined when the other way gives no form
 * @source derived: both forms under one plane, and the other afloat under the same load
 */
export function linesSpread(
  lines: HullLines,
  body: FloatingBody,
  {
    load,
    plane,
    openings,
  }: {
    readonly load: Load;
    readonly plane: WaterPlane;
    readonly openings: readonly Opening[];
  },
): LinesSpread | undefined {
  const other = lines.between === 'curved' ? 'straight' : 'curved';
  const { form } = buildHull({ ...lines, between: other });
  if (!form) return undefined;
  const second = { ...body, hull: form };
  const [here, there] = [body, second].map((one) => immerse(one, plane).volume * body.water);
  if (here === undefined || there === undefined || !(here > 0)) return undefined;
  const result = findEquilibrium(second, load, openings, plane);
  const lowest = ({ hull }: FloatingBody, at: WaterPlane): number =>
    lowestOf(hull, openings, at)?.freeboard ?? 0;
  return {
    other,
    displacement: kilograms(there - here),
    share: (there - here) / here,
    ...(result.outcome === 'floats' && {
      freeboard: metres(lowest(second, result.plane) - lowest(body, plane)),
    }),
  };
}
