import type { Condition, ConditionName } from '../../float/index.ts';
import type { Screened } from './types.ts';

/** A condition by its name; undefined when the order does not have it. */
export function conditionOf(
  { conditions }: Pick<Screened, 'conditions'>,
  name: ConditionName,
): Condition | undefined {
  return conditions.find((one) => one.name === name);
}
