import { describe, expect, it } from 'vitest';
import { edgeOf, leanOf, type Loading, toSide } from '../../src/mass/index.ts';
import { toEnd } from '../../src/mass/crew.ts';
import { kilograms } from '../../src/units/index.ts';
import { ABOARD, at } from './boat.ts';

const { cockpit } = ABOARD;

/** People at such places, and a box of 100 kg. */
function aboard(...places: readonly (readonly [number, number, number])[]): Loading {
  const person = { name: 'Person', kind: 'person', mass: kilograms(80) } as const;
  const masses = [
    { name: 'Box', kind: 'boat', mass: kilograms(100), at: at(2, 0.05, 0.3) } as const,
    ...places.map(([x, y, z]) => ({ ...person, at: at(x, y, z) })),
  ];
  const mass = masses.reduce((sum, one) => sum + one.mass, 0);
  const mean = (axis: 'x' | 'y' | 'z') =>
    masses.reduce((sum, one) => sum + one.mass * one.at[axis], 0) / mass;
  const centre = at(mean('x'), mean('y'), mean('z'));
  return { people: places.length, masses, flooded: false, mass: kilograms(mass), centre };
}
const peopleIn = ({ masses }: Loading) =>
  masses
    .filter(({ kind }) => kind === 'person')
    .map(({ at: { x, y, z } }) => [x, y, z].map((one) => Number(one.toFixed(9))));

describe('people who go to one side', () => {
  it('go to the side that it leans to, starboard where it leans to neither', () => {
    expect(leanOf({ centre: at(0, 0.001, 0) })).toBe(1);
    expect(leanOf({ centre: at(0, -0.001, 0) })).toBe(-1);
    expect(leanOf({ centre: at(0, 0, 0) })).toBe(1);
  });

  it('stand abreast of their seats, 0.2 m in from the edge, as high as the cockpit has it', () => {
    // The cockpit is 0.7 m to either side, from 0.5 m to 2.5 m, 0.6 m high.
    const all = toSide(aboard([1, -0.3, 0.4], [3, 0.3, 0.4]), cockpit);
    expect(peopleIn(all)).toEqual([
      [1, 0.5, 0.6],
      [2.5, 0.5, 0.6],
    ]);
    expect(all.masses[0]?.at).toEqual(at(2, 0.05, 0.3));
    // (100 x 0.05 + 160 x 0.5) / 260.
    expect(all.centre.y).toBeCloseTo(85 / 260, 12);
  });

  it('stand on the edge where that is asked, and never come inboard for it', () => {
    expect(peopleIn(toSide(aboard([1, 0.2, 0.4]), cockpit, 1, 'edge'))).toEqual([[1, 0.7, 0.6]]);
    expect(peopleIn(toSide(aboard([1, 0.65, 0.4]), cockpit))).toEqual([[1, 0.65, 0.6]]);
  });

  it('are first those who change it most', () => {
    const seats = [
      [1, 0.3, 0.4],
      [1.5, -0.4, 0.4],
      [2, 0.1, 0.4],
    ] as const;
    expect(peopleIn(toSide(aboard(...seats), cockpit, 1))).toEqual([
      [1, 0.3, 0.4],
      [1.5, 0.5, 0.6],
      [2, 0.1, 0.4],
    ]);
    const toPort = seats.map(([x, y, z]) => [x, y - 0.9, z] as const);
    // Leaning to port: the one who sits furthest in goes first, and is beyond the reach already.
    expect(peopleIn(toSide(aboard(...toPort), cockpit, 1))).toEqual([
      [1, -0.6, 0.6],
      [1.5, -1.3, 0.4],
      [2, -0.8, 0.4],
    ]);
  });

  it('have an edge in the middle of the cockpit', () => {
    expect(edgeOf(cockpit, 1)).toEqual(at(1.5, 0.7, 0.6));
    expect(edgeOf(cockpit, -1)).toEqual(at(1.5, -0.7, 0.6));
  });
});

describe('people who go to one end', () => {
  const five = aboard(...Array.from({ length: 5 }, () => [1.5, 0.2, 0.4] as const));

  it('stand side by side, half a metre to each, on the middle line', () => {
    // 1.4 m across is room for two: rows at 0.75, 1.25 and 1.75 m.
    expect(peopleIn(toEnd(five, cockpit, 'aft'))).toEqual(
      [0.75, 0.75, 1.25, 1.25, 1.75].map((x) => [x, 0, 0.6]),
    );
    expect(peopleIn(toEnd(five, cockpit, 'forward'))).toEqual(
      [2.25, 2.25, 1.75, 1.75, 1.25].map((x) => [x, 0, 0.6]),
    );
  });

  it('stay in the cockpit however many they are, and one abreast in a narrow one', () => {
    const short = { ...cockpit, to: at(1, 0, 0).x, halfBreadth: at(0.2, 0, 0).x };
    expect(peopleIn(toEnd(five, short, 'aft'))).toEqual([0.75, 1, 1, 1, 1].map((x) => [x, 0, 0.6]));
    expect(toEnd(five, cockpit, 'aft').masses[0]?.at).toEqual(at(2, 0.05, 0.3));
  });
});
