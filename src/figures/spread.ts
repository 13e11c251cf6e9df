import { findEquilibrium, lowestOf } from '../float/index.ts';
import { loadTanksFull, peopleWithin, sumMass } from '../mass/index.ts';
import { runAt } from '../performance/index.ts';
import {
  decimalToNumber,
  type Kilograms,
  kilograms,
  metres,
  metresPerSecond,
} from '../units/index.ts';
import { conditionOf } from './float/conditions.ts';
import { openingsOf } from './float/input.ts';
import { type Fact, factsOf } from './facts/fact.ts';
import { dashedName } from './facts/names.ts';
import { leastFreeboardOf } from './hull-defaults.ts';
import { massInput } from './mass/input.ts';
import type { Cause, Figures, Known } from './types.ts';

/** How far the centre of mass may be from where it is counted, as a share of the length. Common practice, no source. */
const ALONG = 0.01;
/** How far the drag of the air may be from what is counted. Common practice, no source. */
const AIR = 0.5;

type Computed = Omit<Figures, 'findings' | 'known'>;

/**
 * What the weighing band of the shop, the place of the masses, the lines and the drags may make of the figures that have a
 * limit: each input moved by itself, and the root of the sum of squares of what they do.
 */
export function knownTo(figures: Computed): readonly Known[] {
  const { gates } = figures;
  const boat = gates.findLast(({ stage }) => stage !== 'trailer');
  if (!boat) return [];
  const mass = boat.tolerance;
  return [
    ...loadKnown(figures),
    ...afloatKnown(figures, mass),
    ...towKnown(figures, mass),
    ...speedKnown(figures, mass),
  ];
}

type Told = Pick<Known, 'name' | 'as' | 'value' | 'spare'>;

function known(told: Told, causes: readonly Cause[]): Known {
  const matter = causes.filter(({ by }) => by > 0).toSorted((one, other) => other.by - one.by);
  return { ...told, known: Math.hypot(...matter.map(({ by }) => by)), causes: matter };
}

/** Of what is aboard only the options are estimated: people, gear and fuel are what the yard counts them as. */
function loadKnown({ build, mass }: Computed): readonly Known[] {
  const { hull, yard, items } = build;
  const fitted = sumMass(items.filter(({ kind }) => kind === 'option' || kind === 'extra'));
  const by = fitted * decimalToNumber(yard.workshop.weighSpread['fit-out']);
  const load = loadTanksFull(mass);
  const heavier = peopleWithin(massInput(build).aboard, kilograms(fitted + by));
  const cause: Cause = { of: 'mass', by };
  return [
    known({ name: 'load', as: 'mass', value: load, spare: hull.ratings.load - load }, [cause]),
    known(
      {
        name: 'people',
        as: 'people',
        value: mass.ratedPeople,
        spare: mass.ratedPeople - build.order.boat.people,
      },
      [{ of: 'mass', by: mass.ratedPeople - heavier }],
    ),
  ];
}

function afloatKnown(figures: Computed, mass: Kilograms): readonly Known[] {
  const { build, float } = figures;
  const { afloat } = float;
  const full = afloat && conditionOf(afloat, 'fully loaded');
  const lowest = full?.state?.freeboards.lowest.freeboard;
  if (!afloat || !full || lowest === undefined) return [];
  const { load } = full;
  const moved = (by: Kilograms, along: number): number => {
    const openings = openingsOf(build);
    const centre = { ...load.centre, x: metres(load.centre.x + along) };
    const lies = findEquilibrium(
      afloat.body,
      { mass: kilograms(load.mass + by), centre },
      openings,
    );
    const found = lies.outcome === 'floats' && lowestOf(afloat.body.hull, openings, lies.plane);
    return found ? lowest - found.freeboard : lowest;
  };
  const boat = figures.mass.loadings.ready.mass;
  const along = (ALONG * build.hull.dimensions.length * boat) / load.mass;
  const causes: readonly Cause[] = [
    { of: 'mass', by: moved(mass, 0) },
    {
      of: 'place of the mass',
      by: Math.max(moved(kilograms(0), along), moved(kilograms(0), -along)),
    },
    { of: 'lines', by: Math.abs(afloat.spread?.freeboard ?? 0) },
  ];
  const side = afloat.crew.ordered.leans?.lowest.freeboard;
  const least = build.yard.offsetLoad?.freeboard ?? 0;
  const told: readonly Told[] = [
    {
      name: 'freeboard',
      as: 'dimension',
      value: lowest,
      spare: lowest - leastFreeboardOf(build),
    },
    ...(side === undefined
      ? []
      : [
          {
            name: 'people to one side',
            as: 'dimension',
            value: side,
            spare: side - least,
          } as const,
        ]),
  ];
  return told.map((one) => known(one, causes));
}

function towKnown({ tow, build, trailerLoad, mass }: Computed, boat: Kilograms): readonly Known[] {
  const { trailer } = tow;
  if (!trailer || !trailerLoad) return [];
  const { yard, hull } = build;
  const tare = trailer.trailer.tare * decimalToNumber(yard.workshop.weighSpread.trailer);
  const whole = known(
    { name: 'trailer', as: 'mass', value: trailerLoad.total, spare: trailerLoad.left },
    [{ of: 'mass', by: Math.hypot(boat, tare) }],
  );
  const { ball, share, winchPost } = trailer;
  const { axle } = trailer.trailer;
  if ('notComputed' in ball || 'notComputed' in winchPost || axle === undefined) return [whole];
  const stowed = mass.loadings['stowed for the road'];
  const at = winchPost.at + hull.dimensions.length - stowed.centre.x;
  const spare =
    'notComputed' in share
      ? undefined
      : Math.min(...share.map(({ value, limit }) => Math.abs(value - limit))) * ball.total;
  const isOut = !('notComputed' in share) && share.some(({ holds }) => !holds);
  return [
    whole,
    known(
      {
        name: 'ball load',
        as: 'mass',
        value: ball.onBall,
        ...(spare !== undefined && { spare: isOut ? 0 - spare : spare }),
      },
      [
        { of: 'mass', by: Math.abs((boat * (axle - at)) / axle) },
        {
          of: 'place of the mass',
          by: (stowed.mass * ALONG * hull.dimensions.length) / axle,
        },
      ],
    ),
  ];
}

function speedKnown({ drive }: Computed, mass: Kilograms): readonly Known[] {
  const { running, speed } = drive.loadings.find(({ name }) => name === 'loaded') ?? {};
  if (!running || 'notComputed' in running || !speed || 'notComputed' in speed) return [];
  const { low, likely, high } = speed.speed;
  const powerAt = (changed: typeof running, at: number): number => {
    const state = runAt(changed, metresPerSecond(at));
    return 'notComputed' in state ? Number.NaN : state.effectivePower;
  };
  const power = speed.state.effectivePower;
  const slope = (powerAt(running, 1.01 * likely) - power) / (0.01 * likely);
  const heavier = { ...running.hull, mass: kilograms(running.hull.mass + mass) };
  const calm = running.added?.filter(({ medium }) => medium !== 'air') ?? [];
  const inAir = power - powerAt({ ...running, added: calm }, likely);
  const causes: readonly Cause[] = [
    { of: 'power that reaches the water', by: (high - low) / 2 },
    { of: 'mass', by: (powerAt({ ...running, hull: heavier }, likely) - power) / slope },
    { of: 'air', by: (AIR * inAir) / slope },
  ];
  return [known({ name: 'speed', as: 'speed', value: likely }, causes)];
}

const told = factsOf('known');
const TOLD = {
  mass: told('office', 'mass', '*', 'Known to', 'known'),
  dimension: told('office', 'dimension', '*', 'Known to', 'known'),
  speed: told('office', 'speed', '*', 'Known to', 'known'),
  people: told('office', 'people', '*', 'Known to', 'known'),
};

/** How well each is known. */
export const knownFacts = ({ known: all }: Pick<Figures, 'known'>): readonly Fact[] =>
  all.map((one) => TOLD[one.as](one.known, { of: dashedName(one.name) }));
