import { interpolate } from '../maths/index.ts';
import {
  cubicMetres,
  type CubicMetres,
  DEGREE,
  GRAVITY,
  type Metres,
  metresPerSecond,
  type MetresPerSecond,
  newtons,
  type Newtons,
  type Radians,
} from '../units/index.ts';
import { ROUGHNESS_ALLOWANCE, SEA_WATER } from './constants.ts';
import { ittc57 } from './drag.ts';
import type { Computed, Water } from './types.ts';

/** A hull at rest, as the regression sees it. */
export interface HullAtRest {
  /** Of the immersed part. */
  readonly length: Metres;
  readonly beam: Metres;
  readonly draught: Metres;
  readonly volume: CubicMetres;
  /** Half angle of the waterline at the bow. */
  readonly entrance: Radians;
  /** Immersed area of the transom over that of the greatest section. */
  readonly transomShare: number;
}

/** Displacement that the regression is for: 100,000 lb of sea water at 64 lb/ft3, m3. */
const STANDARD_VOLUME = cubicMetres(44.245);

/** A1, A2, A4, A5, A6, A7, A8, A9, A10, A15, A18, A19, A24 and A27 by FnV. */
const ROWS: readonly (readonly number[])[] = [
  [
    1, 0.06473, -0.4868, -0.0103, -0.0649, 0, 0.10628, 0.9731, -0.00272, 0.01089, 0, -1.40962,
    0.29136, 0.02971, -0.0015,
  ],
  [
    1.1, 0.10776, -0.88787, -0.01634, -0.13444, 0, 0.18186, 1.8308, -0.00389, 0.01467, 0, -2.46696,
    0.47305, 0.05877, -0.00356,
  ],
  [
    1.2, 0.09483, -0.6372, -0.0154, -0.1358, -0.16046, 0.16803, 1.55972, -0.00309, 0.03481, 0,
    -2.15556, 1.02992, 0.05198, -0.00303,
  ],
  [
    1.3, 0.03475, 0, -0.00978, -0.05097, -0.2188, 0.10434, 0.4351, -0.00198, 0.04113, 0, -0.92663,
    1.06392, 0.02209, -0.00105,
  ],
  [
    1.4, 0.03013, 0, -0.00664, -0.0554, -0.19359, 0.09612, 0.5182, -0.00215, 0.03901, 0, -0.95276,
    0.97757, 0.02413, -0.0014,
  ],
  [
    1.5, 0.03163, 0, 0, -0.10543, -0.2054, 0.06007, 0.5823, -0.00372, 0.04794, 0.08317, -0.70895,
    1.19737, 0, 0,
  ],
  [
    1.6, 0.03194, 0, 0, -0.08599, -0.19442, 0.06191, 0.52049, -0.0036, 0.04436, 0.07366, -0.72057,
    1.18119, 0, 0,
  ],
  [
    1.7, 0.04343, 0, 0, -0.13289, -0.18062, 0.05487, 0.78195, -0.00332, 0.04187, 0.12147, -0.95929,
    1.01562, 0, 0,
  ],
  [
    1.8, 0.05036, 0, 0, -0.15597, -0.17813, 0.05099, 0.92859, -0.00308, 0.04111, 0.14928, -1.12178,
    0.93144, 0, 0,
  ],
  [
    1.9, 0.05612, 0, 0, -0.18661, -0.18288, 0.04744, 1.18569, -0.00244, 0.04124, 0.1809, -1.38644,
    0.78414, 0, 0,
  ],
  [
    2, 0.05967, 0, 0, -0.19758, -0.20152, 0.04645, 1.30026, -0.00212, 0.04343, 0.19769, -1.55127,
    0.78282, 0, 0,
  ],
];

/** Volume Froude numbers that the regression has rows for. */
export const PRE_PLANING = ROWS.map(([froude = 0]) => froude);

/**
 * The speed of a volume Froude number, m/s.
 *
 * @source derived: FnV = V / sqrt(g V^(1/3)), the volume Froude number
 */
export const speedAtFroude = (froude: number, volume: CubicMetres): MetresPerSecond =>
  metresPerSecond(froude * Math.sqrt(GRAVITY * Math.cbrt(volume)));

/** A measure of the hulls of its data, from what to what. From memory. */
type Range = readonly [
  words: string,
  of: (hull: HullAtRest) => number,
  least: number,
  most: number,
];

/** What the regression is made of. */
const TERMS: readonly Range[] = [
  [
    'length over the cube root of the volume',
    (one) => one.length / Math.cbrt(one.volume),
    3.07,
    12.4,
  ],
  ['half angle of entrance', (one) => one.entrance / DEGREE, 3.7, 28.6],
];
/** What it is blind to, or but little moved by. */
const BESIDES: readonly Range[] = [
  ['length over beam', (one) => one.length / one.beam, 2.52, 18.26],
  ['beam over depth in the water', (one) => one.beam / one.draught, 1.7, 9.8],
];

/**
 * What of a hull is outside the hulls that the regression was made from: of its own terms, which leaves nothing to say, and
 * of the rest, which makes it a rough guess.
 *
 * @source Mercier and Savitsky 1973, ranges from memory
 */
export function outsidePrePlaning(hull: HullAtRest): {
  readonly terms: readonly string[];
  readonly besides: readonly string[];
} {
  const out = (ranges: readonly Range[]): readonly string[] =>
    ranges.flatMap(([words, of, least, most]) =>
      of(hull) >= least && of(hull) <= most ? [] : [words],
    );
  return { terms: out(TERMS), besides: out(BESIDES) };
}

/**
 * Drag of a bare transom-stern hull before it planes.
 *
 * R/W of a boat of 100,000 lb in sea water is a sum of products of X = V^(1/3)/L, Z = V/B3, U = sqrt(2 iE in degrees) and
 * W = At/Ax; to another size it goes by the difference of friction, on S/V^(2/3) = 2.262 sqrt(L/V^(1/3)) (1 + 0.046 B/T +
 * 0.00287 (B/T)2).
 *
 * @param froude - FnV, speed / sqrt(g V^(1/3))
 * @returns `notComputed` outside FnV of 1.0 to 2.0
 * @validity calm water, no appendages; between the rows of FnV straight; `outsidePrePlaning` names what of the hull is unlike
 * the hulls of the data
 * @source J. Mercier and D. Savitsky, Resistance of Transom-Stern Craft in the Pre-Planing Regime, Davidson Laboratory R-1667,
 * 1973; coefficients second hand
 */
export function prePlaningDrag(hull: HullAtRest, froude: number, water: Water): Computed<Newtons> {
  const { length, beam, draught, volume, entrance, transomShare: w } = hull;
  const side = Math.cbrt(volume);
  const [x, z, u] = [side / length, volume / beam ** 3, Math.sqrt((2 * entrance) / DEGREE)];
  const terms = [
    1,
    x,
    u,
    w,
    x * z,
    x * u,
    x * w,
    z * u,
    z * w,
    w ** 2,
    x * w ** 2,
    z * x ** 2,
    u * w ** 2,
    w * u ** 2,
  ];
  const shares = ROWS.map(
    ([row = 0, ...factors]) =>
      [row, factors.reduce((sum, factor, index) => sum + factor * (terms[index] ?? 0), 0)] as const,
  );
  const share = interpolate(shares, froude);
  if (share === undefined) return { notComputed: 'the speed is outside FnV 1.0 to 2.0' };
  const wetted =
    2.262 *
    Math.sqrt(length / side) *
    (1 + (0.046 * beam) / draught + 0.00287 * (beam / draught) ** 2);
  const frictionOf = (size: CubicMetres, viscosity: number): number =>
    ittc57((speedAtFroude(froude, size) * length * Math.cbrt(size / volume)) / viscosity);
  const standard = frictionOf(STANDARD_VOLUME, SEA_WATER.viscosity);
  const friction = frictionOf(volume, water.viscosity) + ROUGHNESS_ALLOWANCE - standard;
  const weight = volume * water.density * GRAVITY;
  return newtons(weight * (share + (friction * wetted * froude ** 2) / 2));
}
