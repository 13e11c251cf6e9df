import { wholeDown } from '../maths/index.ts';
import { type CubicMetres, type Kilograms, kilograms } from '../units/index.ts';

/** Mass of one person, and of a child on half a place (ISO 14946:2021; ISO 12217-3:2013, second hand). */
export const PERSON = kilograms(75);
export const CHILD = kilograms(37.5);
/** Personal effects a person, the least that the standard's guidance names for boats one sleeps in. */
export const EFFECTS = kilograms(20);
/** Share that tanks are counted full to. */
const TANK_FULL = 0.95;

export interface IsoLoadInput {
  readonly people: number;
  readonly children?: number;
  /** Stores, personal effects and loose gear together. */
  readonly gear: Kilograms;
  readonly fixedFuel: CubicMetres;
  readonly portableFuel: CubicMetres;
  /** Of the fuel, kg/m³. */
  readonly fuelDensity: number;
  readonly ballastWater: Kilograms;
}

export interface IsoLoad {
  /** mML: all that it is loaded with, engine and fittings apart. */
  readonly greatest: Kilograms;
  /** The load on a builder's plate: without what is in fixed tanks; the outboard's mass stands apart on it. */
  readonly onPlate: Kilograms;
}

/**
 * Greatest load in the manner of ISO 14946, and the load on the plate in the manner of ISO 14945.
 *
 * People at 75 kg (a child on half a place 37.5 kg), gear, tanks at 95 %, ballast water whole.
 *
 * @validity an account of what is carried, not a proof that it may: stability, freeboard and flotation decide that
 * @source ISO 14946:2021 clauses 4 to 6, as its public preview gives them; ISO 14945:2021, second hand
 */
export function isoLoad(input: IsoLoadInput): IsoLoad {
  const people = input.people * PERSON + (input.children ?? 0) * CHILD;
  const fuel = (volume: number): number => volume * TANK_FULL * input.fuelDensity;
  const fixed = fuel(input.fixedFuel);
  const onPlate = people + input.gear + fuel(input.portableFuel) + input.ballastWater;
  return { greatest: kilograms(onPlate + fixed), onPlate: kilograms(onPlate) };
}

/**
 * People that a load takes, with 20 kg of effects each.
 *
 * @param load - for people and their effects
 * @returns a whole number, 0 or more
 * @source ISO 14946:2021 clauses 4 to 6 (75 kg a person), with its guidance of 20 kg of effects
 */
export function isoPeople(load: Kilograms): number {
  return Math.max(0, wholeDown(load / (PERSON + EFFECTS)));
}
