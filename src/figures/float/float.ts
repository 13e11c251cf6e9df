import {
  capacityOf,
  compareDeclared,
  type Condition,
  type ConditionsInput,
  type FloatingBody,
  floatConditions,
  heightAbove,
  type Hydrostatics,
  hydrostatics,
  momentToTrim,
  offsetLoad,
  rightingCurve,
  type WaterPlane,
  withMasses,
} from '../../float/index.ts';
import type { MassResult } from '../../mass/index.ts';
import type { Build } from '../../resolve/index.ts';
import { kilograms, metres } from '../../units/index.ts';
import { ballastFigures } from './ballast.ts';
import { conditionOf } from './conditions.ts';
import { growthFigures } from './growth.ts';
import { ballastTank, conditionsInput, floatingHull, hullLines } from './input.ts';
import { swampedFigures } from './swamped.ts';
import { effectsOnTrim, trimAdvice } from './trim.ts';
import type { Afloat, FloatFigures } from './types.ts';

/** How the boat of an order floats: her conditions, how far she leans, and what is left of her when swamped. */
export function floatFigures(build: Build, mass: MassResult): FloatFigures {
  const { problems, body } = floatingHull(build);
  const { dimensions, enclosedVolume: volume } = build.hull;
  const { length, beam, depth } = dimensions;
  const declared = { length, beam, depth, ...(volume !== undefined && { volume }) };
  const differ = compareDeclared(hullLines(build), declared, body && capacityOf(body));
  const all = [...problems, ...differ];
  return { problems: all, ...(body && { afloat: afloat(build, mass, body) }) };
}

function afloat(build: Build, mass: MassResult, body: FloatingBody): Afloat {
  const tank = ballastTank(build, body);
  const input = conditionsInput(build, mass, body, tank?.space);
  const conditions = floatConditions(input);
  const full = conditionOf({ conditions }, 'fully loaded');
  const test = conditionOf({ conditions }, 'performance test');
  if (!full || !test) throw new Error('every order is loaded fully, and for the trial');
  const side = (full.state?.heel ?? input.crowd.side.y) < 0 ? 'port' : 'starboard';
  const curve = full.state && rightingCurve(body, full.load, side, input.openings);
  const deepest = full.state && hydrostatics(body, full.state.plane);
  const swamped = swampedFigures(build, mass);
  return {
    conditions,
    ...(deepest && full.state && whatMoves(deepest, full.state.plane, full.load)),
    ...(curve && { curve: { ...curve, side } }),
    offset: offset(build, input, full),
    growth: growthFigures(build, mass, input, conditions),
    ...(tank && { ballast: ballastFigures(build, body, tank, test, input.openings) }),
    ...(swamped && { swamped }),
    trimEffects: effectsOnTrim(build, body, full),
    trim: trimAdvice(build, body, full, input.openings),
    length: build.hull.dimensions.length,
  };
}

/** Her depth in the water, and what a centimetre of sinking and of trim takes. */
function whatMoves(
  all: Hydrostatics,
  plane: WaterPlane,
  { centre }: Condition['load'],
): Pick<Afloat, 'deepest' | 'perCentimetre'> {
  const baseline = { x: metres(0), y: metres(0), z: metres(0) };
  const height = metres(heightAbove(plane, centre) - heightAbove(plane, baseline));
  return {
    deepest: all.draught,
    perCentimetre: { sinks: all.perCentimetre, trims: momentToTrim(all, height) },
  };
}

/** Everyone aboard to one side, the boat otherwise fully loaded. */
function offset({ yard }: Build, input: ConditionsInput, full: Condition): Afloat['offset'] {
  const { body, seats, personMass, crowd, openings } = input;
  const people = seats.length;
  const boat = withMasses(
    full.load,
    seats.map((at) => ({ mass: kilograms(0 - personMass), at })),
  );
  const { offsetLoad: screen } = yard;
  const limits = screen
    ? {
        basis: screen.basis,
        ...(screen.heel !== undefined && { heel: screen.heel }),
        ...(screen.freeboard !== undefined && { freeboard: screen.freeboard }),
      }
    : { basis: 'no limits chosen' };
  const result = offsetLoad({ body, boat, people, personMass, at: crowd.side, openings, limits });
  return { ...result, people, ...(screen?.heel !== undefined && { heelLimit: screen.heel }) };
}
