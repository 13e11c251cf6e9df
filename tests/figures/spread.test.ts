import { describe, expect, it } from 'vitest';
import type { Figures, Known } from '../../src/figures/index.ts';
import { runningOf } from '../../src/figures/performance/running.ts';
import { watersOf } from '../../src/figures/water.ts';
import { massOf } from '../../src/mass/index.ts';
import { type SpeedEstimate, speedFor } from '../../src/performance/index.ts';
import { ballLoad } from '../../src/tow/index.ts';
import { kilograms, metres } from '../../src/units/index.ts';
import { orders } from '../demonstration/workspace.ts';
import { ORDER } from '../read/samples.ts';
import { figuresOf, present } from './box-boat.ts';

const of = (figures: Figures, name: Known['name']): Known =>
  present(figures.known.find((one) => one.name === name));
const by = ({ causes }: Known, cause: Known['causes'][number]['of']): number =>
  causes.find((one) => one.of === cause)?.by ?? 0;

describe('a box of a boat', () => {
  // 4 m by 1.6 m in sea water, so its waterplane does not change as it sinks or trims.
  const options = `group: Seats\norder: 1\noptions:\n  - { id: seat, name: Seat, class: fit-out, free: For a test., mass: 30 kg, at: { x: 2 m, z: 0.3 m } }\n  - { id: rod-holder, name: Rod holder, class: fit-out, free: For a test., quantity: { most: 8 } }\n`;
  const figures = figuresOf({ options });
  const tolerance = present(figures.gates.findLast(({ stage }) => stage !== 'trailer')).tolerance;

  it('is known by its freeboard as a hand works out: what the mass sinks it, and what its place trims it', () => {
    const known = of(figures, 'freeboard');
    expect(by(known, 'mass')).toBeCloseTo(tolerance / (1025 * 4 * 1.6), 3);
    const full = figures.mass.loadings['fully loaded'];
    // The boat's own centre 1 % of 4 m aft; BML = L2 / 12 T, less what the centre is above that of the water.
    const depth = full.mass / (1025 * 4 * 1.6);
    const metacentre = depth / 2 + 16 / (12 * depth) - full.centre.z;
    const trim = (figures.mass.loadings.ready.mass * 0.04) / (full.mass * metacentre);
    expect(by(known, 'place of the mass')).toBeCloseTo(2 * trim, 3);
    expect(known.known).toBeCloseTo(Math.hypot(...known.causes.map((cause) => cause.by)), 9);
    expect(known.spare).toBeCloseTo(known.value - 0.05, 9);
  });

  it('is known by its load as what is fitted is, and by its people where one more or less hangs on that', () => {
    const load = of(figures, 'load');
    // 30 kg of seat, known to the 4 % of the yard; three people of 90 kg with their gear, and 14.8 kg of fuel.
    expect(load.known).toBeCloseTo(30 * 0.04, 9);
    expect(load.value).toBeCloseTo(30 + 270 + massOf(figures.mass.loadings.rated, 'fuel'), 6);
    expect(load.spare).toBeCloseTo(450 - load.value, 9);
    expect(of(figures, 'people')).toMatchObject({ value: 4, known: 0, spare: 1 });
    const heavier = (kilos: number): Known =>
      of(figuresOf({ options: options.replace('30 kg', `${kilos} kg`) }), 'people');
    // 450 kg less 14.8 kg of fuel and four people leave 75.2 kg: 74 kg fill it but for less than 4 % of them.
    expect(heavier(74)).toMatchObject({ value: 4, known: 1 });
    expect(heavier(70)).toMatchObject({ value: 4, known: 0 });
  });

  it('says less than nothing to spare where a limit is passed', () => {
    const heavy = figuresOf({ options, order: ORDER.replace('people: 3', 'people: 5') });
    expect(of(heavy, 'load').spare).toBeLessThan(0);
    expect(of(heavy, 'people').spare).toBe(-1);
  });
});

describe('an order on its trailer', () => {
  const figures = present(orders.find(({ order }) => order.value.number === 'DC-2601')?.figures);
  const boat = present(figures.gates.findLast(({ stage }) => stage !== 'trailer')).tolerance;

  it('is known by its ball load as moving the mass, and its place, moves it', () => {
    const { trailer } = present(figures.tow.trailer);
    const { ball, winchPost } = present(figures.tow.trailer);
    if ('notComputed' in ball || 'notComputed' in winchPost) throw new Error('no ball load');
    const stowed = figures.mass.loadings['stowed for the road'];
    const shape = {
      tare: trailer.tare,
      axle: present(trailer.axle),
      centre: present(trailer.centre),
    };
    const { length } = figures.build.hull.dimensions;
    const onBall = (mass: number, centre: number): number => {
      const load = ballLoad(
        shape,
        { mass: kilograms(mass), centre: metres(centre), bow: length },
        winchPost.at,
      );
      return 'notComputed' in load ? Number.NaN : load.onBall;
    };
    const known = of(figures, 'ball load');
    const now = onBall(stowed.mass, stowed.centre.x);
    expect(now).toBeCloseTo(known.value, 9);
    expect(by(known, 'mass')).toBeCloseTo(
      Math.abs(onBall(stowed.mass + boat, stowed.centre.x) - now),
      6,
    );
    expect(by(known, 'place of the mass')).toBeCloseTo(
      onBall(stowed.mass, stowed.centre.x + 0.01 * length) - now,
      6,
    );
  });

  it('is known by its speed as a search for the speed of a heavier boat says', () => {
    const known = of(figures, 'speed');
    const loaded = present(figures.drive.loadings.find(({ name }) => name === 'loaded'));
    const water = present(watersOf(figures.build).find(({ name }) => name === figures.drive.water));
    const running = runningOf(figures.build, loaded.loading, water);
    if ('notComputed' in running) throw new Error(running.notComputed);
    const power = present(figures.build.outboard).model.power;
    const heavier = { ...running.hull, mass: kilograms(running.hull.mass + boat) };
    const speed = (boatRuns: typeof running): SpeedEstimate['speed'] => {
      const found = speedFor({ running: boatRuns, power });
      if ('notComputed' in found) throw new Error(found.notComputed);
      return found.speed;
    };
    const { low, likely, high } = speed(running);
    expect(by(known, 'power that reaches the water')).toBeCloseTo((high - low) / 2, 6);
    const slower = likely - speed({ ...running, hull: heavier }).likely;
    expect(by(known, 'mass') / slower).toBeCloseTo(1, 1);
    expect(known.causes[0]?.of).toBe('power that reaches the water');
  });
});
