import { GRAVITY, type Kilograms, type Metres, seconds, type Seconds } from '../units/index.ts';

export interface RollInput {
  readonly mass: Kilograms;
  /** GM, after free surfaces. */
  readonly metacentricHeight: Metres;
  /** Radius of gyration about the lengthwise axis; about 0.4 of the beam is common practice, no source. */
  readonly gyration: Metres;
  /** Inertia that entrained water adds, kg.m2. */
  readonly waterInertia?: number;
}

/**
 * Period of a full roll at rest, s; undefined when it has no stiffness (GM not above 0).
 *
 * @validity small rolls, no damping, no water carried along outside. An estimate; verify by timing its roll
 * @source derived: T = 2 pi sqrt(I / (M g GM)), I = M k2 and the inertia of entrained water
 */
export function rollPeriod({
  mass,
  metacentricHeight,
  gyration,
  waterInertia = 0,
}: RollInput): Seconds | undefined {
  const stiffness = mass * GRAVITY * metacentricHeight;
  if (!(stiffness > 0)) return undefined;
  return seconds(2 * Math.PI * Math.sqrt((mass * gyration ** 2 + waterInertia) / stiffness));
}
