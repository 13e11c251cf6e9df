import { atMost, type Kilograms } from '../units/index.ts';
import type { BallLoad, Computed, Margin } from './types.ts';

/** UN Regulation 55 defines the D-value with this g, m/s², not with the standard one. */
const REGULATION_55_GRAVITY = 9.81;

/** What a towing vehicle's maker allows. Left out: not known, not checked. */
export interface VehicleLimits {
  readonly braked: Kilograms;
  readonly unbraked: Kilograms;
  readonly onBall: Kilograms;
  /** Vehicle and trailer together, and what the vehicle itself weighs as it tows. */
  readonly together?: { readonly limit: Kilograms; readonly vehicle: Kilograms };
}

/**
 * A trailer against the limits of the vehicle that tows it.
 *
 * @param load - of the trailer as it is towed
 * @param isBraked - whether the trailer has brakes
 * @returns margins, kg: mass towed, ball load, and both together where the limit is known
 * @source derived: the maker's limits
 */
export function vehicleMargins(
  load: BallLoad,
  isBraked: boolean,
  limits: VehicleLimits,
): readonly Margin[] {
  const towed = isBraked
    ? atMost('mass towed with brakes', load.total, limits.braked, 'kg')
    : atMost('mass towed without brakes', load.total, limits.unbraked, 'kg');
  const margins = [towed, atMost('load on the ball', load.onBall, limits.onBall, 'kg')];
  if (!limits.together) return margins;
  const { limit, vehicle } = limits.together;
  // The ball load is carried by the vehicle, but counted once.
  return [...margins, atMost('vehicle and trailer together', vehicle + load.total, limit, 'kg')];
}

/**
 * D-value that the couplings of vehicle and trailer must stand, D = g T R / (T + R).
 *
 * @param vehicle - T, greatest mass of the towing vehicle
 * @param trailer - R, greatest mass of the trailer
 * @returns kN
 * @validity drawbar couplings of vehicles to 3.5 t and their trailers
 * @source UN Regulation 55, D-value
 */
export function couplingForce(vehicle: Kilograms, trailer: Kilograms): Computed<number> {
  if (!(vehicle > 0 && trailer > 0)) return { notComputed: 'both masses must be above 0' };
  return (REGULATION_55_GRAVITY * vehicle * trailer) / (vehicle + trailer) / 1000;
}

export interface RoofLoadInput {
  /** Boat as it is lifted up: no engine, no fuel. */
  readonly boat: Kilograms;
  /** Bars, cradle and straps: they count too. */
  readonly rack: Kilograms;
  /** What the vehicle's maker allows on the roof. */
  readonly roof: Kilograms;
  /** What the bars' maker allows on them. */
  readonly bars?: Kilograms;
}

/**
 * A light boat on a vehicle's roof.
 *
 * @returns margins, kg: boat and rack on the roof, and the boat on the bars where their limit is known
 * @validity on the road; off it makers allow less, often two thirds (common practice, no source)
 * @source derived: the makers' limits
 */
export function roofMargins({ boat, rack, roof, bars }: RoofLoadInput): readonly Margin[] {
  const onRoof = atMost('boat and rack on the roof', boat + rack, roof, 'kg');
  return bars === undefined ? [onRoof] : [onRoof, atMost('boat on the bars', boat, bars, 'kg')];
}
