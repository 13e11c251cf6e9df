import {
  buildHull,
  capacityOf,
  compareDeclared,
  type Condition,
  type ConditionName,
  findEquilibrium,
  type FloatingBody,
  floatConditions,
  heightAbove,
  type Hydrostatics,
  hydrostatics,
  linesSpread,
  lowestOf,
  momentToTrim,
  rightingCurve,
  type WaterPlane,
} from '../../float/index.ts';
import type { MassResult } from '../../mass/index.ts';
import type { DerivedBuild } from '../../derive/index.ts';
import type { Build } from '../../resolve/index.ts';
import { metres } from '../../units/index.ts';
import { ballastFigures } from './ballast.ts';
import { conditionOf } from './conditions.ts';
import { growthFigures } from './growth.ts';
import { crewFigures } from './crew.ts';
import { ballastTank, hullLines, openingsOf } from './input.ts';
import { swampedFigures } from './swamped.ts';
import { effectsOnTrim, trimAdvice } from './trim.ts';
import type { Afloat, FloatFigures, Screened } from './types.ts';
import { inWorseWater, type NamedWater, watersOf } from '../water.ts';

/** How the boat of an order floats: its conditions, how far it leans, and what is left of it when swamped. */
export function floatFigures(build: DerivedBuild, mass: MassResult): FloatFigures {
  const { problems, form } = buildHull(hullLines(build));
  const worse = form && worseWater(build, mass, form);
  const { dimensions, enclosedVolume: volume } = build.hull;
  const { length, beam, depth } = dimensions;
  const declared = { length, beam, depth, ...(volume !== undefined && { volume }) };
  const differ = compareDeclared(hullLines(build), declared, worse && capacityOf(worse.body));
  const all = [...problems, ...differ];
  return { problems: all, ...(worse && { afloat: afloat(build, mass, worse) }) };
}

interface InWater {
  readonly water: NamedWater;
  readonly body: FloatingBody;
}

const inWater = (hull: FloatingBody['hull'], water: NamedWater): InWater => ({
  water,
  body: { hull, flooded: [], water: water.density },
});

/** Of the waters that it is used in, the one that leaves less freeboard fully loaded. */
function worseWater(build: Build, { loadings }: MassResult, hull: FloatingBody['hull']): InWater {
  const openings = openingsOf(build);
  return inWorseWater(
    build,
    (water) => inWater(hull, water),
    ({ body }) => {
      const lies = findEquilibrium(body, loadings['fully loaded'], openings);
      if (lies.outcome !== 'floats') return Infinity;
      return 0 - (lowestOf(hull, openings, lies.plane)?.freeboard ?? 0);
    },
  );
}

/** The conditions of the boat and what people may do aboard, in one water. */
function screened(build: DerivedBuild, mass: MassResult, { water, body }: InWater): Screened {
  const openings = openingsOf(build);
  const ballast = ballastTank(build, body)?.space;
  const conditions = floatConditions({
    body,
    openings,
    loadings: mass.loadings,
    ...(ballast && { ballast }),
  });
  return { water: water.name, conditions, crew: crewFigures(build, mass, { body, openings }) };
}

function afloat(build: DerivedBuild, mass: MassResult, lies: InWater): Afloat {
  const { water, body } = lies;
  const tank = ballastTank(build, body);
  const openings = openingsOf(build);
  const first = screened(build, mass, lies);
  const { conditions, crew } = first;
  const second = watersOf(build).find(({ name }) => name !== water.name);
  const floated = (name: ConditionName): Condition => {
    const condition = conditionOf({ conditions }, name);
    if (!condition) throw new Error(`every order is floated ${name}`);
    return condition;
  };
  const full = floated('fully loaded');
  const side = (full.state?.heel ?? 0) < 0 ? 'port' : 'starboard';
  const curve = full.state && rightingCurve(body, full.load, side, openings);
  const spread =
    full.state &&
    linesSpread(hullLines(build), body, { load: full.load, plane: full.state.plane, openings });
  const deepest = full.state && hydrostatics(body, full.state.plane);
  const swamped = swampedFigures(build, mass, water);
  return {
    ...first,
    ...(second && { other: screened(build, mass, inWater(body.hull, second)) }),
    body,
    ...(deepest && full.state && whatMoves(deepest, full.state.plane, full.load)),
    ...(curve && { curve: { ...curve, side } }),
    ...(spread && { spread }),
    growth: growthFigures(build, mass, { body, openings, crew }, conditions),
    ...(tank && {
      ballast: ballastFigures(body, tank, floated('performance test').load, openings),
    }),
    ...(swamped && { swamped }),
    trimEffects: effectsOnTrim(build, body, full, mass),
    trim: trimAdvice(build, body, full, openings),
    length: build.hull.dimensions.length,
  };
}

/** Its depth in the water, and what a centimetre of sinking and of trim takes. */
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
