import { type Amperes, amperes, INCH, type Metres, metres } from '../units/index.ts';
import { areaOf, copperForDrop, voltsLost } from './conductor.ts';
import type { NotComputed } from './types.ts';
import { METRIC_AREAS, PROTECTION_RATINGS, WIRE_SIZES } from './wire-table.ts';

/** Cable between battery and outboard. */
export interface StarterCable {
  readonly awg: string;
  readonly areaMm2: number;
  readonly metricMm2: number;
  readonly dropVolts: number;
}

/**
 * Cable that loses no more than a share of the voltage while the engine cranks.
 *
 * @param cranking - current while cranking, A
 * @param run - battery to engine, one way
 * @param share - of the nominal voltage that may be lost; 0.1 unless the engine's maker says otherwise
 * @returns the thinnest size; `notComputed` beyond 4/0
 * @validity cranking for seconds only: sized by voltage, not by heat
 * @source ABYC E-11 formula (from memory), drop class common practice, no source; the engine maker's table goes first
 */
export function starterCable(cable: {
  readonly cranking: Amperes;
  readonly run: Metres;
  readonly nominalVolts: number;
  readonly share: number;
}): StarterCable | NotComputed {
  const roundTrip = metres(2 * cable.run);
  const needed = copperForDrop({
    current: cable.cranking,
    roundTrip,
    allowedVolts: cable.share * cable.nominalVolts,
  });
  const size = WIRE_SIZES.find(({ circularMils }) => circularMils >= needed);
  const metricMm2 = size && METRIC_AREAS.find((area) => area >= areaOf(size));
  if (!size || metricMm2 === undefined) {
    return { notComputed: 'no single cable up to 4/0 cranks over that run' };
  }
  return {
    awg: size.awg,
    areaMm2: areaOf(size),
    metricMm2,
    dropVolts: voltsLost(cable.cranking, roundTrip, size.circularMils),
  };
}

/**
 * The thinnest American size that holds so much copper.
 *
 * @param areaMm2 - as an engine's maker asks for
 * @returns "2", "1/0"; beyond the largest, that it is more
 * @source ASTM B258, as the table of sizes has it
 */
export const gaugeFor = (areaMm2: number): string =>
  WIRE_SIZES.find((size) => areaOf(size) >= areaMm2 - 1e-9)?.awg ?? 'more than 4/0';

/** The fuse at the battery and where it may sit. */
export interface MainFuse {
  readonly rating: Amperes;
  /** Longest unfused length between battery and fuse. */
  readonly within: Metres;
}

/**
 * The main fuse of the house circuits.
 *
 * @param load - largest current at once, A
 * @param feederAmpacity - what the feeder from the battery may carry, A
 * @param sheathed - true: the unfused length starts at the battery's terminal and lies in a sheath
 * @returns the smallest rating from the load up, at most the feeder's ampacity, and its farthest place
 * @source ABYC E-11 (from memory): within 7 in of the source, 72 in at a battery when sheathed
 */
export function mainFuse(
  load: Amperes,
  feederAmpacity: Amperes,
  sheathed: boolean,
): MainFuse | NotComputed {
  const rating = PROTECTION_RATINGS.find((one) => one >= load);
  if (rating === undefined || rating > feederAmpacity) {
    return {
      notComputed: 'no standard rating lies between the load and what the feeder may carry',
    };
  }
  return { rating: amperes(rating), within: metres((sheathed ? 72 : 7) * INCH) };
}
