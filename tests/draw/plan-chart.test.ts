import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawPlanChart, type PlanChartInput } from '../../src/draw/index.ts';
import { malformed, textsOf } from './read-svg.ts';

const bar = { from: 2, to: 9.5, kind: 'mould', label: 'A-1', row: 0 } as const;
const chart = (some: Partial<PlanChartInput> = {}): PlanChartInput => ({
  days: 28,
  today: 2,
  weeks: ['23 Nov', '30 Nov', '7 Dec', '14 Dec'],
  closed: [{ from: 20, to: 25 }],
  groups: [
    {
      heading: 'Orders',
      lanes: [{ name: '1 A-1 Coot 400', rows: 1, bars: [bar], promised: 12 }],
    },
  ],
  alt: 'One order.',
  fontCss: '',
  ...some,
});

const numbers = (svg: string, pattern: RegExp): readonly number[] =>
  Array.from(svg.matchAll(pattern), ([, text]) => Number(text));

describe('the drawing of a plan', () => {
  it('is well-formed, as wide as a sheet, with its names, weeks and legend', () => {
    const { svg, width, alt } = drawPlanChart(chart());
    expect(malformed(svg)).toBe('');
    expect(width).toBe(262);
    expect(alt).toBe('One order.');
    const texts = textsOf(svg);
    for (const text of ['Orders', '1 A-1 Coot 400', '23 Nov', 'promised', 'today', 'A-1'])
      expect(texts).toContain(text);
  });

  it('writes no text smaller than 2.2 mm and draws no line of the shop thinner than 0.18 mm', () => {
    const { svg } = drawPlanChart(chart());
    expect(Math.min(...numbers(svg, /font-size="([\d.]+)"/g))).toBeGreaterThanOrEqual(2.2);
    expect(Math.min(...numbers(svg, /stroke-width="([\d.]+)"/g))).toBeGreaterThanOrEqual(0.18);
  });

  it('tells kinds of work apart by fills that differ without colour', () => {
    const kinds = ['mould', 'cure', 'fit', 'trial', 'people'] as const;
    const fills = kinds.map((kind) => {
      const { svg } = drawPlanChart(
        chart({
          groups: [{ heading: '', lanes: [{ name: '', rows: 1, bars: [{ ...bar, kind }] }] }],
        }),
      );
      return /<rect[^>]*height="3.6" fill="([^"]+)"/.exec(svg)?.[1];
    });
    expect(new Set(fills).size).toBe(kinds.length);
  });

  it('leaves a label out where its bar has no room for it', () => {
    const short = { ...bar, to: 2.3 };
    const { svg } = drawPlanChart(
      chart({ groups: [{ heading: '', lanes: [{ name: 'x', rows: 1, bars: [short] }] }] }),
    );
    expect(textsOf(svg)).not.toContain('A-1');
  });

  it('thins out the labels of a long plan until none stands on another', () => {
    const weeks = Array.from({ length: 60 }, (_, week) => `w${week}`);
    const { svg } = drawPlanChart(chart({ days: 420, weeks }));
    const places = numbers(svg, /<text x="([\d.]+)"[^>]*>w\d+</g);
    expect(places.length).toBeGreaterThan(10);
    const gaps = places.slice(1).map((x, index) => x - (places[index] ?? 0));
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(12.9);
  });

  it('keeps every bar on the sheet, one row of a lane below the other', () => {
    const bars = fc.array(
      fc.record({
        from: fc.double({ min: 0, max: 27, noNaN: true }),
        long: fc.double({ min: 0, max: 1, noNaN: true }),
        row: fc.integer({ min: 0, max: 3 }),
      }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(bars, (some) => {
        const lane = {
          name: 'People, 4',
          rows: 4,
          bars: some.map(({ from, long, row }) => ({ ...bar, from, to: from + long, row })),
        };
        const { svg, width, height } = drawPlanChart(
          chart({ groups: [{ heading: 'People', lanes: [lane] }] }),
        );
        const drawn = [
          ...svg.matchAll(/<rect x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="3.6"/g),
        ].map(([, ...values]) => values.map(Number));
        expect(drawn).toHaveLength(some.length);
        for (const [x = 0, y = 0, wide = 0] of drawn) {
          expect(x + wide).toBeLessThanOrEqual(width);
          expect(y + 3.6).toBeLessThanOrEqual(height);
        }
        const tops = new Set(drawn.map(([, y]) => y));
        expect(tops.size).toBe(new Set(some.map(({ row }) => row)).size);
      }),
    );
  });
});
