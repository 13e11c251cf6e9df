/**
 * The argument at which a function passes through zero between two that it differs in sign at.
 *
 * @param at - continuous between low and high
 * @returns the root within (high - low) / 2^80
 * @source derived: halving the interval
 */
export function bisect(at: (value: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  const rises = at(high) > at(low);
  for (let step = 0; step < 80; step += 1) {
    const middle = (from + to) / 2;
    if (at(middle) > 0 === rises) to = middle;
    else from = middle;
  }
  return (from + to) / 2;
}

/**
 * The argument at which a function that rises without end reaches a value.
 *
 * @param at - rises from `low` on; below `value` there, or the answer is `low`
 * @source derived: doubling until passed, then halving
 */
export function solveRising(at: (arg: number) => number, value: number, low: number): number {
  if (at(low) >= value) return low;
  let high = Math.max(1, 2 * low);
  for (let step = 0; step < 60 && at(high) < value; step += 1) high *= 2;
  return bisect((arg) => at(arg) - value, low, high);
}
