/** Integrals over the immersed part of one section, and over its cut by the surface. */
export interface SectionSums {
  area: number;
  /** First moments of the area: across the water, and above it (below zero, since it is immersed). */
  across: number;
  above: number;
  width: number;
  widthAcross: number;
  widthAcrossAcross: number;
}

/**
 * Clips the section at a share `at` of the way between two neighbouring stations, and writes its integrals
 * into `sums`.
 *
 * Triangles are fanned out from a point on the surface, so that the cut itself adds nothing to area and
 * moments, and the clipped polygon need never be put together, whatever number of pieces it has.
 *
 * @param across - places of the points across the water, station after station, m
 * @param above - heights of the points above the water, m
 * @param row - index of the first point of the station behind
 * @param ring - number of points of a section, anticlockwise seen from astern
 * @source derived: Green's theorem on a polygon
 */
export function cutSection(
  across: Float64Array,
  above: Float64Array,
  row: number,
  ring: number,
  at: number,
  sums: SectionSums,
): void {
  const behind = 1 - at;
  const place = (index: number): number =>
    (across[index] ?? 0) * behind + (across[index + ring] ?? 0) * at;
  const height = (index: number): number =>
    (above[index] ?? 0) * behind + (above[index + ring] ?? 0) * at;
  let [area, areaAcross, areaAbove, width, widthAcross, widthAcrossAcross] = [0, 0, 0, 0, 0, 0];
  let fromAcross = place(row + ring - 1);
  let fromAbove = height(row + ring - 1);
  for (let index = row; index < row + ring; index++) {
    const toAcross = place(index);
    const toAbove = height(index);
    const leaves = fromAbove < 0;
    const arrives = toAbove < 0;
    if (leaves || arrives) {
      let [startAcross, startAbove, endAcross, endAbove] = [
        fromAcross,
        fromAbove,
        toAcross,
        toAbove,
      ];
      if (leaves !== arrives) {
        const cut = fromAcross + ((toAcross - fromAcross) * fromAbove) / (fromAbove - toAbove);
        const sign = leaves ? 1 : -1;
        width += sign * cut;
        widthAcross += (sign * cut * cut) / 2;
        widthAcrossAcross += (sign * cut * cut * cut) / 3;
        if (leaves) [endAcross, endAbove] = [cut, 0];
        else [startAcross, startAbove] = [cut, 0];
      }
      const twice = startAcross * endAbove - endAcross * startAbove;
      area += twice / 2;
      areaAcross += (twice * (startAcross + endAcross)) / 6;
      areaAbove += (twice * (startAbove + endAbove)) / 6;
    }
    fromAcross = toAcross;
    fromAbove = toAbove;
  }
  sums.area = area;
  sums.across = areaAcross;
  sums.above = areaAbove;
  sums.width = width;
  sums.widthAcross = widthAcross;
  sums.widthAcrossAcross = widthAcrossAcross;
}
