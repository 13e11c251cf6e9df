import type { Scale } from './hull-views.ts';
import { element, fixed, INK } from './svg.ts';
import type { OutboardShape } from './types.ts';

/** Mass of an outboard whose powerhead has the size sketched below, kg. */
const SKETCHED_MASS = 80;

/** How far the sketch reaches from the clamp, m. */
export interface OutboardReach {
  readonly aft: number;
  readonly above: number;
  readonly below: number;
  readonly halfWidth: number;
}

/**
 * How much room the sketch of an outboard takes.
 *
 * @source common practice, no source: the powerhead grows with the cube root of the mass
 */
export function outboardReach({ shaft, mass }: OutboardShape): OutboardReach {
  const size = Math.cbrt(Math.max(mass, 1) / SKETCHED_MASS);
  return { aft: 0.58 * size, above: 0.42 * size, below: shaft + 0.3 * size, halfWidth: 0.2 * size };
}

/** The outboard from the side: powerhead, leg, plate, propeller. A sketch, not the maker's outline. */
export function outboardFromSide(shape: OutboardShape, across: Scale, up: Scale): string {
  const { aft, above, below } = outboardReach(shape);
  const at = (x: number, z: number): string =>
    `${fixed(across(-x * aft))} ${fixed(up(shape.clampHeight + z))}`;
  const plate = -shape.shaft;
  const deep = below - shape.shaft;
  const leg = [
    `M${at(0.28, 0)}`,
    `L${at(0.32, plate)} L${at(0.3, plate - 0.35 * deep)} L${at(0.2, plate - 0.55 * deep)}`,
    `L${at(0.36, plate - 0.7 * deep)} L${at(0.46, plate - deep)} L${at(0.6, plate - 0.7 * deep)}`,
    `L${at(0.78, plate - 0.55 * deep)} L${at(0.62, plate - 0.38 * deep)} L${at(0.64, plate)} L${at(0.68, 0)}Z`,
  ];
  const cowl = [
    `M${at(0.12, 0.02)} L${at(0.1, 0.7 * above)}`,
    `Q${at(0.12, above)} ${at(0.42, above)}`,
    `Q${at(0.92, 0.96 * above)} ${at(0.98, 0.6 * above)}`,
    `L${at(0.86, 0.02)} Q${at(0.5, -0.1 * above)} ${at(0.12, 0.02)}Z`,
  ];
  const bracket = `M${at(-0.04, 0.06 * above)} L${at(0.3, 0.06 * above)} L${at(0.3, -0.5 * above)} L${at(0, -0.55 * above)} L${at(0, 0)} L${at(-0.04, 0)}Z`;
  const fin = `M${at(0.22, plate)} L${at(0.92, plate)}`;
  const propeller = `M${at(0.8, plate - 0.15 * deep)} L${at(0.8, plate - 0.95 * deep)}`;
  return [leg.join(' '), bracket, cowl.join(' '), fin, propeller].map(outline).join('\n');
}

/** The outboard from above. */
export function outboardFromAbove(shape: OutboardShape, across: Scale, sideways: Scale): string {
  const { aft, halfWidth } = outboardReach(shape);
  const at = (x: number, y: number): string =>
    `${fixed(across(-x * aft))} ${fixed(sideways(y * halfWidth))}`;
  const bracket = `M${at(-0.04, -0.5)} L${at(0.2, -0.5)} L${at(0.2, 0.5)} L${at(-0.04, 0.5)}Z`;
  const cowl = [
    `M${at(0.1, -0.7)} Q${at(0.2, -1)} ${at(0.5, -1)} Q${at(0.98, -0.9)} ${at(0.98, 0)}`,
    `Q${at(0.98, 0.9)} ${at(0.5, 1)} Q${at(0.2, 1)} ${at(0.1, 0.7)}Z`,
  ];
  return [bracket, cowl.join(' ')].map(outline).join('\n');
}

const outline = (d: string): string =>
  element('path', {
    d,
    fill: INK.paper,
    stroke: INK.line,
    'stroke-width': 0.25,
    'stroke-linejoin': 'round',
  });
