import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  drawArrangement,
  drawBodyPlan,
  drawMassBars,
  drawPlacing,
  drawPlacingSide,
  drawRighting,
  drawWaterlines,
  type Drawing,
  type DrawnItem,
  toDataUri,
} from '../../src/draw/index.ts';
import { COOT, itemAt } from './invented-hull.ts';
import { keysOf, malformed, textsOf } from './read-svg.ts';

const FONT = "@font-face{font-family:'Source Sans 3';src:url(data:font/woff2;base64,AAAA)}";
const OUTBOARD = { clampHeight: 0.5, shaft: 0.508, mass: 70 };
const ITEMS = [itemAt(1, 1, 0.2, 0.5), itemAt(2, 1, 0.2, 0.5), itemAt(3, -0.25, 0, 0.6)];
const HOSTILE = `</text><script>x</script> & "quoted" 'single' <b> \u0000\u0007\uFFFE`;

const arrangement = (items: readonly DrawnItem[] = ITEMS): Drawing =>
  drawArrangement({ hull: COOT, items, outboard: OUTBOARD, lengthText: '4.00 m', fontCss: FONT });
const placing = (items: readonly DrawnItem[] = ITEMS): Drawing =>
  drawPlacing({ hull: COOT, items, outboard: OUTBOARD, fontCss: FONT });
const bodyPlan = (): Drawing => drawBodyPlan({ hull: COOT, fontCss: FONT });
const placingSide = (items: readonly DrawnItem[] = ITEMS): Drawing =>
  drawPlacingSide({ hull: COOT, items, outboard: OUTBOARD, fontCss: FONT });
const massBars = (name = 'Seats'): Drawing =>
  drawMassBars({
    subject: 'the Coot 400',
    groups: [
      { name: 'Hull', mass: 180, figure: '180 kg, 60%' },
      { name, mass: 120, figure: '120 kg, 40%' },
    ],
    fontCss: FONT,
  });

const heeled = (): Drawing =>
  drawBodyPlan({
    hull: COOT,
    waters: [
      { name: 'Loaded: upright', height: 0.3, heel: 0 },
      { name: 'To one side: 20 degrees', height: 0.3, heel: 0.35 },
    ],
    fontCss: FONT,
  });
const waterlines = (name = 'Loaded'): Drawing =>
  drawWaterlines({
    hull: COOT,
    outboard: OUTBOARD,
    waters: [
      { name, aft: 0.2, fore: 0.3 },
      { name: 'Everyone aft', aft: 0.35, fore: 0.05 },
    ],
    fontCss: FONT,
  });
const righting = (name = 'Greatest arm'): Drawing =>
  drawRighting({
    subject: 'the Coot 400',
    arms: [
      [0, 0],
      [30, 250],
      [60, 120],
      [90, -80],
    ],
    unit: 'mm',
    marks: [
      { name, heel: 32 },
      { name: 'Vanishes', heel: 78 },
    ],
    fontCss: FONT,
  });

const ALL: readonly (readonly [string, () => Drawing])[] = [
  ['arrangement', arrangement],
  ['placing', placing],
  ['placing from the side', placingSide],
  ['body plan', bodyPlan],
  ['mass bars', massBars],
  ['heeled body plan', heeled],
  ['waterlines', waterlines],
  ['righting arms', righting],
];

const somewhere = fc.record({
  x: fc.double({ min: -1, max: 6, noNaN: true }),
  y: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
  z: fc.double({ min: -0.5, max: 2.5, noNaN: true }),
});

function overlapping(keys: ReturnType<typeof keysOf>): number {
  const pairs = keys.flatMap((one, index) =>
    keys.slice(index + 1).map((other) => ({ one, other })),
  );
  return pairs.filter(
    ({ one, other }) => Math.hypot(one.x - other.x, one.y - other.y) < one.r + other.r,
  ).length;
}

describe.each(ALL)('the %s', (_name, draw) => {
  it('is well-formed, without script or reference to anything outside', () => {
    const { svg } = draw();
    expect(malformed(svg)).toBe('');
    expect(svg).not.toMatch(/<script|<image|<use|href|on\w+=|url\((?!data:)/);
  });

  it('holds no number that is not one, and no -0', () => {
    expect(draw().svg).not.toMatch(/NaN|Infinity|undefined|-0(?![.\d])/);
  });

  it('is the same each time, byte by byte', () => {
    expect(draw().svg).toBe(draw().svg);
  });

  it('is as large as its viewBox, with the font that it is given', () => {
    const { svg, width, height } = draw();
    expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
    expect(svg).toContain('@font-face');
  });

  it('writes nothing smaller than 2.2 mm', () => {
    const sizes = Array.from(draw().svg.matchAll(/font-size="([^"]+)"/g), ([, size]) => size);
    expect(sizes.length).toBeGreaterThan(0);
    expect(Math.min(...sizes.map(Number))).toBeGreaterThanOrEqual(2.2);
  });
});

describe('the drawings of a shop that works in feet and inches', () => {
  const hull = { ...COOT, units: 'us' } as const;
  const drawn = [
    drawArrangement({ hull, items: ITEMS, outboard: OUTBOARD, lengthText: '13 ft', fontCss: FONT }),
    drawPlacing({ hull, items: ITEMS, outboard: OUTBOARD, fontCss: FONT }),
    drawPlacingSide({ hull, items: ITEMS, outboard: OUTBOARD, fontCss: FONT }),
    drawBodyPlan({ hull, fontCss: FONT }),
  ];

  it('have no metric ruler, grid or word', () => {
    for (const { svg, alt } of drawn) expect(svg + alt).not.toMatch(/ mm\b|metres/);
    expect(drawn.map(({ svg }) => /feet forward|Along: in|grid of 4 in/.exec(svg)?.[0])).toEqual([
      'feet forward',
      'Along: in',
      'Along: in',
      'grid of 4 in',
    ]);
    expect(drawn[1]?.alt).toContain('on a grid of 24 in');
  });
  it('number every foot of her and no more', () => {
    const feet = drawn[0]?.svg.match(/font-size="2.6"[^>]*text-anchor="middle">\d+</g) ?? [];
    expect(feet.at(-1)).toContain('>13<');
  });
});

describe('the letters of a drawing', () => {
  it('are not joined: a joined pair is lost to a search of the PDF', () => {
    expect(bodyPlan().svg).toContain('text{font-variant-ligatures:none}');
  });
});

describe('keys in both drawings of the boat', () => {
  it('never overlap and never leave the sheet, wherever the items are', () => {
    fc.assert(
      fc.property(fc.array(somewhere, { maxLength: 14 }), (places) => {
        const items = places.map(({ x, y, z }, index) => itemAt(index + 1, x, y, z));
        for (const [{ svg, width, height }, views] of [
          [arrangement(items), 2],
          [placing(items), 1],
          [placingSide(items), 1],
        ] as const) {
          const keys = keysOf(svg);
          expect(keys).toHaveLength(views * items.length);
          expect(overlapping(keys)).toBe(0);
          for (const { x, y, r } of keys) {
            expect(Math.min(x - r, y - r, width - x - r, height - y - r)).toBeGreaterThanOrEqual(0);
          }
        }
      }),
      { numRuns: 15 },
    );
  });

  it('do not number what has no place, and draw the rest', () => {
    const items = [itemAt(1, 1, 0, 0.5), itemAt(2, Number.NaN, 0, 0.5)];
    expect(keysOf(arrangement(items).svg)).toHaveLength(2);
    expect(keysOf(placing(items).svg)).toHaveLength(1);
    const withoutHeight = itemAt(2, 1, 0, Number.NaN);
    expect(keysOf(placingSide([itemAt(1, 1, 0, 0.5), withoutHeight]).svg)).toHaveLength(1);
  });
});

describe('the words of drawings', () => {
  it('name the boat, her length and every item', () => {
    const { alt } = arrangement();
    expect(alt).toContain('the Coot 400, 4.00 m long');
    expect(alt).toContain('1 Thing 1; 2 Thing 2; 3 Thing 3.');
  });

  it('tell where each item goes', () => {
    const { alt } = placing([itemAt(1, 1.25, -0.2, 0.4), itemAt(2, -0.25, 0, 0.6)]);
    expect(alt).toContain('1 Thing 1, 1250 mm forward of the transom, 200 mm to port');
    expect(alt).toContain('2 Thing 2, 250 mm behind the transom, on the {centreline}');
    const side = placingSide([itemAt(1, 1.25, -0.2, 0.4), itemAt(2, 1, 0, -0.05)]);
    expect(side.alt).toContain('1 Thing 1, 400 mm above the baseline');
    expect(side.alt).toContain('2 Thing 2, 50 mm below the baseline');
  });

  it('say how the sections lie', () => {
    expect(bodyPlan().alt).toContain('2 aft of amidships on the left and 3 forward of it');
  });

  it('say where the water stands, and what happens at which heel', () => {
    expect(heeled().alt).toContain('A, Loaded: upright; B, To one side: 20 degrees.');
    expect(waterlines().alt).toContain('A, Loaded; B, Everyone aft.');
    expect(righting().alt).toContain('from upright to 90 degrees; Greatest arm; Vanishes.');
    expect(textsOf(righting().svg).join(' ')).toContain('Vanishes');
  });

  it('give every mass', () => {
    expect(massBars().alt).toContain('Hull 180 kg, 60%; Seats 120 kg, 40%.');
  });

  it('are escaped in the drawing, and rid of what XML cannot hold', () => {
    const { svg } = massBars(HOSTILE);
    expect(malformed(svg)).toBe('');
    expect(svg).not.toContain('<script');
    expect(malformed(waterlines(HOSTILE).svg)).toBe('');
    expect(malformed(righting(HOSTILE).svg)).toBe('');
    expect(textsOf(svg).join(' ')).toContain(`</text><script>x</script> & "quoted" 'single' <b>`);
  });
});

describe('the body plan', () => {
  it('labels each station in millimetres from the transom', () => {
    const texts = textsOf(bodyPlan().svg);
    for (const station of ['1000', '2000', '3000', '3800']) expect(texts).toContain(station);
  });
});

describe('bars of mass', () => {
  it('are as long as masses are to each other', () => {
    const bars = Array.from(
      massBars().svg.matchAll(/<rect x="62"[^>]* width="([^"]+)"/g),
      ([, width]) => Number(width),
    );
    expect(bars).toHaveLength(2);
    expect((bars[0] ?? 0) / (bars[1] ?? 1)).toBeCloseTo(180 / 120, 3);
  });

  it('cut no name, however long', () => {
    const name = `${'Fittings '.repeat(20)}${'W'.repeat(90)}`;
    const written = textsOf(massBars(name).svg).join('').replaceAll(' ', '');
    expect(written).toContain(name.replaceAll(' ', ''));
  });

  it('keep a number with its unit', () => {
    const groups = [{ name: 'Fittings of stainless steel 48\u00A0kg', mass: 1, figure: '1' }];
    const { svg } = drawMassBars({ subject: 'her', groups, fontCss: FONT });
    expect(textsOf(svg).some((text) => text.endsWith('48\u00A0kg'))).toBe(true);
  });

  it('are drawn for nothing at all', () => {
    const nothing = drawMassBars({ subject: 'her', groups: [], fontCss: FONT });
    expect(malformed(nothing.svg)).toBe('');
    expect(nothing.alt).toContain('nothing is weighed');
  });
});

describe('a data: URI', () => {
  it('holds the drawing and nothing that ends an attribute', () => {
    const uri = toDataUri(arrangement());
    expect(uri).not.toMatch(/["<>\s]/);
    expect(decodeURIComponent(uri.slice(uri.indexOf(',') + 1))).toBe(arrangement().svg);
  });
});

describe('the check that these tests read XML with', () => {
  it.each(['<a><b></a>', '<a>&</a>', '<a b="1" b="2"/>', '<a', '<a b=1/>', '<a/>text'])(
    'sees what is wrong in %s',
    (xml) => {
      expect(malformed(xml)).not.toBe('');
    },
  );
});

describe('the surface of the water across the body plan', () => {
  const linesOf = (svg: string, dash: string) =>
    Array.from(
      svg.matchAll(/<line x1="([^"]+)" y1="([^"]+)" x2="([^"]+)" y2="([^"]+)"[^>]*\/>/g),
      ([text, ...ends]) => ({ text, ends: ends.map(Number) }),
    ).filter(({ text }) => text.includes(`stroke-dasharray="${dash}"`));

  it('leans as she does: low on the port side, on the left, when she heels to starboard', () => {
    const surface = linesOf(heeled().svg, '3.2 1.4').toSorted(
      (a, b) => (b.ends[2] ?? 0) - (b.ends[0] ?? 0) - ((a.ends[2] ?? 0) - (a.ends[0] ?? 0)),
    )[0];
    const [left = NaN, leftDown = NaN, right = NaN, rightDown = NaN] = surface?.ends ?? [];
    expect((leftDown - rightDown) / (right - left)).toBeCloseTo(Math.tan(0.35), 2);
  });
});
