import { type Finding, finding } from '../findings/index.ts';
import type { Sourced, Stage, Yard } from '../schema/index.ts';

/** Findings for hours in a stage that has neither a rate nor a trade in the yard file: they would cost nothing. */
export function checkRates(
  entry: Sourced<unknown>,
  path: readonly (string | number)[],
  hours: readonly { readonly stage: Stage }[],
  { rates, stages }: Yard,
): readonly Finding[] {
  return hours.flatMap(({ stage }, index) =>
    rates[stage] !== undefined || stages[stage]?.trade !== undefined
      ? []
      : [
          finding('UNKNOWN_ID', entry.place([...path, index, 'stage']), {
            received: `hours in the stage "${stage}"`,
            expected: 'a stage that the yard file has a rate or a trade for',
            remedy: `Write what an hour of ${stage} costs under rates: in yard.yaml, or a trade: under stages:`,
          }),
        ],
  );
}
