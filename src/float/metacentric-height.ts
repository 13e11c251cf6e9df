import { DEGREE, metres, type Metres } from '../units/index.ts';
import { immerse, type Immersed } from './immerse.ts';
import { armAt } from './righting-curve.ts';
import { levelFor, solveEquilibrium } from './solve-equilibrium.ts';
import type { FloatingBody, Load } from './types.ts';
import { inWaterAxes } from './water-plane.ts';

/** A tenth of a degree to either side: small enough for the slope, large enough for the arms' last digits. */
const SMALL_HEEL = DEGREE / 10;

export interface MetacentricHeight {
  /** KB + BM - KG. */
  readonly byForm: Metres;
  /** Slope of the righting arm at upright. */
  readonly bySlope: Metres;
  /** Virtual loss through free surfaces inside the boat, already taken off both. */
  readonly freeSurfaceLoss: Metres;
}

/**
 * GM of the boat held upright, two ways; undefined when the hull cannot carry the mass.
 *
 * @param freeSurfaces - sum of density times second moment of free surfaces, kg.m
 * @validity small heels. The free surfaces count as pure moments of transference, whatever is in the tanks.
 * An estimate from the drawn lines; verify by an inclining test
 * @source derived: GM = KB + BM - KG, and GM = dGZ/dheel at zero; virtual rise = sum(rho i) / displacement
 */
export function metacentricHeight(
  body: FloatingBody,
  load: Load,
  freeSurfaces = 0,
): MetacentricHeight | undefined {
  const start = levelFor(body, load, 0, 0);
  const found = start && solveEquilibrium(body, load, start, true);
  if (found?.outcome !== 'rests') return undefined;
  const { plane } = found;
  const loss = freeSurfaces / load.mass;
  const near = { trim: plane.trim, level: plane.level };
  const [starboard, port] = [SMALL_HEEL, -SMALL_HEEL].map((heel) => armAt(body, load, heel, near));
  if (!starboard || !port) return undefined;
  return {
    byForm: metres(metacentreOf(immerse(body, plane)) - inWaterAxes(plane, load.centre).up - loss),
    bySlope: metres((starboard.arm - port.arm) / (2 * SMALL_HEEL) - loss),
    freeSurfaceLoss: metres(loss),
  };
}

/** KB + BM above the origin, m. */
function metacentreOf(sums: Immersed): number {
  const inertia = sums.areaAcrossAcross - sums.areaAcross ** 2 / sums.area;
  return (sums.volumeUp + inertia) / sums.volume;
}
