import {
  type BuiltHull,
  buildHull,
  type ConditionsInput,
  type FloatingBody,
  type Fluid,
  type HullLines,
  type Opening,
  type PointMass,
  tankForm,
} from '../../float/index.ts';
import type { FloodedSpace } from '../../float/index.ts';
import type { MassResult } from '../../mass/index.ts';
import { type Build, type BuildItem, placeInHull } from '../../resolve/index.ts';
import type { Position } from '../../schema/index.ts';
import { decimalToNumber, metres, type Point3 } from '../../units/index.ts';
import { fuelOf, looseGear } from '../mass/input.ts';
import { growthAllowed } from './growth.ts';

/** The lines of a hull as the room that floats her takes them. */
export function hullLines({ hull }: Build): HullLines {
  return {
    stations: hull.lines,
    between: hull.linesBetween,
    length: hull.dimensions.length,
    ...(hull.bow && { bow: hull.bow }),
  };
}

/** The hull afloat and what is wrong with her lines. */
export function floatingHull(build: Build): {
  readonly problems: BuiltHull['problems'];
  readonly body?: FloatingBody;
} {
  const { form, problems } = buildHull(hullLines(build));
  return { problems, ...(form && { body: { hull: form, flooded: [], water: build.yard.water } }) };
}

/** Where water comes aboard. */
export function openingsOf({ hull }: Build): readonly Opening[] {
  const { dimensions, openings, lines } = hull;
  if (openings.length > 0)
    return openings.map(({ name, at }) => ({ name, at: placeInHull(at, dimensions) }));
  const keel = lines[0]?.points[0]?.[1] ?? 0;
  const z = metres(keel + dimensions.transomHeight);
  return [{ name: 'transom cut-out', at: { x: metres(0), y: metres(0), z } }];
}

/** A ballast tank of the order, and the space it takes; no space when it lies outside the hull. */
export function ballastTank(
  build: Build,
  body: FloatingBody,
): { readonly item: BuildItem; readonly space?: FloodedSpace } | undefined {
  const item = build.items.find(({ float }) => float?.tank !== undefined);
  const tank = item?.float?.tank;
  if (!item || !tank) return undefined;
  const { from, to, top, halfBreadth, permeability } = tank;
  const form = tankForm(body.hull, {
    from,
    to,
    top,
    ...(halfBreadth !== undefined && { halfBreadth }),
  });
  return {
    item,
    ...(form && { space: { form, permeability: decimalToNumber(permeability) } }),
  };
}

/** Everything that the conditions of an order are made from. */
export function conditionsInput(
  build: Build,
  mass: MassResult,
  body: FloatingBody,
  ballast: FloodedSpace | undefined,
): ConditionsInput {
  const { hull, yard, order, items } = build;
  const outboard = items.find(({ kind }) => kind === 'outboard');
  const people = order.boat.people;
  const place = (at: Position): Point3 => placeInHull(at, hull.dimensions);
  const side = place(hull.crowd.side);
  const { condition } = order;
  const growth = growthAllowed(build, mass);
  return {
    body,
    openings: openingsOf(build),
    boat: mass.completed,
    ...(outboard && { outboard: { mass: outboard.mass, at: outboard.at } }),
    fluids: fluidsOf(build),
    personMass: yard.personMass,
    seats: seatsFor(build, people),
    gear: looseGear(build, people),
    crowd: {
      side: mass.ready.centre.y < 0 ? { ...side, y: metres(0 - side.y) } : side,
      aft: place(hull.crowd.aft),
    },
    performanceTest: {
      people: yard.performanceTest.people,
      fluidShare: decimalToNumber(yard.performanceTest.fluidShare),
    },
    ...(ballast && { ballast }),
    ...(growth.mass > 0 && { growth }),
    ...(condition && {
      custom: {
        masses: condition.masses.map(({ mass: kg, at }): PointMass => ({
          mass: kg,
          at: place(at),
        })),
        fluidShare: decimalToNumber(condition.fluidShare),
        ballastFlooded: condition.ballastFlooded,
      },
    }),
  };
}

/** Fuel as ordered, and the water of live-wells; brimful. */
function fluidsOf(build: Build): readonly Fluid[] {
  const { hull, yard, items } = build;
  const fuel = fuelOf(build);
  return [
    ...(fuel
      ? [
          {
            ...fuel,
            ...(hull.tankSurface && {
              surface: { ...hull.tankSurface, density: yard.fuelDensity },
            }),
          },
        ]
      : []),
    ...items.flatMap(({ float, at }) => {
      const well = float?.liveWell;
      if (!well) return [];
      const surface = well.surface && { ...well.surface, density: yard.water };
      return [{ mass: well.mass, at, ...(surface && { surface }) }];
    }),
  ];
}

/** A place for each of the people: those of the hull, then along the centreline. */
export function seatsFor({ hull, outboard }: Build, people: number): readonly Point3[] {
  const { dimensions, seats } = hull;
  const helm = outboard?.model.steering === 'tiller' ? [hull.tillerSeat] : seats.slice(0, 1);
  const given = [...helm, ...seats.slice(1)]
    .slice(0, people)
    .map((seat) => placeInHull(seat, dimensions));
  const rest = people - given.length;
  const spread = Array.from({ length: rest }, (_, index) => ({
    x: metres(dimensions.length * (0.3 + (0.3 * (index + 0.5)) / rest)),
    y: metres(0),
    z: dimensions.depth,
  }));
  return [...given, ...spread];
}
