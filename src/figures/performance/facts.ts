import { HOUR } from '../../units/index.ts';
import { type Fact, factsOf, valueOf } from '../facts/fact.ts';
import type { Figures } from '../types.ts';
import { reserveOf } from './fuel-use.ts';
import { enginesOf } from './speed.ts';

const drive = factsOf('drive');
const WATER = drive('customer', 'text', 'water', 'Water that it is driven in', 'ordered');
const MASS = drive('customer', 'mass', '*.mass', 'Mass, running', 'masses');
const SPEED = drive('customer', 'speed', '*.speed', 'Speed, estimated', 'planing');
const CROUCH = drive('customer', 'speed', '*.speed-crouch', 'Speed, second estimate', 'crouch');
const TRIM = drive('office', 'angle', '*.trim', 'Running trim', 'planing');
const HUMP = drive('office', 'angle', '*.hump-trim', 'Trim at the hump', 'planing');
const SLOW = drive('customer', 'speed', '*.slow-speed', 'Speed before planing', 'prePlaning');
const CLIMB = drive('office', 'share', '*.hump-power', 'Power for the hump', 'prePlaning');
const PORPOISES = drive('office', 'angle', '*.porpoises-above', 'Porpoises above', 'porpoising');
const ENGINE = drive('office', 'speed', 'engine.*', 'Speed by another outboard', 'planing');
const FUEL = drive('customer', 'flow', '*.fuel', 'Fuel', 'fuel');
const RANGE = drive('customer', 'distance', '*.range', 'Range, estimated', 'fuel');
const RESERVE = drive('customer', 'share', 'reserve', 'Fuel kept back', 'ordered');
const PITCH = drive('workshop', 'dimension', 'propeller.pitch', 'Propeller pitch', 'propeller');
const HOLDING = drive('workshop', 'force', 'bow-motor.needed', 'Thrust to hold', 'holding');
const HOURS = drive('workshop', 'hours', 'bow-motor.hours', 'Hours of holding', 'holding');

export interface SpeedFacts {
  readonly mass: Fact<'customer'>;
  readonly speed: Fact<'customer'>;
  /** Where it does not plane. */
  readonly slow?: Fact<'customer'>;
  readonly crouch: Fact<'customer'>;
  readonly others: readonly Fact<'office'>[];
}

interface UseFacts {
  readonly speed: Fact<'customer'>;
  readonly fuel: Fact<'customer'>;
  readonly range: Fact<'customer'>;
}

type By<Name extends string, Facts> = Readonly<Partial<Record<Name, Facts>>>;

/** Speed, fuel, propeller and bow motor. */
export interface PerformanceFacts {
  readonly water: Fact<'customer'>;
  readonly loadings: By<Figures['drive']['loadings'][number]['name'], SpeedFacts>;
  readonly uses: By<Figures['drive']['fuel'][number]['name'], UseFacts>;
  readonly reserve?: Fact<'customer'>;
  readonly pitch?: Fact<'workshop'>;
  readonly holding?: { readonly thrust: Fact<'workshop'>; readonly hours: Fact<'workshop'> };
}

const dashed = (name: string): string => name.replaceAll(' ', '-');

/** What the boat does under way, each a fact with its band. */
export function performanceFacts({
  drive: all,
  build,
}: Pick<Figures, 'drive' | 'build'>): PerformanceFacts {
  const { propeller, bowMotor, fuel: uses } = all;
  const reserve = RESERVE(reserveOf(build));
  return {
    water: WATER(all.water),
    loadings: by(all.loadings, speedFacts),
    uses: by(uses, ({ name, speed, flow, range }): UseFacts => {
      const of = dashed(name);
      const fuel = FUEL(flow, { of });
      const from = [fuel.key, reserve.key];
      return { speed: SPEED(speed, { of }), fuel, range: RANGE(range, { of, from }) };
    }),
    ...(uses.length > 0 && { reserve }),
    ...(propeller && { pitch: pitchFact(propeller) }),
    ...(bowMotor && {
      holding: {
        thrust: HOLDING(valueOf(bowMotor.needed, ({ needed }) => needed)),
        hours: HOURS(valueOf(bowMotor.time, ({ hours }) => hours * HOUR)),
      },
    }),
  };
}

/** Speed by every outboard that the hull may carry. */
export const engineFacts = (figures: Pick<Figures, 'drive' | 'build'>): readonly Fact<'office'>[] =>
  enginesOf(figures).flatMap(({ model, speeds }) =>
    speeds.map(({ name, speed }) =>
      ENGINE(
        valueOf(speed, (known) => known.speed.likely),
        { of: `${model.id}.${dashed(name)}` },
      ),
    ),
  );

/** Facts of each by its name, in their order. */
function by<Name extends string, One extends { readonly name: Name }, Facts>(
  all: readonly One[],
  facts: (one: One) => Facts,
): By<Name, Facts> {
  const found: { [Key in Name]?: Facts } = {};
  for (const one of all) found[one.name] = facts(one);
  return found;
}

function speedFacts({
  name,
  loading,
  speed,
  hump,
  slow,
  climb,
  porpoisingAbove,
}: Figures['drive']['loadings'][number]): SpeedFacts {
  const of = dashed(name);
  const mass = MASS(loading.mass, { of });
  const band = 'notComputed' in speed ? {} : { low: speed.speed.low, high: speed.speed.high };
  return {
    mass,
    speed: SPEED(
      valueOf(speed, (known) => known.speed.likely),
      { of, ...band, from: [mass.key] },
    ),
    ...('notComputed' in speed && { slow: slowFact(slow, of, mass.key) }),
    crouch: CROUCH(
      valueOf(speed, ({ crouch }) => crouch),
      { of, from: [mass.key] },
    ),
    others: [
      TRIM(
        valueOf(speed, ({ state }) => state.trim),
        { of },
      ),
      HUMP(
        valueOf(hump, ({ state }) => state.trim),
        { of },
      ),
      ...('rises' in climb
        ? []
        : [
            CLIMB(
              valueOf(climb, ({ share }) => share.likely),
              {
                of,
                ...('notComputed' in climb ? {} : { low: climb.share.low, high: climb.share.high }),
              },
            ),
          ]),
      PORPOISES(porpoisingAbove, { of }),
    ],
  };
}

function slowFact(
  slow: Figures['drive']['loadings'][number]['slow'],
  of: string,
  from: Fact['key'],
): Fact<'customer'> {
  if ('notComputed' in slow) return SLOW(slow, { of, from: [from] });
  const { likely, low, high } = slow.speed;
  return SLOW(likely, { of, low, high, from: [from] });
}

function pitchFact(propeller: NonNullable<Figures['drive']['propeller']>): Fact<'workshop'> {
  if ('notComputed' in propeller) return PITCH(propeller);
  const { middle, finest: low, coarsest: high } = propeller;
  return PITCH(middle, { low, high });
}
