import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bagConsumables, coreSheets, cutList, toOrder } from '../../src/laminate/index.ts';
import { metres, squareMetres } from '../../src/units/index.ts';

const roll = { width: metres(1.27), length: metres(50) };
const pieces = fc.array(
  fc.record({
    name: fc.constantFrom('bottom', 'side', 'deck', 'transom'),
    length: fc.double({ min: 0.1, max: 7, noNaN: true }).map(metres),
    width: fc.double({ min: 0.05, max: 4, noNaN: true }).map(metres),
    count: fc.integer({ min: 1, max: 4 }),
  }),
  { maxLength: 12 },
);
const overlap = metres(0.05);

describe('a cut list', () => {
  it('never cuts wider than the roll, nor past its end, nor twice at one place', () => {
    fc.assert(
      fc.property(pieces, (list) => {
        const { rows } = cutList(list, roll, overlap, 0.15);
        const ends = new Map<number, number>();
        for (const row of rows) {
          const across = row.strips.reduce((sum, { width }) => sum + width, 0);
          expect(across).toBeLessThanOrEqual(roll.width + 1e-6);
          expect(row.strips.every(({ length }) => length <= row.length)).toBe(true);
          expect(row.from).toBeCloseTo(ends.get(row.roll) ?? 0, 9);
          ends.set(row.roll, row.from + row.length);
        }
        for (const end of ends.values()) expect(end).toBeLessThanOrEqual(roll.length + 1e-6);
      }),
    );
  });

  it('covers every piece: its strips less their overlaps are as wide as it is', () => {
    fc.assert(
      fc.property(pieces, (list) => {
        const { stripArea, refused } = cutList(list, roll, overlap, 0.15);
        expect(refused).toEqual([]);
        const wanted = list.reduce((sum, { length, width, count }) => {
          const across = Math.max(1, Math.ceil((width - 0.05) / (1.27 - 0.05) - 1e-9));
          return sum + count * length * (width + (across - 1) * 0.05);
        }, 0);
        expect(stripArea).toBeCloseTo(wanted, 6);
      }),
    );
  });

  it('uses no less than the strips themselves, and no more than twice that and one strip', () => {
    fc.assert(
      fc.property(pieces, (list) => {
        const { length, stripArea, waste } = cutList(list, roll, overlap, 0.15);
        const least = stripArea / roll.width;
        expect(length).toBeGreaterThanOrEqual(least - 1e-9);
        const longest = Math.max(0, ...list.map((one) => one.length));
        expect(length).toBeLessThanOrEqual(2 * least + longest + 1e-9);
        expect(waste).toBeGreaterThanOrEqual(-1e-9);
        expect(waste).toBeLessThan(1);
      }),
    );
  });

  it('lays narrow strips side by side and reports what that saves', () => {
    const narrow = { name: 'side', length: metres(4), width: metres(0.6), count: 2 };
    const { rows, length, cutArea, saving } = cutList([narrow], roll, overlap, 0.15);
    expect(rows).toHaveLength(1);
    expect(length).toBe(4);
    expect(cutArea).toBeCloseTo(5.08, 12);
    expect(saving).toBeCloseTo(4.8 * 1.15 - 5.08, 12);
  });

  it('refuses what no roll is long enough for', () => {
    const long = { name: 'keel', length: metres(60), width: metres(0.3), count: 1 };
    const none = { ...long, name: 'nothing', width: metres(0) };
    const wide = { ...long, name: 'in millimetres?', length: metres(4), width: metres(1800) };
    expect(cutList([long, none, wide], roll, overlap, 0.15)).toMatchObject({
      rows: [],
      rolls: 0,
      waste: 0,
      refused: [
        { name: 'keel', reason: 'longer than a roll' },
        { name: 'nothing' },
        { name: 'in millimetres?' },
      ],
    });
  });
});

describe('what is ordered', () => {
  it('with what is on the shelf is never less than the need, nor a pack more than it', () => {
    const quantity = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(quantity, quantity, quantity, (need, inStock, pack) => {
        const [line] = toOrder(
          [{ name: 'resin', quantity: need, unit: 'kg' }],
          [{ name: 'resin', inStock, pack }],
        );
        const there = (line?.fromStock ?? 0) + (line?.ordered ?? 0);
        expect(there).toBeGreaterThanOrEqual(need - 1e-6);
        expect(there).toBeLessThan(need + pack);
      }),
    );
  });

  it('adds up one material from several places', () => {
    const need = { name: 'resin', quantity: 4, unit: 'kg' } as const;
    expect(toOrder([need, need], [{ name: 'resin', inStock: 3, pack: 4 }])).toEqual([
      { need: { ...need, quantity: 8 }, fromStock: 3, packs: 2, ordered: 8 },
    ]);
    expect(toOrder([need], [])).toMatchObject([{ packs: 1, ordered: 4 }]);
  });
});

describe('the rest of the kit', () => {
  it('counts whole sheets, and not one more for a rounding error', () => {
    expect(coreSheets(squareMetres(6), squareMetres(1.2), 0)).toBe(5);
    expect(coreSheets(squareMetres(6.01), squareMetres(1.2), 0)).toBe(6);
    expect(coreSheets(squareMetres(6), squareMetres(1.2), 0.1)).toBe(6);
  });

  it('takes tape and spiral from the edge and the feeds, film from the area', () => {
    const bag = bagConsumables({
      area: squareMetres(10),
      perimeter: metres(12),
      feedLength: metres(8),
      hoseLength: metres(6),
    });
    expect(bag.find(({ name }) => name === 'spiral tube')?.quantity).toBe(20);
    expect(bag.find(({ name }) => name === 'sealant tape')?.quantity).toBeCloseTo(25.2, 12);
    expect(bag.find(({ name }) => name === 'bag film')?.quantity).toBe(15);
  });
});
