import type { Aboard, Fluid, MassInput, MassItem, PlacedMass } from '../../mass/index.ts';
import { type Build, placeInHull } from '../../resolve/index.ts';
import type { Position } from '../../schema/index.ts';
import {
  decimalToNumber,
  kilograms,
  kilogramsPerCubicMetre,
  type Point3,
} from '../../units/index.ts';
import { cockpitOf } from './cockpit.ts';
import type { FloatFigures } from '../float/types.ts';
import { watersOf } from '../water.ts';

/** Tanks wider than this share of the beam count half full too. ISO 12217-3:2013 6.5, second hand. */
const WIDE_TANK = 0.35;

/** What the mass room needs of a Build. */
export function massInput(build: Build): MassInput {
  const { items, yard } = build;
  const rigging = items.flatMap(({ group, rigging: one }): readonly MassItem[] =>
    one ? [{ group, kind: 'rigging', ...one }] : [],
  );
  return {
    items: [...items, ...rigging],
    contingency: decimalToNumber(yard.massContingency),
    aboard: aboard(build),
  };
}

/** The same with the water that the ballast tank holds, once it was floated. */
export function withBallast(input: MassInput, { afloat }: FloatFigures): MassInput {
  const water = afloat?.ballast?.effect?.water;
  if (!water) return input;
  const { mass, centre } = water;
  const held: PlacedMass = { name: 'Ballast water', kind: 'ballast', mass, at: centre };
  return { ...input, aboard: { ...input.aboard, ballast: { water: held } } };
}

/** Who and what the order takes aboard: the one place where people, gear, fluids and seats are read of a Build. */
function aboard(build: Build): Aboard {
  const { hull, yard, order, items } = build;
  const { condition } = order;
  const place = (at: Position): Point3 => placeInHull(at, hull.dimensions);
  return {
    fluids: fluidsOf(build),
    people: {
      count: order.boat.people,
      mass: yard.personMass,
      seats: seatsOf(build).map(place),
      beyond: { length: hull.dimensions.length, height: hull.dimensions.depth },
    },
    gear: { mass: yard.gearPerPerson, at: place(hull.gearAt) },
    cockpit: cockpitOf(build),
    rating: hull.ratings,
    trial: {
      people: yard.performanceTest.people,
      fluidShare: decimalToNumber(yard.performanceTest.fluidShare),
    },
    growth: { share: decimalToNumber(yard.massGrowth.share), rise: yard.massGrowth.rise },
    ...(items.some(({ float }) => float?.tank) && { ballast: {} }),
    ...(condition && {
      custom: {
        masses: condition.masses.map(({ name, mass, at }) => ({
          name,
          kind: 'other',
          mass,
          at: place(at),
        })),
        fluidShare: decimalToNumber(condition.fluidShare),
        ballastFlooded: condition.ballastFlooded,
      },
    }),
  };
}

/** The fuel that is ordered and what its tanks hold, and the water of live-wells. */
function fluidsOf({ order, yard, tank, hull, items }: Build): readonly Fluid[] {
  const { fuel = 0 } = order;
  // The heavier moves more.
  const water = kilogramsPerCubicMetre(
    Math.max(...watersOf({ order }).map(({ density }) => density)),
  );
  const holds = tank.builtIn || tank.portable;
  const surface = hull.tankSurface && { ...hull.tankSurface, density: yard.fuelDensity };
  const isWide = (breadth: number): boolean => breadth > WIDE_TANK * hull.dimensions.beam;
  const inTank = {
    name: 'Fuel',
    kind: 'fuel',
    mass: kilograms(fuel * yard.fuelDensity),
    capacity: kilograms(Math.max(fuel, holds) * yard.fuelDensity),
    at: tank.at,
    ...(surface && { surface, isWide: isWide(surface.breadth) }),
  } as const;
  const wells = items.flatMap(({ name, float, at }): readonly Fluid[] => {
    const well = float?.liveWell;
    if (!well) return [];
    const { mass, surface: box } = well;
    const moves = box && { surface: { ...box, density: water }, isWide: isWide(box.breadth) };
    return [{ name, kind: 'live-well', mass, capacity: mass, at, ...moves }];
  });
  return inTank.capacity > 0 ? [inTank, ...wells] : wells;
}

/** The seats of the hull, that of whoever steers first. */
const seatsOf = ({ hull: { seats, tillerSeat }, outboard }: Build): readonly Position[] =>
  outboard?.model.steering === 'tiller' ? [tillerSeat, ...seats.slice(1)] : seats;
