import type { Symmetric, Triple } from '../maths/index.ts';
import { immerse, type Immersed } from './immerse.ts';
import type { FloatingBody, Load, WaterPlane } from './types.ts';
import { inWaterAxes } from './water-plane.ts';

/** Potential energy of boat and water over gravity, kg.m, with its first and second derivatives by level, trim and heel. */
export interface Energy {
  readonly value: number;
  readonly gradient: Triple;
  readonly curvature: Symmetric;
}

/**
 * Potential energy of boat and displaced water under a plane, and its derivatives by level, trim and heel.
 *
 * E = M (zG - d) + rho (d V - Mz), with d the level, zG the height of the centre of mass, V the immersed
 * volume and Mz its moment of height, all square to the water. dE/dd = rho V - M; dE/dtrim and dE/dheel are
 * the moments of weight and buoyancy. At rest all three are zero.
 *
 * @validity mass above 0; trim within 90 degrees
 * @source derived: differentiation of the volume integrals; the boundary moves with the plane only
 */
export function energyOf(body: FloatingBody, load: Load, plane: WaterPlane): Energy {
  const sums = immerse(body, plane);
  const { mass } = load;
  const { water } = body;
  const { level, trim } = plane;
  const weight = inWaterAxes(plane, load.centre);
  const [sine, cosine] = [Math.sin(trim), Math.cos(trim)];
  const along = water * sums.volumeAlong - mass * weight.along;
  const across = water * sums.volumeAcross - mass * weight.across;
  const up = water * sums.volumeUp - mass * weight.up;
  return {
    value: mass * (weight.up - level) + water * (level * sums.volume - sums.volumeUp),
    gradient: [water * sums.volume - mass, -along, cosine * across],
    curvature: [
      water * sums.area,
      water * -sums.areaAlong,
      water * cosine * sums.areaAcross,
      water * sums.areaAlongAlong + up,
      water * cosine * -sums.areaAlongAcross - sine * across,
      cosine * (water * cosine * sums.areaAcrossAcross + cosine * up - sine * along),
    ],
  };
}

/**
 * Righting arm, m: distance across the water from the centre of mass to the centre of buoyancy; above zero
 * when it turns the boat back from a heel to starboard.
 *
 * @source derived: GZ = yB - yG in the axes of the water
 */
export function rightingArm(sums: Immersed, load: Load, plane: WaterPlane): number {
  return sums.volumeAcross / sums.volume - inWaterAxes(plane, load.centre).across;
}
