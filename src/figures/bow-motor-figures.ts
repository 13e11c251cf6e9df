import {
  type Computed,
  FRESH_WATER,
  type HoldingForce,
  holdingForce,
  type HoldingTime,
  holdingTime,
  SEA_WATER,
  windageFrom,
} from '../drive/index.ts';
import { findEquilibrium, hydrostatics } from '../float/index.ts';
import type { Build, BuildItem } from '../resolve/index.ts';
import { decimalToNumber, metres, type Newtons, newtons, squareMetres } from '../units/index.ts';
import { floatingHull } from './float-input.ts';
import type { Loading } from './loadings.ts';

/** What the wind meets of one person, m²; common practice, no source. */
const PERSON = { front: 0.35, side: 0.45 };
/** The wind on outboard, canopy and rails, as a share on top; common practice, no source. */
const ABOVE = 0.2;

/** A bow motor against the wind and current that the yard names. */
export interface BowMotorFigures {
  readonly name: string;
  readonly thrust: Newtons;
  /** Where the order names it. */
  readonly place: BuildItem['place'];
  readonly needed: Computed<HoldingForce>;
  readonly time: Computed<HoldingTime>;
}

/** The motor that is ordered; undefined when there is none. */
export function bowMotorFigures(
  build: Build,
  loaded: Loading | undefined,
): BowMotorFigures | undefined {
  const item = build.items.find(({ performance }) => performance?.bowMotor);
  const motor = item?.performance?.bowMotor;
  if (!item || !motor) return undefined;
  const thrust = newtons(motor.thrust);
  const needed = loaded ? neededFor(build, loaded) : { notComputed: 'she is not weighed loaded' };
  const time =
    'notComputed' in needed
      ? needed
      : holdingTime(
          needed.needed,
          { thrust, current: item.current },
          chargeAt(build.items, motor.voltage),
        );
  return { name: item.name, place: item.place, thrust, needed, time };
}

/** Usable charge of the batteries at the motor's voltage, A·h. */
function chargeAt(items: readonly BuildItem[], voltage: number): number {
  return items.reduce((sum, { performance, quantity }) => {
    const battery = performance?.holdingBattery;
    if (!battery) return sum;
    const energy = decimalToNumber(battery.energy) * decimalToNumber(battery.usable);
    return sum + (quantity * energy) / voltage;
  }, 0);
}

function neededFor(build: Build, { mass, centre, people }: Loading): Computed<HoldingForce> {
  const { hull, yard } = build;
  const { body } = floatingHull(build);
  if (!body) return { notComputed: 'the lines make no hull' };
  // A crowd is taken amidships: what matters here is how deep she lies.
  const level = { mass, centre: { ...centre, y: metres(0) } };
  const lies = findEquilibrium(body, level);
  if (lies.outcome !== 'floats') return { notComputed: 'she does not float upright' };
  const afloat = hydrostatics(body, lies.plane);
  if (!afloat) return { notComputed: 'she is not in the water' };
  const bare = windageFrom(hull.lines, lies.plane.level);
  return holdingForce({
    windage: {
      front: squareMetres(bare.front * (1 + ABOVE) + PERSON.front * people),
      side: squareMetres(bare.side * (1 + ABOVE) + PERSON.side * people),
    },
    immersed: {
      surface: afloat.wettedSurface,
      transom: squareMetres(transomUnder(hull.lines, lies.plane.level)),
    },
    length: afloat.immersedLength,
    water: yard.drive.water === 'sea' ? SEA_WATER : FRESH_WATER,
    wind: yard.drive.holding.wind,
    current: yard.drive.holding.current,
  });
}

/** Area of the aftmost station below a level, both sides, m². */
function transomUnder(lines: Build['hull']['lines'], level: number): number {
  const points = lines[0]?.points ?? [];
  return points.reduce((sum, [half, height], index) => {
    const before = points[index - 1];
    if (!before || before[1] >= level || height <= before[1]) return sum;
    const top = Math.min(height, level);
    const share = (top - before[1]) / (height - before[1]);
    const upper = before[0] + share * (half - before[0]);
    return sum + (before[0] + upper) * (top - before[1]);
  }, 0);
}
