import type { Condition } from '../../float/index.ts';
import { DEGREE } from '../../units/index.ts';
import { type Fact, factsOf, isNotComputed, valueOf } from '../facts/fact.ts';
import type { Figures } from '../types.ts';
import { conditionOf } from './conditions.ts';
import { outcomeText } from './outcome.ts';
import type { Afloat, Ballast, GrowthFigures, Swamped } from './types.ts';

const float = factsOf('float');
const OUTCOME = float('customer', 'text', 'outcome', 'Floating', 'hydrostatics');
const WATER = float('customer', 'text', 'water', 'Water that it floats in', 'ordered');
const at = {
  mass: float('customer', 'mass', '*.mass', 'Mass afloat', 'masses'),
  people: float('customer', 'people', '*.people', 'People aboard', 'ordered'),
  outcome: float('customer', 'text', '*.outcome', 'Floats', 'hydrostatics'),
  trim: float('customer', 'angle', '*.trim', 'Trim', 'hydrostatics'),
  heel: float('customer', 'angle', '*.heel', 'Heel', 'hydrostatics'),
  length: float('customer', 'dimension', '*', 'Height at the water', 'hydrostatics'),
};
const FULL = {
  deepest: float(
    'customer',
    'dimension',
    'fully-loaded.draught-deepest',
    '{Draught}, fully loaded',
    'hydrostatics',
  ),
  freeboard: float(
    'customer',
    'dimension',
    'fully-loaded.freeboard-lowest',
    'Freeboard, fully loaded',
    'hydrostatics',
  ),
  sinks: float('office', 'mass', 'fully-loaded.sinks-1-cm', 'Sinks 1 cm', 'hydrostatics'),
  trims: float('office', 'massMoment', 'fully-loaded.trims-1-cm', 'Trims 1 cm', 'hydrostatics'),
};
const SPREAD = {
  mass: float(
    'office',
    'mass',
    'lines-spread.displacement',
    'Displacement with the lines between cross-sections taken the other way, difference',
    'hydrostatics',
  ),
  freeboard: float(
    'office',
    'dimension',
    'lines-spread.freeboard',
    'Freeboard with the lines between cross-sections taken the other way, difference',
    'hydrostatics',
  ),
};
const GZ = float('office', 'dimension', 'gz.*', 'Righting arm', 'hydrostatics');
const GZ_ANGLE = float('office', 'angle', 'gz.*', 'Righting arm, angle', 'hydrostatics');
const GZ_AREA = float('office', 'rightingArea', 'gz.area', 'Righting arm, area', 'hydrostatics');
const SIDE = float('customer', 'people', 'side.*', 'Most people to one side', 'crew');
const EDGE = float('workshop', 'mass', 'edge.*', 'Mass at the edge of the cockpit', 'crew');
const BALLAST = {
  volume: float('customer', 'volume', 'ballast.*', 'Ballast tank', 'ballast'),
  mass: float('customer', 'mass', 'ballast.*', 'Ballast water', 'ballast'),
  length: float('customer', 'dimension', 'ballast.*', 'With the ballast tank', 'ballast'),
  time: float('customer', 'seconds', 'ballast.*', 'Time of the ballast tank', 'ballast'),
  outcome: float('customer', 'text', 'ballast.outcome', 'Ballast tank', 'ballast'),
};
const FOAM = {
  has: float('customer', 'volume', 'swamped.foam', 'Foam', 'ordered'),
  needed: float('customer', 'volume', 'swamped.foam-needed', 'Foam by the rule', 'handbook'),
  still: float('customer', 'volume', 'swamped.foam-still-needed', 'Foam still needed', 'handbook'),
  weighs: float('office', 'mass', 'swamped.weighs.*', 'Weight under water', 'archimedes'),
  reserve: float('customer', 'mass', 'swamped.reserve', 'Lift left when swamped', 'archimedes'),
};
const MOVE = float('office', 'text', 'move.item', 'Worth moving', 'hydrostatics');
const MOVED = float('office', 'angle', 'move.trim', 'Trim with that moved', 'hydrostatics');
const GROWTH = {
  allowed: float('office', 'mass', 'growth.allowed', 'Growth allowed for', 'growth'),
  length: float('office', 'thickness', 'growth.effect.*', 'Effect of 10 kg', 'growth'),
  trim: float('office', 'angle', 'growth.effect.trim', 'Effect of 10 kg on trim', 'growth'),
  limit: float('office', 'mass', 'growth.limit.*', 'Growth until', 'growth'),
  noLimit: float('office', 'text', 'growth.limit.*', 'Growth until', 'growth'),
  first: float('office', 'mass', 'growth.first', 'Growth until the first limit', 'growth'),
};

/** How the boat floats. The named ones are those of the boat fully loaded, missing where it does not float so. */
export interface FloatFacts {
  readonly draught?: Fact<'customer'>;
  readonly freeboard?: Fact<'customer'>;
  readonly others: readonly Fact[];
}

/** Conditions, stability, ballast, foam and growth. */
export function floatFacts({ float: { afloat } }: Pick<Figures, 'float'>): FloatFacts {
  if (!afloat) {
    return { others: [OUTCOME({ notComputed: 'the lines of the hull are unsound' })] };
  }
  const { perCentimetre, ballast, swamped, trim, growth } = afloat;
  const state = conditionOf(afloat, 'fully loaded')?.state;
  const [move] = trim.moves;
  return {
    ...(afloat.deepest !== undefined && { draught: FULL.deepest(afloat.deepest) }),
    ...(state && { freeboard: FULL.freeboard(state.freeboards.lowest.freeboard) }),
    others: [
      WATER(afloat.water),
      ...afloat.conditions.flatMap(conditionFacts),
      ...(perCentimetre ? [FULL.sinks(perCentimetre.sinks), FULL.trims(perCentimetre.trims)] : []),
      ...spreadFacts(afloat),
      ...curveFacts(afloat),
      ...crewFacts(afloat),
      ...(ballast ? ballastFacts(ballast) : []),
      ...(swamped ? swampedFacts(swamped) : []),
      ...(move ? [MOVE(`${move.item.name} to ${move.to.name}`), MOVED(move.to.plane.trim)] : []),
      ...growthFacts(growth),
    ],
  };
}

function conditionFacts({ name, load, people, equilibrium, state }: Condition): readonly Fact[] {
  const of = name.replaceAll(' ', '-');
  const outcome = isNotComputed(equilibrium) ? equilibrium : outcomeText(equilibrium);
  const facts = [
    at.mass(load.mass, { of }),
    at.people(people, { of }),
    at.outcome(outcome, { of }),
  ];
  if (!state) return facts;
  const { freeboards, metacentricHeight: height } = state;
  const lengths = {
    'draught-aft': state.draughtAft,
    'draught-fore': state.draughtFore,
    'freeboard-bow': freeboards.bow.freeboard,
    'freeboard-side': freeboards.side.freeboard,
    'freeboard-transom': freeboards.transom.freeboard,
    // Fully loaded it is a fact of its own.
    ...(name !== 'fully loaded' && { 'freeboard-lowest': freeboards.lowest.freeboard }),
    ...(height && { gm: height.byForm, 'gm-slope': height.bySlope }),
  };
  return [
    ...facts,
    at.trim(state.trim, { of }),
    at.heel(state.heel, { of }),
    ...Object.entries(lengths).map(([what, value]) => at.length(value, { of: `${of}.${what}` })),
  ];
}

function spreadFacts({ spread }: Afloat): readonly Fact[] {
  if (!spread) return [];
  const { displacement, freeboard } = spread;
  return [
    SPREAD.mass(displacement),
    ...(freeboard === undefined ? [] : [SPREAD.freeboard(freeboard)]),
  ];
}

function curveFacts({ curve }: Afloat): readonly Fact[] {
  if (!curve) return [];
  const { greatest, vanishing, downflooding, area, arms } = curve;
  return [
    ...arms.map(({ heel, arm }) => GZ(arm, { of: String(Math.round(heel / DEGREE)) })),
    GZ(greatest.arm, { of: 'greatest' }),
    GZ_ANGLE(greatest.heel, { of: 'greatest-at' }),
    ...(vanishing === undefined ? [] : [GZ_ANGLE(vanishing, { of: 'vanishing' })]),
    ...(downflooding ? [GZ_ANGLE(downflooding.heel, { of: 'downflooding' })] : []),
    GZ_AREA(area),
  ];
}

function crewFacts({ crew: { ordered, rated, edge } }: Afloat): readonly Fact[] {
  const { bears, wanted } = edge;
  return [
    SIDE(ordered.most, { of: 'ordered' }),
    SIDE(rated.most, { of: 'rated' }),
    EDGE(wanted, { of: 'wanted' }),
    ...(bears.outcome === 'met' ? [EDGE(bears.growth, { of: 'bears' })] : []),
  ];
}

function ballastFacts({ effect, drains, fills }: Ballast): readonly Fact[] {
  if (!effect) return [BALLAST.outcome({ notComputed: 'outside the hull' })];
  const { capacity, water, dry, flooded } = effect;
  const state = (name: string, one: typeof dry): readonly Fact[] => [
    ...lengthOf(`${name}.gm`, one.metacentricHeight),
    ...lengthOf(`${name}.freeboard-lowest`, one.lowestFreeboard),
  ];
  const flow = (of: string, one: Ballast['drains']): readonly Fact[] =>
    one?.outcome === 'flows' ? [BALLAST.time(one.time, { of })] : [];
  return [
    BALLAST.volume(capacity, { of: 'capacity' }),
    ...(water ? [BALLAST.mass(water.mass, { of: 'water' })] : []),
    ...state('dry', dry),
    ...state('flooded', flooded),
    ...flow('drain-time', drains),
    ...flow('fill-time', fills),
  ];
}

const lengthOf = (of: string, value: number | undefined): readonly Fact[] =>
  value === undefined ? [] : [BALLAST.length(value, { of })];

function swampedFacts({ foam, rule, balance, counted }: Swamped): readonly Fact[] {
  const has = FOAM.has(foam);
  const needed = FOAM.needed(valueOf(rule, (known) => known.foam.total));
  return [
    has,
    needed,
    ...(isNotComputed(rule) ? [] : [FOAM.still(rule.stillNeeded, { from: [needed.key, has.key] })]),
    ...counted.map(({ name, weight }) =>
      FOAM.weighs(weight, { of: name.replaceAll(/[^A-Za-z0-9]+/g, '-') }),
    ),
    FOAM.reserve(balance.reserve, { from: [has.key] }),
  ];
}

function growthFacts({ allowed, effect, limits, first }: GrowthFigures): readonly Fact[] {
  const lengths = effect && {
    'draught-aft': effect.draughtAft,
    'draught-fore': effect.draughtFore,
    'freeboard-lowest': effect.freeboard,
    ...(effect.metacentricHeight !== undefined && { gm: effect.metacentricHeight }),
  };
  return [
    GROWTH.allowed(allowed),
    ...Object.entries(lengths ?? {}).map(([of, value]) => GROWTH.length(value, { of })),
    ...(effect ? [GROWTH.trim(effect.trim)] : []),
    ...limits.map(({ name, margin }, index) => {
      const [of, label] = [`${index + 1}`, `Growth until ${name}`];
      if (margin.outcome === 'met') return GROWTH.limit(margin.growth, { of, label });
      return 'notComputed' in margin
        ? GROWTH.limit(margin, { of, label })
        : GROWTH.noLimit(margin.outcome, { of, label });
    }),
    ...(first ? [GROWTH.first(first.growth, { label: `Growth until ${first.name}` })] : []),
  ];
}
