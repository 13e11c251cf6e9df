import { describe, expect, it } from 'vitest';
import { orders } from '../demonstration/workspace.ts';
import { ORDER } from '../read/samples.ts';
import { figuresOf } from './box-boat.ts';

const SIZE = 'size: { length: 0.4 m, breadth: 0.3 m, height: 0.3 m }';
const box = (id: string, x: number, more = SIZE, y = 0): string =>
  `  - { id: ${id}, name: The ${id}, class: fit-out, mass: 20 kg, at: { x: ${x} m, y: ${y} m, z: 0.3 m }, quantity: { most: 4 }, ${more} }\n`;
const rodHolder =
  '  - { id: rod-holder, name: Rod holder, class: fit-out, quantity: { most: 8 } }\n';

/** What is found of a seat whose middle is 1 m forward of the transom, and a locker. */
const found = (locker: string, seat = SIZE, order = ORDER) => {
  const options = `group: Seats\norder: 1\noptions:\n${rodHolder}${box('seat', 1, seat)}${locker}`;
  const ordered = order.replace('  - seat\n', '  - seat\n  - locker\n');
  const { findings } = figuresOf({ options, order: ordered });
  return findings.filter(({ code }) => code === 'ITEMS_IN_ONE_PLACE');
};

describe('things that stand in one another as placed', () => {
  it('ITEMS_IN_ONE_PLACE: by more than 20 mm, with both names and by how much; not by less', () => {
    const [finding, ...others] = found(box('locker', 1.379));
    expect(finding?.received).toMatch(/^The locker stands 21\smm in The seat$/u);
    expect(finding?.expected).toMatch(/^at most 20\smm/u);
    expect(finding?.severity).toBe('warning');
    expect(others).toEqual([]);
    expect(found(box('locker', 1.381))).toEqual([]);
  });

  it('are none where one is meant to stand in the other, whichever says so', () => {
    expect(found(box('locker', 1.1))).toHaveLength(1);
    expect(found(box('locker', 1.1, `${SIZE}, within: [seat]`))).toEqual([]);
    expect(found(box('locker', 1.1), `${SIZE}, within: [locker]`)).toEqual([]);
  });

  it('are none where nobody said how large one is', () => {
    expect(found(box('locker', 1, 'serial: false'))).toEqual([]);
  });

  it('are those of a bank too, side by side across the boat', () => {
    const order = ORDER.replace('  - seat\n', '  - { option: seat, quantity: 3 }\n  - locker\n');
    const beside = (y: number) => found(box('locker', 1, SIZE, y), SIZE, order);
    expect(beside(0.579)).toHaveLength(1);
    expect(beside(0.581)).toEqual([]);
  });
});

describe('a thing out of the hull', () => {
  /** The box is 1.6 m broad and 4 m long; the locker 0.3 m high, its middle as high. */
  const out = (x: number, y: number, z = 0.3) => {
    const options = `group: Seats\norder: 1\noptions:\n${rodHolder}${box('seat', x, SIZE, y).replace('z: 0.3', `z: ${z}`)}`;
    return figuresOf({ options })
      .findings.filter(({ code }) => code === 'BOX_OUTSIDE_HULL')
      .map(({ received }) => received);
  };

  it('BOX_OUTSIDE_HULL: by more than 20 mm through a side or the bottom, not by less', () => {
    expect(out(1, 0.671)).toEqual([expect.stringMatching(/^The seat stands 21\smm outside/u)]);
    expect(out(1, 0.669)).toEqual([]);
    expect(out(1, -0.671)).toHaveLength(1);
    expect(out(1, 0, 0.129)).toEqual([expect.stringMatching(/^The seat stands 21\smm outside/u)]);
    expect(out(1, 0, 0.131)).toEqual([]);
  });

  it('is past the transom or the stem, and above the sheer within its sides carried up', () => {
    expect(out(0.19, 0)).toEqual([expect.stringMatching(/past the end of/)]);
    expect(out(3.81, 0)).toEqual([expect.stringMatching(/past the end of/)]);
    expect(out(0.21, 0)).toEqual([]);
    expect(out(1, 0.669, 2)).toEqual([]);
    expect(out(1, 0.671, 2)).toHaveLength(1);
  });
});

describe('the demonstration', () => {
  it('has nothing that stands in anything or out of the hull by accident, as ordered or with an alternative', () => {
    const all = orders.flatMap(({ order, findings, alternatives, variations }) =>
      [...findings, ...[...alternatives, ...variations].flatMap((one) => one.findings)].map(
        ({ code, received }) => [order.value.number, code, received],
      ),
    );
    expect(
      all.filter(([, code]) => code === 'ITEMS_IN_ONE_PLACE' || code === 'BOX_OUTSIDE_HULL'),
    ).toEqual([]);
  });
});
