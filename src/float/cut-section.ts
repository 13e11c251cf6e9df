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
  let area = 0;
  let areaAcross = 0;
  let areaAbove = 0;
  let width = 0;
  let widthAcross = 0;
  let widthAcrossAcross = 0;
  const last = row + ring - 1;
  let fromAcross = (across[last] ?? 0) * behind + (across[last + ring] ?? 0) * at;
  let fromAbove = (above[last] ?? 0) * behind + (above[last + ring] ?? 0) * at;
  for (let index = row; index <= last; index++) {
    const toAcross = (across[index] ?? 0) * behind + (across[index + ring] ?? 0) * at;
    const toAbove = (above[index] ?? 0) * behind + (above[index + ring] ?? 0) * at;
    if (fromAbove < 0 || toAbove < 0) {
      let startAcross = fromAcross;
      let startAbove = fromAbove;
      let endAcross = toAcross;
      let endAbove = toAbove;
      if (fromAbove < 0 !== toAbove < 0) {
        const cut = fromAcross + ((toAcross - fromAcross) * fromAbove) / (fromAbove - toAbove);
        const sign = fromAbove < 0 ? 1 : -1;
        width += sign * cut;
        widthAcross += (sign * cut * cut) / 2;
        widthAcrossAcross += (sign * cut * cut * cut) / 3;
        if (sign > 0) {
          endAcross = cut;
          endAbove = 0;
        } else {
          startAcross = cut;
          startAbove = 0;
        }
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
