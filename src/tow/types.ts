import type { Kilograms } from '../units/index.ts';

export interface TrailerLoadInput {
  readonly boat: Kilograms;
  readonly tare: Kilograms;
  /** Most that trailer and load may weigh together. */
  readonly rating: Kilograms;
}

export interface TrailerLoad {
  readonly total: Kilograms;
  /** What is left of the rating; below zero when it is overloaded. */
  readonly left: Kilograms;
}
