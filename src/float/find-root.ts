const MAX_STEPS = 60;

/**
 * Where a continuous function passes zero between two places of which it has values of opposite sign, to
 * within `tolerance`; undefined when the function is undefined on the way.
 *
 * @source derived: false position with halving of the end that stays (the Illinois rule)
 */
export function findRoot(
  value: (at: number) => number | undefined,
  from: readonly [at: number, value: number],
  to: readonly [at: number, value: number],
  tolerance: number,
): number | undefined {
  let [low, lowValue] = from;
  let [high, highValue] = to;
  for (let count = 0; count < MAX_STEPS && Math.abs(high - low) > tolerance; count++) {
    const middle = (low * highValue - high * lowValue) / (highValue - lowValue);
    const found = value(middle);
    if (found === undefined) return undefined;
    if (found === 0) return middle;
    if (Math.sign(found) === Math.sign(highValue)) {
      lowValue /= 2;
    } else {
      [low, lowValue] = [high, highValue];
    }
    if (Math.abs(middle - high) < tolerance / 2) return middle;
    [high, highValue] = [middle, found];
  }
  return high;
}

/**
 * Where a function is greatest between two places, to within `tolerance`, when it has one summit there.
 *
 * @source derived: golden section search
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
