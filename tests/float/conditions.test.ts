import { describe, expect, it } from 'vitest';
import {
  bestPlace,
  type Condition,
  CONDITIONS,
  type ConditionName,
  type ConditionsInput,
  findEquilibrium,
  floatConditions,
  tankForm,
  trimEffects,
  withMasses,
} from '../../src/float/index.ts';
import { type Aboard, weighBoat } from '../../src/mass/index.ts';
import { kilograms, kilogramsPerCubicMetre, metres, radians } from '../../src/units/index.ts';
import { at, box, DEGREE, type DemonstrationHull, demonstrationHulls, loadAt } from './boats.ts';

const HULLS = demonstrationHulls();
const named = (id: string): DemonstrationHull => {
  const hull = HULLS.find((one) => one.id === id);
  if (!hull) throw new Error(`no hull ${id}`);
  return hull;
};
const DUNLIN = named('dunlin-430');
const BARGE = box(5, 2, 0.8);

/** Invented: a boat of about the shell's weight and half again, three people, an outboard and a tank. */
function aboard({ length, beam, depth }: DemonstrationHull): Aboard {
  const surface = {
    length: metres(0.5),
    breadth: metres(0.4),
    density: kilogramsPerCubicMetre(740),
    compartments: 1,
  };
  return {
    fluids: [
      {
        name: 'Fuel',
        kind: 'fuel',
        mass: kilograms(30),
        capacity: kilograms(30),
        isWide: true,
        at: at(0.25 * length, 0, 0.3 * depth),
        surface,
      },
    ],
    people: {
      count: 3,
      mass: kilograms(80),
      seats: [
        at(0.35 * length, 0.2, depth),
        at(0.5 * length, -0.2, depth),
        at(0.55 * length, 0, depth),
      ],
      beyond: { length: metres(length), height: metres(depth) },
    },
    gear: { mass: kilograms(10), at: at(0.5 * length, 0, 0.4 * depth) },
    cockpit: {
      from: metres(0.1 * length),
      to: metres(0.6 * length),
      halfBreadth: metres(0.3 * beam + 0.2),
      height: metres(depth),
    },
    rating: { people: 3, load: kilograms(320) },
    trial: { people: 2, fluidShare: 0.5 },
    growth: { share: 0.03, rise: metres(0) },
    ballast: {},
    custom: {
      masses: [
        { name: 'Crates', kind: 'other', mass: kilograms(60), at: at(0.8 * length, 0, depth) },
      ],
      fluidShare: 1,
      ballastFlooded: false,
    },
  };
}

function orderOf(hull: DemonstrationHull, mass = kilograms(1.5 * hull.shell)): ConditionsInput {
  const { length, beam, depth } = hull;
  const form = tankForm(hull.body.hull, {
    from: metres(0.15 * length),
    to: metres(0.55 * length),
    top: metres(0.22 * depth),
    halfBreadth: metres(0.22 * beam),
  });
  const { loadings } = weighBoat({
    items: [
      { group: 'Hull', kind: 'shell', mass, at: at(0.43 * length, 0, 0.5 * depth) },
      {
        group: 'Outboard',
        kind: 'outboard',
        mass: kilograms(0.5 * hull.shell),
        at: at(-0.2, 0, 0.9 * depth),
      },
    ],
    contingency: 0,
    aboard: aboard(hull),
  });
  return {
    body: hull.body,
    openings: [hull.transom],
    loadings,
    ...(form && { ballast: { form, permeability: 0.9 } }),
  };
}

const find = (all: readonly Condition[], name: ConditionName): Condition => {
  const found = all.find((one) => one.name === name);
  if (!found) throw new Error(`no condition ${name}`);
  return found;
};

describe('the conditions of an order', () => {
  it.each(HULLS)('of $id are all there, each afloat with words and numbers', (hull) => {
    const all = floatConditions(orderOf(hull));
    expect(all.map(({ name }) => name)).toEqual(CONDITIONS);
    for (const { state, equilibrium } of all) {
      expect(equilibrium.outcome).toBe('floats');
      expect(state?.freeboards.lowest.freeboard).toBeGreaterThan(0);
      expect(state?.draughtAft).toBeGreaterThan(0.02);
      expect(state?.metacentricHeight?.byForm).toBeGreaterThan(0);
    }
  });

  it('lean and trim as one would expect', () => {
    const all = floatConditions(orderOf(DUNLIN));
    expect(find(all, 'light').state?.leans).toBe('upright');
    expect(find(all, 'people to one side').state?.leans).toBe('to starboard');
    expect(find(all, 'people aft').state?.trims).toBe('by the stern');
    const trimOf = (name: ConditionName): number => find(all, name).state?.trim ?? Number.NaN;
    expect(trimOf('people aft')).toBeGreaterThan(trimOf('fully loaded'));
    expect(trimOf('with engine')).toBeGreaterThan(trimOf('light'));
    expect(find(all, 'people to one side').load.mass).toBeCloseTo(
      find(all, 'people aft').load.mass,
      9,
    );
  });

  it('take tanks at 95 % when full, with their free surface', () => {
    const all = floatConditions(orderOf(DUNLIN));
    const { load, state } = find(all, 'fully loaded');
    const boat = 2 * DUNLIN.shell;
    expect(load.mass).toBeCloseTo(boat + 30 * 0.95 + 3 * 80 + 30, 9);
    const moment = (740 * 0.5 * 0.4 ** 3) / 12;
    expect(state?.metacentricHeight?.freeSurfaceLoss).toBeCloseTo(moment / load.mass, 12);
    expect(find(all, 'with engine').state?.metacentricHeight?.freeSurfaceLoss).toBe(0);
  });

  it('sink her with the tank open to the sea, at the same mass', () => {
    const all = floatConditions(orderOf(DUNLIN));
    const [flooded, drained] = [find(all, 'ballast flooded at rest'), find(all, 'ballast drained')];
    expect(flooded.load).toEqual(drained.load);
    expect(flooded.state?.draughtAft).toBeGreaterThan(drained.state?.draughtAft ?? 1);
  });

  it('leave out what the order has not, and say that she is swamped instead of where she lies', () => {
    const { ballast: _, ...noTank } = orderOf(DUNLIN);
    const { grown: __, custom: ___, ...loadings } = noTank.loadings;
    expect(floatConditions({ ...noTank, loadings }).length).toBe(12);
    const heavy = floatConditions(orderOf(DUNLIN, kilograms(9000)));
    expect(
      heavy.every(({ equilibrium, state }) => equilibrium.outcome === 'swamps' && !state),
    ).toBe(true);
    expect(heavy.map(({ remedy }) => remedy?.what)).toEqual(heavy.map(() => 'take out'));
    expect(floatConditions({ ...noTank, loadings }).filter(({ remedy }) => remedy)).toEqual([]);
  });
});

describe('what moves her trim', () => {
  const items = [
    { name: 'outboard', mass: kilograms(90), at: at(-0.2, 0, 0.6) },
    { name: 'battery', mass: kilograms(25), at: at(0.3, 0.3, 0.3) },
    { name: 'anchor', mass: kilograms(12), at: at(3.8, 0, 0.6) },
    { name: 'console', mass: kilograms(30), at: at(1.7, 0, 0.6) },
    { name: 'cushion', mass: kilograms(1), at: at(1.7, 0, 0.6) },
    { name: 'seat', mass: kilograms(10), at: at(1.2, 0, 0.6) },
  ];
  const load = withMasses(loadAt(220, 1.85, 0, 0.4), items);

  it('is named with the greatest first, and by as much as it does', () => {
    const effects = trimEffects(DUNLIN.body, load, items);
    expect(effects.map(({ name }) => name).slice(0, 3)).toEqual(['outboard', 'anchor', 'battery']);
    expect(effects.length).toBe(5);
    expect(effects[0]?.trim).toBeGreaterThan(0);
    expect(effects.find(({ name }) => name === 'anchor')?.trim).toBeLessThan(0);
    expect(effects.find(({ name }) => name === 'battery')?.heel).toBeGreaterThan(0);
    const trimOf = (one: typeof load): number => {
      const result = findEquilibrium(DUNLIN.body, one);
      return result.outcome === 'floats' ? result.plane.trim : Number.NaN;
    };
    const without = withMasses(load, [{ mass: kilograms(-12), at: at(3.8, 0, 0.6) }]);
    const anchor = effects.find(({ name }) => name === 'anchor');
    expect(anchor?.trim).toBeCloseTo(trimOf(load) - trimOf(without), 7);
  });

  it('is heel too, by as much; what floats only with an item does not name it, and what sinks names none', () => {
    const heelOf = (one: typeof load): number => {
      const result = findEquilibrium(DUNLIN.body, one);
      return result.outcome === 'floats' ? result.plane.heel : Number.NaN;
    };
    const without = withMasses(load, [{ mass: kilograms(-25), at: at(0.3, 0.3, 0.3) }]);
    const battery = trimEffects(DUNLIN.body, load, items).find(({ name }) => name === 'battery');
    expect(battery?.heel).toBeCloseTo(heelOf(load) - heelOf(without), 7);
    const keel = { name: 'keel', mass: kilograms(3000), at: at(2.5, 0, 0) };
    const high = { name: 'mast', mass: kilograms(1), at: at(2.5, 0, 3) };
    const tall = withMasses(loadAt(1000, 2.5, 0, 4), [keel, high]);
    expect(trimEffects(BARGE, tall, [keel, high]).map(({ name }) => name)).toEqual(['mast']);
    expect(trimEffects(BARGE, loadAt(20_000, 2.5, 0, 0.3), [keel])).toEqual([]);
  });

  it('is left alone where the boat does not float as it is, and upright goes before near', () => {
    const item = { name: 'crate', mass: kilograms(50), at: at(2.5, 0.9, 0.5) };
    const place = (x: number, y: number) => ({ name: 'floor', at: at(x, y, 0.5) });
    const tried = (places: readonly ReturnType<typeof place>[], mass = 1000) =>
      bestPlace({
        body: BARGE,
        others: loadAt(mass, 2.5, 0, 0.3),
        item,
        places,
        band: { least: radians(-0.1), most: radians(0.1) },
        openings: [],
      });
    expect(
      tried([place(2.5, 0.6), place(2.5, -0.2), place(3, 0.1)]).tried.map((one) => one.at.y),
    ).toEqual([0.1, -0.2, 0.6]);
    expect(tried([place(2.6, 0.3), place(2.5, 0.3)]).tried.map((one) => one.at.x)).toEqual([
      2.5, 2.6,
    ]);
    expect(tried([place(2.5, 0)], 20_000)).toEqual({ tried: [], gain: 0 });
  });

  const battery = { name: 'battery', mass: kilograms(25), at: at(0.3, 0, 0.3) };
  const others = withMasses(load, [{ mass: kilograms(-25), at: at(0.3, 0.3, 0.3) }]);
  const search = (least: number, most: number) =>
    bestPlace({
      body: DUNLIN.body,
      others,
      item: battery,
      places: Array.from({ length: 11 }, (_, step) => ({
        name: 'along the floor',
        at: at(0.3 * (step + 1), 0, 0.3),
      })),
      band: { least: radians(least * DEGREE), most: radians(most * DEGREE) },
      openings: [DUNLIN.transom],
    });

  it('is brought into the band from the place least far away', () => {
    const { now, tried, gain } = search(-1, 90);
    expect(now?.outside).toBe(0);
    expect(gain).toBe(0);
    expect(tried[0]?.at.x).toBeCloseTo(0.3, 9);
    const range = (now?.plane.trim ?? 0) / DEGREE;
    const better = search(-9, range - 0.3);
    expect(better.gain / DEGREE).toBeCloseTo(0.3, 6);
    expect(better.tried[0]?.outside).toBe(0);
    expect(better.tried[0]?.at.x).toBeGreaterThan(0.3);
    const nearer = better.tried.filter(({ at: { x } }) => x < (better.tried[0]?.at.x ?? 0));
    expect(nearer.every(({ outside }) => outside > 0)).toBe(true);
  });

  it('is brought as near as can be when no place reaches the band', () => {
    const { tried, gain } = search(-30, -20);
    expect(tried[0]?.at.x).toBeCloseTo(3.3, 9);
    expect(gain).toBeGreaterThan(0);
    expect(tried[0]?.outside).toBeGreaterThan(0);
  });
});
