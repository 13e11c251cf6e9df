import { type Amperes, amperes, type Metres } from '../units/index.ts';
import type { NotComputed } from './types.ts';

const GRAVITY = 9.80665;
const SEA_WATER = 1025;

/**
 * Flow that changes a live-well's water so often in an hour.
 *
 * @param litres - what the well holds
 * @param changesAnHour - 6 to 10 keeps bait and catch alive
 * @returns L/h
 * @source derived; the number of changes is common practice, no source
 */
export function liveWellFlow(litres: number, changesAnHour: number): number {
  return litres * changesAnHour;
}

/**
 * Current of a pump that lifts a flow against a head: I = rho g Q (h + p/rho g) / (eta U).
 *
 * @param litresAnHour - Q, flow delivered
 * @param head - h, height lifted with the hose's loss as height
 * @param kilopascals - p, pressure wanted at the outlet; 0 for a bilge pump
 * @param efficiency - eta, of pump and motor together, above 0; small pumps 0.2 to 0.4
 * @returns I, A; `notComputed` when efficiency or voltage is not above 0
 * @source derived: hydraulic power over efficiency
 */
export function pumpCurrent(pump: {
  readonly litresAnHour: number;
  readonly head: Metres;
  readonly kilopascals: number;
  readonly efficiency: number;
  readonly nominalVolts: number;
}): Amperes | NotComputed {
  if (!(pump.efficiency > 0 && pump.nominalVolts > 0)) {
    return { notComputed: 'efficiency and voltage must be above 0' };
  }
  const flow = pump.litresAnHour / 3_600_000;
  const pressure = SEA_WATER * GRAVITY * pump.head + pump.kilopascals * 1000;
  return amperes((flow * pressure) / (pump.efficiency * pump.nominalVolts));
}

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
