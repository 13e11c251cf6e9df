import {
  findEquilibrium,
  type FloatingBody,
  heightAbove,
  hydrostatics,
  immerse,
} from '../../float/index.ts';
import {
  type Computed,
  type EngineFit,
  fitEngine,
  isoPower,
  type Margin,
  type MethodId,
  PLATE_CAUTION,
  plateFacts,
  type RatedBoat,
  rateBoat,
  type Rating,
  screenCategories,
  type Screening,
  sternFreeboard,
  trimByEngine,
} from '../../limits/index.ts';
import type { MassResult, WeightedCentre } from '../../mass/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import {
  FRESH_WATER_DENSITY,
  type Kilograms,
  kilograms,
  type Metres,
  metres,
  type MetresPerSecond,
  type Radians,
  radians,
} from '../../units/index.ts';
import { conditionOf } from '../float/conditions.ts';
import { openingsOf } from '../float/input.ts';
import { whyLost } from '../float/outcome.ts';
import { leastFreeboardOf } from '../hull-defaults.ts';
import { type AsLoaded, asLoaded, type Carries, carriesOf } from './carries.ts';
import type { Afloat, FloatFigures } from '../float/types.ts';
import { fixedVolume, type LoadAsOrdered, loadAsOrdered } from './load-as-ordered.ts';
import { methodsOf } from './jurisdiction.ts';

/** Freeboard of the transom's cut-out with the engine on, m; common practice, no source. */
const STERN_FREEBOARD = metres(0.15);

/** Fresh water, the lighter: what it displaces in it is the least that it carries. */
const FRESH = FRESH_WATER_DENSITY;

/** What the boat may carry, estimated by the yard's methods to stand beside its own ratings. */
export interface LimitsFigures {
  readonly ratings: Computed<readonly Rating[]>;
  /** The boat as it then floats, beside the methods’ level one. */
  readonly asLoaded: Computed<AsLoaded>;
  readonly carries: Carries;
  /** Where the yard goes by the ISO-style method. */
  readonly asOrdered?: LoadAsOrdered;
  readonly categories: Computed<readonly Screening[]>;
  readonly plate: {
    /** What stands above it until somebody has signed. */
    readonly standing: string;
    /** What each method wants on it; nothing where it wants no plate. */
    readonly lists: readonly { readonly method: MethodId; readonly facts: readonly string[] }[];
  };
  /** With the outboard that is ordered. */
  readonly engine?: {
    readonly fit: EngineFit;
    readonly trim: Computed<Radians>;
    readonly stern: Computed<Margin>;
    /** Speed above which the manoeuvring test of ISO 11592-1 is wanted. */
    readonly testAbove: Computed<MetresPerSecond>;
  };
}

/** As engine fit is judged. */
const READY = 'ready to launch with nobody aboard ';
const NO_HULL = { notComputed: 'the lines make no hull' };

/** Ratings by each method, categories screened, and the fit of the outboard. */
export function limitsFigures(
  build: Build,
  mass: MassResult,
  { afloat }: FloatFigures,
): LimitsFigures {
  const body = afloat?.body;
  const engine = engineFigures(build, mass, body);
  const ratings = body ? rateBoat(ratedBoat(build, mass, body), methodsOf(build.yard)) : NO_HULL;
  const asOrdered = loadAsOrdered(build, ratings, mass);
  const loaded = body ? asLoaded(build, mass, body) : NO_HULL;
  return {
    ratings,
    asLoaded: loaded,
    carries: carriesOf(build, mass, ratings, loaded),
    ...(asOrdered && { asOrdered }),
    categories: afloat ? screened(build, afloat) : NO_HULL,
    plate: {
      standing: PLATE_CAUTION,
      lists: methodsOf(build.yard).map((method) => ({
        method,
        facts: plateFacts(method, build.hull.dimensions.length),
      })),
    },
    ...(engine && { engine }),
  };
}

function ratedBoat(build: Build, { completed }: MassResult, body: FloatingBody): RatedBoat {
  const { hull } = build;
  const flooding = downfloodingHeight(build);
  return {
    hull: ratedHull(build),
    light: completed.mass,
    fixedFuel: kilograms(fixedVolume(build) * build.yard.fuelDensity),
    greatestDisplacement: displacedTo(body, flooding),
    loadedDisplacement: displacedTo(body, metres(flooding - leastFreeboardOf(build))),
    seats: hull.performance.seats ?? hull.ratings.people,
    engine: { power: hull.ratings.power, mass: hull.ratings.engineMass },
  };
}

function ratedHull({ hull, items, outboard }: Build): RatedBoat['hull'] {
  const { length, beam, transomBeam, transomHeight, deadrise } = hull.dimensions;
  const isRemote = outboard ? outboard.model.steering === 'remote' : hasHelm(items, 'wheel');
  return {
    length,
    beam,
    transomBeam,
    transomHeight,
    deadrise,
    hardChine: hull.performance.chine === 'hard',
    monohull: hull.performance.hulls === 'one',
    steering: isRemote ? 'remote' : 'tiller',
  };
}

/** True when it is steered by a wheel, or has a remote control. */
const hasHelm = (items: readonly BuildItem[], what: 'wheel' | 'remote-control'): boolean =>
  items.some(({ performance }) => performance?.helm === what);

/** Mass of fresh water that it displaces, level and upright, when it stands at a height above the baseline. */
function displacedTo(body: FloatingBody, level: Metres): Kilograms {
  const fresh = { ...body, water: FRESH };
  return kilograms(immerse(fresh, { level, trim: radians(0), heel: radians(0) }).volume * FRESH);
}

/** Height above the baseline at which water first comes aboard: the lowest opening, or the sheer. */
function downfloodingHeight(build: Build): Metres {
  const sheer = build.hull.lines.map(({ points }) => points.at(-1)?.[1] ?? 0);
  const openings = openingsOf(build).map(({ at }) => at.z);
  return metres(Math.min(...sheer, ...openings));
}

/** Loaded as ordered: upright, and with everyone at one side. */
function screened({ hull, yard }: Build, afloat: Afloat): Computed<readonly Screening[]> {
  const wanted: readonly string[] = yard.limits.categories;
  if (wanted.length === 0) return [];
  const full = conditionOf(afloat, 'fully loaded');
  if (!full) return NO_HULL;
  if (!full.state) return whyLost(full.equilibrium, 'fully loaded ');
  const side = conditionOf(afloat, 'people to one side');
  if (!side) return NO_HULL;
  if (!side.state) return whyLost(side.equilibrium, 'with everyone at one side ');
  const screenings = screenCategories({
    length: hull.dimensions.length,
    downflooding: full.state.freeboards.lowest.freeboard,
    offsetHeel: radians(Math.abs(side.state.heel)),
    offsetFreeboard: side.state.freeboards.lowest.freeboard,
  });
  return screenings.filter(({ category }) => wanted.includes(category));
}

function engineFigures(
  build: Build,
  { ready }: MassResult,
  body: FloatingBody | undefined,
): LimitsFigures['engine'] {
  const { outboard, hull, items } = build;
  if (!outboard) return undefined;
  const fit = fitEngine({
    engine: {
      power: outboard.model.power,
      mass: outboard.mass,
      shaft: outboard.shaft,
      steering: outboard.model.steering,
    },
    hull: { ...hull.ratings, transomHeight: hull.dimensions.transomHeight },
    fitted: { wheel: hasHelm(items, 'wheel'), remoteControl: hasHelm(items, 'remote-control') },
  });
  const iso = isoPower(ratedHull(build));
  return {
    fit,
    trim: body ? engineTrim(build, ready, body) : NO_HULL,
    stern: body ? sternOf(build, ready, body) : NO_HULL,
    testAbove: 'notComputed' in iso ? iso : iso.testAbove,
  };
}

function engineTrim(
  { outboard, items }: Build,
  ready: WeightedCentre,
  body: FloatingBody,
): Computed<Radians> {
  const lies = findEquilibrium(body, ready);
  const at = items.find(({ kind }) => kind === 'outboard')?.at;
  if (lies.outcome !== 'floats') return whyLost(lies, READY);
  const afloat = hydrostatics(body, lies.plane);
  if (!afloat || !outboard || !at) return { notComputed: 'no outboard is in this order' };
  return trimByEngine(
    outboard.mass,
    metres(afloat.centreOfFlotation.x - at.x),
    ready.mass,
    metres(afloat.longitudinalMetacentre - ready.centre.z),
  );
}

/** Over the lowest opening of the after half, nobody aboard. */
function sternOf(build: Build, ready: WeightedCentre, body: FloatingBody): Computed<Margin> {
  const openings = openingsOf(build);
  const lies = findEquilibrium(body, ready, openings);
  if (lies.outcome !== 'floats') return whyLost(lies, READY);
  const aft = openings.filter(({ at }) => at.x < build.hull.dimensions.length / 2);
  if (aft.length === 0) return { notComputed: 'the boat has no opening in its after half' };
  const heights = aft.map(({ at }) => heightAbove(lies.plane, at));
  return sternFreeboard(metres(Math.min(...heights)), STERN_FREEBOARD);
}
