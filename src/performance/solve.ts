/** Enough for any smooth function here; each step at worst halves the interval every other time. */
const MAX_STEPS = 100;

/**
 * The argument at which a function passes through zero, between two at which its signs differ.
 *
 * @param at - continuous between low and high
 * @param atLow - the function's value at `low`
 * @param atHigh - its value at `high`, of the other sign
 * @param close - a value this near to zero is zero
 * @returns the root, to about 1e-13 of the interval, or where the value is close enough
 * @source the regula falsi with the Illinois correction: M. Dowell and P. Jarratt, BIT 11 (1971)
 */
export function findRoot(
  at: (value: number) => number,
  [low, atLow]: readonly [number, number],
  [high, atHigh]: readonly [number, number],
  close = 1e-14,
): number {
  let [a, fa, b, fb] = [low, atLow, high, atHigh];
  const narrow = Math.abs(high - low) * 1e-13;
  for (let step = 0; step < MAX_STEPS && fb !== 0 && Math.abs(b - a) > narrow; step += 1) {
    const c = b - (fb * (b - a)) / (fb - fa);
    const fc = at(c);
    if (fc * fb < 0) [a, fa] = [b, fb];
    else fa /= 2;
    [b, fb] = [c, fc];
    if (Math.abs(fc) < close) break;
  }
  return b;
}

/**
 * The argument at which a function that rises without end reaches a value.
 *
 * @param at - rises from `low` on; at `value` or above there, the answer is `low`
 * @source derived: doubling until passed, then `findRoot`
 */
export function solveRising(at: (arg: number) => number, value: number, low: number): number {
  const off = (arg: number): number => at(arg) - value;
  let [from, below] = [low, off(low)];
  if (below >= 0) return low;
  let to = Math.max(1, 2 * low);
  let above = off(to);
  for (let step = 0; step < 60 && above < 0; step += 1) {
    [from, below] = [to, above];
    to *= 2;
    above = off(to);
  }
  return findRoot(off, [from, below], [to, above]);
}
