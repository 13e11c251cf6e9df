/** Three numbers that belong together. */
export type Triple = readonly [number, number, number];

/** Upper half of a symmetric 3 by 3 matrix, row by row. */
export type Symmetric = readonly [number, number, number, number, number, number];

/** A pivot below this share of its scale counts as none: rounding would be a large part of it. */
const MIN_PIVOT = 1e-11;

/**
 * Solves A s = r for a symmetric, positive definite A; undefined when A is not.
 *
 * @param scale - what each diagonal entry is measured against
 * @source Cholesky's decomposition in the form L D L'
 */
export function solveSpd(matrix: Symmetric, right: Triple, scale: Triple): Triple | undefined {
  const [a, b, c, d, e, f] = matrix;
  if (!(a > MIN_PIVOT * scale[0])) return undefined;
  const [ba, ca] = [b / a, c / a];
  const second = d - ba * b;
  if (!(second > MIN_PIVOT * scale[1])) return undefined;
  const mixed = e - ba * c;
  const me = mixed / second;
  const third = f - ca * c - me * mixed;
  if (!(third > MIN_PIVOT * scale[2])) return undefined;
  const [r0, r1, r2] = right;
  const y1 = r1 - ba * r0;
  const s2 = (r2 - ca * r0 - me * y1) / third;
  const s1 = y1 / second - me * s2;
  return [r0 / a - ba * s1 - ca * s2, s1, s2];
}
