import {
  atLeast,
  atMost,
  type Kilograms,
  type Metres,
  type Radians,
  radians,
  type Watts,
} from '../units/index.ts';
import type { Computed, Margin } from './types.ts';

/** Transom height that a shaft is made for, m: 15, 20, 25 and 30 in (common practice, no source). */
export const SHAFT_HEIGHTS = {
  short: 0.381,
  long: 0.508,
  'extra-long': 0.635,
  'ultra-long': 0.762,
} as const;
export type ShaftLength = keyof typeof SHAFT_HEIGHTS;

/** A shaft may be this much longer or shorter than the transom is high, m (common practice, no source). */
const SHAFT_PLAY = 0.04;

export interface EngineFitInput {
  readonly engine: {
    readonly power: Watts;
    readonly mass: Kilograms;
    readonly shaft: ShaftLength;
    readonly steering: 'remote' | 'tiller';
  };
  readonly hull: {
    readonly power: Watts;
    readonly engineMass: Kilograms;
    readonly transomHeight: Metres;
  };
  /** What the boat is fitted with to steer and to control it. */
  readonly fitted: { readonly wheel: boolean; readonly remoteControl: boolean };
}

export interface EngineFit {
  readonly margins: readonly Margin[];
  /** What does not go together, in words; empty when all does. */
  readonly faults: readonly string[];
}

/**
 * Whether an outboard suits a hull: power, mass, shaft, steering and control.
 *
 * @returns power and mass against the ratings, and the shaft against the transom, each with what is left
 * @validity the shaft's play is 40 mm either way: common practice, no source; the maker's drawing decides
 * @source the hull's ratings; `SHAFT_HEIGHTS`
 */
export function fitEngine({ engine, hull, fitted }: EngineFitInput): EngineFit {
  const off = Math.abs(SHAFT_HEIGHTS[engine.shaft] - hull.transomHeight);
  const isRemote = engine.steering === 'remote';
  const faults: readonly (readonly [boolean, string])[] = [
    [isRemote && !fitted.wheel, 'a remote engine needs a wheel and its steering gear'],
    [isRemote && !fitted.remoteControl, 'a remote engine needs a remote control'],
    [!isRemote && fitted.wheel, 'a wheel cannot steer an engine with a tiller'],
    [
      !isRemote && fitted.remoteControl,
      'a remote control does not go with an engine with a tiller',
    ],
  ];
  return {
    margins: [
      atMost('power', engine.power, hull.power, 'W'),
      atMost('mass on the transom', engine.mass, hull.engineMass, 'kg'),
      // A nanometre of slack for what inches leave behind.
      atMost('shaft against transom', off, SHAFT_PLAY + 1e-9, 'm'),
    ],
    faults: faults.filter(([wrong]) => wrong).map(([, words]) => words),
  };
}

/**
 * Trim by the stern that a mass on the transom brings, tan θ = m d / (Δ GML).
 *
 * @param mass - m, of the engine
 * @param lever - d, from the centre of flotation aft to the engine
 * @param displacement - Δ, of the boat with it
 * @param metacentricHeight - GML, longitudinal, with the engine in place
 * @returns θ
 * @validity small trim: a few degrees
 * @source derived: longitudinal equilibrium
 */
export function trimByEngine(
  mass: Kilograms,
  lever: Metres,
  displacement: Kilograms,
  metacentricHeight: Metres,
): Computed<Radians> {
  const slope = (mass * lever) / (displacement * metacentricHeight);
  if (!(displacement > 0 && metacentricHeight > 0 && Number.isFinite(slope))) {
    return { notComputed: 'displacement and longitudinal metacentric height must be above 0' };
  }
  return radians(Math.atan(slope));
}

/**
 * Whether a boat's stern stands as high with an engine as the transom's cut-out wants.
 *
 * @param freeboard - of the cut-out, with the engine on
 * @param least - 0.15 m is common practice on small boats, no source
 * @source common practice, no source
 */
export function sternFreeboard(freeboard: Metres, least: Metres): Margin {
  return atLeast('freeboard of the lowest opening aft', freeboard, least, 'm');
}
