import type { Margin } from './types.ts';

/**
 * A value held against a greatest allowed one.
 *
 * @returns `left` = limit - value; it holds at the limit itself
 * @source derived
 */
export function atMost(name: string, value: number, limit: number, unit: string): Margin {
  return { name, value, limit, left: limit - value, unit, holds: value <= limit };
}

/**
 * A value held against a least allowed one.
 *
 * @returns `left` = value - limit; it holds at the limit itself
 * @source derived
 */
export function atLeast(name: string, value: number, limit: number, unit: string): Margin {
  return { name, value, limit, left: value - limit, unit, holds: value >= limit };
}
