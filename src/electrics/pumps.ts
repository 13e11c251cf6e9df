import type { Metres } from '../units/index.ts';

/**
 * What a bilge pump delivers at a height, on the straight line from its open flow to its highest lift.
 *
 * @param openLitresAnHour - flow at no head, as the label says
 * @param highest - head at which the flow stops
 * @returns L/h; 0 from the highest head up
 * @validity a first estimate; the maker's curve goes before it
 * @source common practice, no source
 */
export function bilgeFlow(openLitresAnHour: number, highest: Metres, head: Metres): number {
  return head >= highest ? 0 : openLitresAnHour * (1 - head / highest);
}
