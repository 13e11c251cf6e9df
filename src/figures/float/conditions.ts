import type { Condition, ConditionName } from '../../float/index.ts';
import type { Afloat } from './types.ts';

/** A condition by its name; undefined when the order does not have it. */
export function conditionOf(
  { conditions }: Pick<Afloat, 'conditions'>,
  name: ConditionName,
): Condition | undefined {
  return conditions.find((one) => one.name === name);
}
