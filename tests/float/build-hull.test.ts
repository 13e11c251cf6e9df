import { describe, expect, it } from 'vitest';
import { buildHull, capacityOf, compareDeclared, hydrostatics } from '../../src/float/index.ts';
import { cubicMetres, metres } from '../../src/units/index.ts';
import { afloat, demonstrationHulls, formOf, linesOf, plane } from './boats.ts';

const SECTION = [
  [0, 0],
  [0.8, 0.2],
  [0.9, 0.7],
] as const;
const kinds = (lines: Parameters<typeof buildHull>[0]) =>
  buildHull(lines).problems.map(({ kind }) => kind);

describe('what is wrong with lines', () => {
  it.each([
    [
      'too few stations',
      [
        [0, SECTION],
        [1, SECTION],
      ],
    ],
    [
      'stations out of order',
      [
        [0, SECTION],
        [2, SECTION],
        [1, SECTION],
      ],
    ],
    [
      'too few points',
      [
        [0, SECTION],
        [1, [[0, 0]]],
        [2, SECTION],
      ],
    ],
    [
      'negative half-breadth',
      [
        [0, SECTION],
        [
          1,
          [
            [0, 0],
            [-0.4, 0.3],
            [0.9, 0.7],
          ],
        ],
        [2, SECTION],
      ],
    ],
    [
      'not a number',
      [
        [0, SECTION],
        [
          1,
          [
            [0, 0],
            [Number.NaN, 0.3],
            [0.9, 0.7],
          ],
        ],
        [2, SECTION],
      ],
    ],
    [
      'crosses itself',
      [
        [0, SECTION],
        [
          1,
          [
            [0, 0],
            [0.8, 0.2],
            [0.8, 0.4],
            [0.3, 0],
          ],
        ],
        [2, SECTION],
      ],
    ],
  ] as const)('is fatal when they have %s', (kind, rows) => {
    const { form, problems } = buildHull(linesOf(rows));
    expect(problems).toContainEqual(expect.objectContaining({ kind, fatal: true }));
    expect(form).toBeUndefined();
  });

  it('is told and no more when a chine turns down or stations differ in their points', () => {
    const turned = [
      [0, 0],
      [0.8, 0.2],
      [0.85, 0.19],
      [0.9, 0.7],
    ] as const;
    const rows = [
      [0, SECTION],
      [1, turned],
      [2, SECTION],
    ] as const;
    expect(new Set(kinds(linesOf(rows)))).toEqual(new Set(['height falls', 'unequal points']));
    expect(buildHull(linesOf(rows)).form).toBeDefined();
  });

  it('is fatal when the bow falls back or ends abaft the last station', () => {
    const rows = [
      [0, SECTION],
      [1, SECTION],
      [2, SECTION],
    ] as const;
    expect(kinds(linesOf(rows, { length: metres(1.5) }))).toEqual(['beyond the length']);
    // 14 ft 2 in and 170 in: one length, but for the last bit.
    expect(kinds(linesOf(rows, { length: metres(2 - Number.EPSILON) }))).toEqual([]);
    const bow = [
      [metres(2), metres(0)],
      [metres(1.9), metres(0.5)],
    ] as const;
    expect(kinds(linesOf(rows, { bow }))).toEqual(['bow does not rise']);
  });

  it('is nothing with the hulls of the demonstration, which are as they are declared', () => {
    const hulls = demonstrationHulls();
    expect(hulls.length).toBe(3);
    for (const { lines, length, beam, depth, body, volume } of hulls) {
      expect(buildHull(lines).problems).toEqual([]);
      const declared = {
        length: metres(length),
        beam: metres(beam),
        depth: metres(depth),
        volume: cubicMetres(volume),
      };
      expect(compareDeclared(lines, declared, capacityOf(body))).toEqual([]);
      expect(capacityOf(body) / volume).toBeCloseTo(1, 2);
    }
  });

  it('names what differs from the declaration, with both values', () => {
    const lines = linesOf([
      [0, SECTION],
      [1, SECTION],
      [2, SECTION],
    ]);
    const declared = { length: metres(2.01), beam: metres(1.7), volume: cubicMetres(1.5) };
    expect(compareDeclared(lines, declared, 1.7)).toEqual([
      expect.objectContaining({ what: 'beam', received: 1.8, declared: 1.7 }),
      expect.objectContaining({ what: 'volume', received: 1.7, declared: 1.5 }),
    ]);
  });
});

describe('a form', () => {
  const volumeOf = (lines: Parameters<typeof buildHull>[0], level: number) =>
    hydrostatics(afloat(formOf(buildHull(lines))), plane(level))?.volume ?? Number.NaN;

  it('keeps a prism a prism, whether its lines are curved or straight', () => {
    const rows = [
      [0, SECTION],
      [1, SECTION],
      [2.5, SECTION],
      [4, SECTION],
    ] as const;
    const straight = volumeOf(linesOf(rows), 0.3);
    expect(volumeOf(linesOf(rows, { between: 'curved' }), 0.3)).toBeCloseTo(straight, 12);
    expect(straight).toBeCloseTo(4 * (0.8 * 0.2 + 2 * 0.8 * 0.1 + 0.1 * 0.02), 12);
  });

  it('keeps the shape of a section that has fewer points than its neighbours', () => {
    const fine = [
      [0, 0],
      [0.4, 0.1],
      [0.8, 0.2],
      [0.85, 0.45],
      [0.9, 0.7],
    ] as const;
    const mixed = volumeOf(
      linesOf([
        [0, SECTION],
        [1, fine],
        [2, SECTION],
      ]),
      0.3,
    );
    const plain = volumeOf(
      linesOf([
        [0, SECTION],
        [1, SECTION],
        [2, SECTION],
      ]),
      0.3,
    );
    expect(mixed).toBeCloseTo(plain, 12);
  });

  it('ends in a wedge of half its block when the stem is square to the keel', () => {
    const square = [
      [0, 0],
      [0.5, 0],
      [0.5, 0.6],
    ] as const;
    const rows = [
      [0, square],
      [1, square],
      [2, square],
    ] as const;
    const bow = [
      [metres(3), metres(0)],
      [metres(3), metres(0.6)],
    ] as const;
    const withStem = volumeOf(linesOf(rows, { bow }), 0.3);
    expect(withStem - volumeOf(linesOf(rows), 0.3)).toBeCloseTo((0.3 * 1) / 2, 9);
  });

  it('ends in a pyramid of a third of its block of V-section when the stem is raked', () => {
    const vee = [
      [0, 0],
      [0.5, 0.6],
    ] as const;
    const rows = [
      [0, vee],
      [1, vee],
      [2, vee],
    ] as const;
    const level = 0.6 - 1e-12;
    const raked = volumeOf(linesOf(rows, { length: metres(3) }), level);
    expect(raked - volumeOf(linesOf(rows), level)).toBeCloseTo(0.3 / 3, 9);
  });
});
