import type { Scale } from './hull-views.ts';
import { element, fixed, INK } from './svg.ts';
import type { OutboardShape } from './types.ts';

/** Mass of an outboard whose powerhead has the size sketched below, kg. */
const SKETCHED_MASS = 80;

/** How far the sketch reaches from the clamp, m. */
interface OutboardReach {
  readonly aft: number;
  readonly above: number;
  readonly below: number;
}

/** Places of a sketch, in m aft of the transom and above the clamp, as a path has them. */
type Pen = (aft: number, above: number) => string;

const sizeOf = ({ mass }: OutboardShape): number => Math.cbrt(Math.max(mass, 1) / SKETCHED_MASS);

/**
 * How much room the sketch of an outboard takes, m.
 *
 * @source common practice, no source: the powerhead grows with the cube root of the mass
 */
export function outboardReach(shape: OutboardShape): OutboardReach {
  const size = sizeOf(shape);
  return { aft: 0.57 * size, above: 0.42 * size, below: shape.shaft + 0.36 * size };
}

/** The outboard from the side: powerhead, clamp, leg, propeller. A sketch, not the maker's outline. */
export function outboardFromSide(shape: OutboardShape, across: Scale, up: Scale): string {
  const size = sizeOf(shape);
  const plate = -shape.shaft;
  const upper: Pen = (aft, above) =>
    `${fixed(across(-aft * size))} ${fixed(up(shape.clampHeight + above * size))}`;
  const lower: Pen = (aft, above) =>
    `${fixed(across(-aft * size))} ${fixed(up(shape.clampHeight + plate + above * size))}`;
  const leg = `M${upper(0.17, 0.02)} L${lower(0.21, 0)} L${lower(0.2, -0.14)} L${lower(0.4, -0.14)} L${lower(0.38, 0)} L${upper(0.37, 0.02)}Z`;
  return [leg, ...lowerUnit(lower), ...powerhead(upper)].map(outline).join('\n');
}

function powerhead(at: Pen): readonly string[] {
  const clamp = `M${at(-0.03, 0.03)} L${at(0.19, 0.03)} L${at(0.19, -0.22)} L${at(0, -0.25)} L${at(0, -0.02)} L${at(-0.03, -0.02)}Z`;
  const cowl = [
    `M${at(0.08, 0.02)} L${at(0.07, 0.29)} Q${at(0.08, 0.41)} ${at(0.24, 0.42)}`,
    `Q${at(0.53, 0.41)} ${at(0.56, 0.25)} L${at(0.5, 0.02)} Q${at(0.29, -0.05)} ${at(0.08, 0.02)}Z`,
  ];
  const seam = `M${at(0.08, 0.12)} L${at(0.52, 0.12)}`;
  return [clamp, cowl.join(' '), seam];
}

function lowerUnit(at: Pen): readonly string[] {
  const skeg = `M${at(0.2, -0.21)} L${at(0.29, -0.36)} L${at(0.35, -0.36)} L${at(0.37, -0.21)}Z`;
  const propeller = [
    `M${at(0.44, -0.18)} C${at(0.43, -0.06)} ${at(0.49, -0.06)} ${at(0.48, -0.18)}`,
    `C${at(0.49, -0.3)} ${at(0.43, -0.3)} ${at(0.44, -0.18)}Z`,
  ];
  const housing = [
    `M${at(0.07, -0.17)} Q${at(0.12, -0.12)} ${at(0.24, -0.12)} L${at(0.46, -0.14)}`,
    `L${at(0.46, -0.21)} L${at(0.24, -0.23)} Q${at(0.12, -0.23)} ${at(0.07, -0.17)}Z`,
  ];
  const plate = `M${at(0.12, 0)} L${at(0.52, 0)} L${at(0.52, 0.02)} L${at(0.16, 0.02)}Z`;
  return [skeg, propeller.join(' '), housing.join(' '), plate];
}

/** The outboard from above: powerhead and clamp. */
export function outboardFromAbove(shape: OutboardShape, across: Scale, sideways: Scale): string {
  const size = sizeOf(shape);
  const at: Pen = (aft, starboard) =>
    `${fixed(across(-aft * size))} ${fixed(sideways(starboard * size))}`;
  const clamp = `M${at(-0.03, -0.1)} L${at(0.12, -0.1)} L${at(0.12, 0.1)} L${at(-0.03, 0.1)}Z`;
  const cowl = [
    `M${at(0.08, -0.13)} Q${at(0.13, -0.19)} ${at(0.28, -0.19)} Q${at(0.56, -0.17)} ${at(0.56, 0)}`,
    `Q${at(0.56, 0.17)} ${at(0.28, 0.19)} Q${at(0.13, 0.19)} ${at(0.08, 0.13)}Z`,
  ];
  return [clamp, cowl.join(' ')].map(outline).join('\n');
}

const outline = (d: string): string =>
  element('path', {
    d,
    fill: INK.paper,
    stroke: INK.line,
    'stroke-width': 0.25,
    'stroke-linejoin': 'round',
  });
