/** A value against a limit: what is left is below zero when the limit is passed. */
export interface Margin {
  readonly name: string;
  readonly value: number;
  readonly limit: number;
  readonly left: number;
  readonly unit: string;
  readonly holds: boolean;
}

/** A value held against a greatest allowed one; it holds at the limit itself. */
export function atMost(name: string, value: number, limit: number, unit: string): Margin {
  return { name, value, limit, left: limit - value, unit, holds: value <= limit };
}

/** A value held against a least allowed one; it holds at the limit itself. */
export function atLeast(name: string, value: number, limit: number, unit: string): Margin {
  return { name, value, limit, left: value - limit, unit, holds: value >= limit };
}
