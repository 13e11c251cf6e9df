import { describe, expect, it } from 'vitest';
import { OPTIONS, ORDER } from '../read/samples.ts';
import { figuresOf, present } from './box-boat.ts';

const SIZE = 'size: { length: 0.4 m, breadth: 0.3 m, height: 0.3 m }';
/** The hull would lie by the bow, so that every move forward is a gain. */
const hull = [['most: 8 deg', 'most: -3 deg']] as const;
const seat = (facts: string): string =>
  `{ id: seat, name: Seat, class: fit-out, mass: 40 kg, at: { x: 0.3 m, z: 0.3 m }, quantity: { most: 4 }, ${facts} }`;
const forward = (x: number): string => `{ name: forward, at: { x: ${x} m, z: 0.3 m } }`;
const middle = '{ name: amidships, at: { x: 1.8 m, z: 0.3 m } }';

const adviceOf = (options: readonly string[], order = ORDER) => {
  const text = `group: Seats\norder: 1\noptions:\n${['{ id: rod-holder, name: Rod holder, class: fit-out, quantity: { most: 8 } }', ...options].map((one) => `  - ${one}\n`).join('')}`;
  return present(figuresOf({ options: text, hull, order }).float?.afloat).trim;
};
const ordering = (...more: readonly string[]): string =>
  ORDER.replace('  - seat\n', `  - seat\n${more.map((id) => `  - ${id}\n`).join('')}`);
const proposed = (trim: ReturnType<typeof adviceOf>): readonly string[] =>
  trim.moves.map(({ item, to }) => `${item.name} ${to.name}`);

describe('the best place to move a thing to', () => {
  const movable = seat(`${SIZE}, places: [${forward(3.2)}, ${middle}]`);
  const locker = (x: number, size = SIZE): string =>
    `{ id: locker, name: Locker, class: fit-out, mass: 5 kg, at: { x: ${x} m, z: 0.3 m }, ${size} }`;

  it('is the best of all while nothing stands there', () => {
    expect(OPTIONS).toContain('id: seat');
    expect(proposed(adviceOf([movable]))).toEqual(['Seat forward']);
    expect(adviceOf([movable]).taken).toEqual([]);
  });

  it('is not where something stands: the next best is, and what stands there is named', () => {
    const order = ordering('locker');
    const inside = adviceOf([movable, locker(2.81)], order);
    expect(proposed(inside)).toEqual(['Seat amidships']);
    expect(inside.taken).toEqual([{ item: 'Seat', place: 'forward', by: 'Locker' }]);
    const outside = adviceOf([movable, locker(2.79)], order);
    expect(proposed(outside)).toEqual(['Seat forward']);
    expect(outside.taken).toEqual([]);
  });

  it('is where the thing that stands there may hold it', () => {
    const holds = `${SIZE}, within: [locker]`;
    const free = seat(`${holds}, places: [${forward(3.2)}, ${middle}]`);
    expect(proposed(adviceOf([free, locker(3.2)], ordering('locker')))).toEqual(['Seat forward']);
  });

  it('takes no notice of what nobody gave a size', () => {
    const advice = adviceOf([movable, locker(3.2, 'serial: false')], ordering('locker'));
    expect(proposed(advice)).toEqual(['Seat forward']);
  });

  it('is not where the others of its own bank stay', () => {
    const order = ORDER.replace('  - seat\n', '  - { option: seat, quantity: 3 }\n');
    // Two that stay are 0.6 m across: 0.45 m to the side is free, 0.44 m is not.
    const beside = (y: number): string =>
      seat(`${SIZE}, places: [{ name: a little forward, at: { x: 0.69 m, y: ${y} m, z: 0.3 m } }]`);
    expect(proposed(adviceOf([beside(0.44)], order))).toEqual([]);
    expect(proposed(adviceOf([beside(0.45)], order))).toEqual(['Seat a little forward']);
  });

  it('is never one place for two things', () => {
    const box = (id: string, mass: number, x: number): string =>
      `{ id: ${id}, name: ${id}, class: fit-out, mass: ${mass} kg, at: { x: 0.9 m, z: 0.3 m }, ${SIZE}, places: [${forward(x)}, ${middle}] }`;
    const order = ordering('heavy', 'light');
    const plain = seat(SIZE);
    const one = adviceOf([plain, box('heavy', 50, 3.2), box('light', 40, 3.3)], order);
    expect(proposed(one)).toEqual(['heavy forward', 'light amidships']);
    const apart = adviceOf([plain, box('heavy', 50, 3.2), box('light', 40, 3.6)], order);
    expect(proposed(apart)).toEqual(['heavy forward', 'light forward']);
  });
});
