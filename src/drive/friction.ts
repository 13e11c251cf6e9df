/**
 * Frictional resistance coefficient of the ITTC-57 model-ship correlation line,
 * Cf = 0.075 / (log10 Re - 2)².
 *
 * @param reynolds - Re = V L / ν, above 1e5
 * @returns Cf on the wetted area; NaN is never given: below Re 1e5 the value at 1e5 would be meaningless and is
 * not used by any caller, see `planeAt`
 * @source ITTC 1957, Proceedings of the 8th International Towing Tank Conference
 */
export function ittc57(reynolds: number): number {
  return 0.075 / (Math.log10(reynolds) - 2) ** 2;
}
