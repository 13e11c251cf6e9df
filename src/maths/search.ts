/** Enough for any function that is smooth near its root: each step at worst halves the interval every other time. */
const MAX_STEPS = 100;

/** Where a function passes zero, or why that was not found. */
export type Root =
  | { readonly outcome: 'found'; readonly at: number }
  /** Its values at the two ends do not differ in sign. */
  | { readonly outcome: 'no root' }
  /** It must pass zero between them, but has no value somewhere on the way, or the steps ran out. */
  | { readonly outcome: 'not converged' };

/**
 * Where a continuous function passes zero between two arguments at which its signs differ.
 *
 * @param value - undefined or NaN where the function has no value
 * @param from - one end, and the value there; @param to - the other, in either order
 * @param within - the root is found when the interval, or twice the last step, is no longer than this
 * @param close - or when the value is this near to zero
 * @source false position with halving of the end that stays (the Illinois rule): M. Dowell and P. Jarratt, BIT 11
 * (1971)
 */
export function findRoot(
  value: (at: number) => number | undefined,
  from: readonly [at: number, value: number],
  to: readonly [at: number, value: number],
  { within, close = 0 }: { readonly within: number; readonly close?: number },
): Root {
  let [far, farValue] = from;
  let [near, nearValue] = to;
  if (farValue === 0) return { outcome: 'found', at: far };
  if (nearValue === 0) return { outcome: 'found', at: near };
  if (!(farValue < 0 ? nearValue > 0 : farValue > 0 && nearValue < 0))
    return { outcome: 'no root' };
  for (let count = 0; count < MAX_STEPS; count++) {
    const next = near - (nearValue * (near - far)) / (nearValue - farValue);
    const found = value(next);
    if (found === undefined || Number.isNaN(found)) return { outcome: 'not converged' };
    if (Math.sign(found) === Math.sign(nearValue)) farValue /= 2;
    else [far, farValue] = [near, nearValue];
    const step = Math.abs(next - near);
    [near, nearValue] = [next, found];
    const isFound = Math.abs(found) <= close || Math.abs(near - far) <= within || 2 * step < within;
    if (isFound) return { outcome: 'found', at: near };
  }
  return { outcome: 'not converged' };
}

/**
 * Where a function is greatest between two arguments, to within `tolerance`, when it has one summit there.
 *
 * @source golden section search
 */
export function findSummit(
  value: (at: number) => number,
  from: number,
  to: number,
  tolerance: number,
): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let [left, right] = [high - golden * (high - low), low + golden * (high - low)];
  let [leftValue, rightValue] = [value(left), value(right)];
  while (high - low > tolerance) {
    if (leftValue > rightValue) {
      [high, right, rightValue] = [right, left, leftValue];
      left = high - golden * (high - low);
      leftValue = value(left);
    } else {
      [low, left, leftValue] = [left, right, rightValue];
      right = low + golden * (high - low);
      rightValue = value(right);
    }
  }
  return (low + high) / 2;
}
