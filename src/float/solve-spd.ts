import type { Symmetric, Triple } from './energy.ts';

/** A pivot below this share of its scale counts as none: rounding would be a large part of it. */
const MIN_PIVOT = 1e-11;

/**
 * Solves A s = r for a symmetric, positive definite A; undefined when A is not.
 *
 * @param scale - what each diagonal entry is measured against
 * @source derived: Cholesky's decomposition in the form L D L'
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
  const heel = (r2 - ca * r0 - me * y1) / third;
  const trim = y1 / second - me * heel;
  return [r0 / a - ba * trim - ca * heel, trim, heel];
}
