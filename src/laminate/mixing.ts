import { type Kilograms, kilograms } from '../units/index.ts';
import { atTemperature, type DataPoint } from './temperature.ts';
import type { NotComputed } from './types.ts';

/** What the resin's maker says of its catalyst. */
export interface CatalystRange {
  /** Least and most, share of the resin's mass. */
  readonly least: number;
  readonly most: number;
  /** g/mL: millilitres are not grams. */
  readonly density: number;
}

export interface MixingInput {
  readonly catalyst: CatalystRange;
  /** Share chosen for the day. */
  readonly share: number;
  readonly celsius: number;
  /** Minutes until a cup of it gels, at that share, by temperature. */
  readonly gelMinutes: readonly DataPoint[];
  /** Share of the gel time in which a batch must be used up. */
  readonly potShare: number;
  /** Resin that the team lays in a minute. */
  readonly kilogramsAMinute: number;
  /** Largest batch that the maker allows in one bucket, against its heat. */
  readonly largestBatch: Kilograms;
  readonly batches: readonly Kilograms[];
}

export interface MixingRow {
  readonly resin: Kilograms;
  readonly catalystGrams: number;
  readonly catalystMillilitres: number;
  readonly withinPotLife: boolean;
}

export interface MixingTable {
  readonly gelMinutes: number;
  /** Minutes in which a batch must be used up. */
  readonly potMinutes: number;
  readonly largestBatch: Kilograms;
  readonly rows: readonly MixingRow[];
}

/**
 * Catalyst by the batch at one temperature of the shop.
 *
 * @returns grams and millilitres; `notComputed` when the share lies outside the maker's range or the temperature
 * outside the maker's data: too little catalyst never cures, too much cures weak
 * @validity follow the maker's data sheet before this table
 * @source masses derived; the range and gel times are the maker's; pot life from gel time is common practice, no source
 */
export function mixingTable(input: MixingInput): MixingTable | NotComputed {
  const { catalyst, share } = input;
  if (!(share >= catalyst.least && share <= catalyst.most && catalyst.density > 0)) {
    return { notComputed: 'the catalyst’s share lies outside the maker’s range' };
  }
  const gelMinutes = atTemperature(input.gelMinutes, input.celsius);
  if (typeof gelMinutes !== 'number') return gelMinutes;
  const potMinutes = gelMinutes * input.potShare;
  const largestBatch = kilograms(Math.min(input.largestBatch, potMinutes * input.kilogramsAMinute));
  return {
    gelMinutes,
    potMinutes,
    largestBatch,
    rows: input.batches.map((resin) => {
      const catalystGrams = resin * share * 1000;
      return {
        resin,
        catalystGrams,
        catalystMillilitres: catalystGrams / catalyst.density,
        withinPotLife: resin <= largestBatch,
      };
    }),
  };
}

/** Printed beside every mixing table; common practice, no source, but for the styrene limits of the OSHA page. */
export const MIXING_CAUTIONS: readonly string[] = [
  'Follow the maker’s data sheet; it comes before this table.',
  'Never put accelerator and peroxide together: they explode. Stir the accelerator into the resin first, or buy it promoted.',
  'Peroxide blinds: goggles, gloves, water within reach. Keep it cool, clean and away from metal and rags.',
  'Mixed resin in a bucket heats up: pour it out thin, never leave it standing, carry a smoking bucket outside.',
  'Styrene: extract the air at the {mould}, wear a mask for organic {vapour}; limit 50 ppm over a day in many places, 20 in some.',
  'Weigh the catalyst. A millilitre is not a gram.',
];
