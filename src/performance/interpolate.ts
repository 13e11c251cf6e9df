/**
 * The value between tabulated points, on straight lines.
 *
 * @param points - pairs of argument and value, arguments rising
 * @returns undefined outside the table
 * @source derived: linear interpolation
 */
export function interpolate(
  points: readonly (readonly [argument: number, value: number])[],
  at: number,
): number | undefined {
  for (const [index, [end, value]] of points.entries()) {
    if (at === end) return value;
    const before = points[index - 1];
    if (before && at > before[0] && at < end) {
      return before[1] + ((value - before[1]) * (at - before[0])) / (end - before[0]);
    }
  }
  return undefined;
}
