import { areaUnder } from '../../maths/index.ts';
import {
  type Computed,
  type HoldingForce,
  holdingForce,
  type HoldingTime,
  holdingTime,
  windageFrom,
} from '../../performance/index.ts';
import { findEquilibrium, type FloatingBody, hydrostatics } from '../../float/index.ts';
import type { Loading } from '../../mass/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import {
  decimalToNumber,
  metres,
  type Newtons,
  newtons,
  type NotComputed,
  squareMetres,
} from '../../units/index.ts';
import type { ElectricsFigures } from '../electrics/electrics.ts';
import { whyLost } from '../float/outcome.ts';
import type { FloatFigures } from '../float/types.ts';
import { inWorseWater, type NamedWater } from '../water.ts';

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
  loaded: Loading,
  float: FloatFigures,
  electrics: ElectricsFigures | NotComputed,
): BowMotorFigures | undefined {
  const item = build.items.find(({ performance }) => performance?.bowMotor);
  const motor = item?.performance?.bowMotor;
  if (!item || !motor) return undefined;
  const thrust = newtons(motor.thrust);
  const body = float.afloat?.body;
  const needed: BowMotorFigures['needed'] = body
    ? inWorseWater(
        build,
        (water) => neededFor(build, loaded, body, water),
        (force) => ('notComputed' in force ? Infinity : force.needed),
      )
    : { notComputed: 'the lines make no hull' };
  const charge = chargeAt(build, electrics, motor.voltage);
  const time = holdingFor(needed, { thrust, current: item.current }, charge);
  return { name: item.name, place: item.place, thrust, needed, time };
}

function holdingFor(
  needed: BowMotorFigures['needed'],
  motor: Parameters<typeof holdingTime>[1],
  charge: number | NotComputed,
): BowMotorFigures['time'] {
  if ('notComputed' in needed) return needed;
  return typeof charge === 'number' ? holdingTime(needed.needed, motor, charge) : charge;
}

/**
 * Usable charge of the batteries that feed a voltage, A·h: of a higher one those of its own row in series, of the boat's
 * own those that are in no such row.
 */
function chargeAt(
  { items, yard }: Build,
  electrics: ElectricsFigures | NotComputed,
  volts: number,
): number | NotComputed {
  const rows = 'notComputed' in electrics ? [] : electrics.seriesBanks;
  const inRow = (item: BuildItem, wanted?: number): number =>
    rows.reduce((sum, { volts: own, bank }) => {
      const isHere = !('notComputed' in bank) && bank.items.includes(item);
      return isHere && (wanted === undefined || own === wanted) ? sum + bank.batteries : sum;
    }, 0);
  const isBoats = volts === yard.wiring.volts;
  const charge = items.reduce((sum, item) => {
    const battery = item.performance?.holdingBattery;
    if (!battery) return sum;
    const count = isBoats ? item.quantity - inRow(item) : inRow(item, volts);
    const energy = decimalToNumber(battery.energy) * decimalToNumber(battery.usable);
    return sum + (count * energy) / volts;
  }, 0);
  return isBoats || charge > 0
    ? charge
    : { notComputed: 'no batteries in series make its voltage' };
}

function neededFor(
  { hull, yard }: Build,
  { mass, centre, people }: Loading,
  floats: FloatingBody,
  water: NamedWater,
): Computed<HoldingForce> {
  const body = { ...floats, water: water.density };
  // A crowd is taken amidships: what matters here is how deep it lies.
  const level = { mass, centre: { ...centre, y: metres(0) } };
  const lies = findEquilibrium(body, level);
  if (lies.outcome !== 'floats') return whyLost(lies);
  const afloat = hydrostatics(body, lies.plane);
  if (!afloat) return { notComputed: 'the boat is not in the water' };
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
    water,
    wind: yard.drive.holding.wind,
    current: yard.drive.holding.current,
  });
}

/** Area of the aftmost station below a level, both sides, m². */
function transomUnder(lines: Build['hull']['lines'], level: number): number {
  const points = lines[0]?.points ?? [];
  const byHeight = points.map(([half, height]) => [height, half] as const);
  return 2 * areaUnder(byHeight, Number.NEGATIVE_INFINITY, level);
}
