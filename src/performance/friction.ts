/**
 * Frictional resistance coefficient of the ITTC-57 model-ship correlation line,
 * Cf = 0.075 / (log10 Re - 2)².
 *
 * @param reynolds - Re = V L / ν
 * @returns Cf on the wetted area
 * @validity Re above 1e5; the line has a pole at Re 100
 * @source ITTC 1957, Proceedings of the 8th International Towing Tank Conference
 */
export function ittc57(reynolds: number): number {
  return 0.075 / (Math.log10(reynolds) - 2) ** 2;
}
