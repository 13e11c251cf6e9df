import { describe, expect, it } from 'vitest';
import { drawOneLine, drawPanelStrip, type OneLineRow } from '../../src/draw/index.ts';

const load = (label: string, device: string): OneLineRow => ({
  kind: 'load',
  label,
  fuse: '5 A',
  wire: '2.5 mm², red',
  device,
});
const rows = (count: number): readonly OneLineRow[] =>
  Array.from({ length: count }, (_, index) => load(String(index + 1), `Device ${index + 1}`));
const draw = (atBattery: number, switched: number) =>
  drawOneLine({
    subject: 'the Coot 400',
    apart: [],
    battery: ['House battery', '100 Ah, 12 V'],
    atBattery: rows(atBattery),
    panel: { lines: ['Switch panel'], feeder: 'M1, main fuse 30 A', rows: rows(switched) },
    fontCss: '',
  });

describe('a one-line diagram', () => {
  it('grows by one pitch a wire, and has a box for every fuse, the main one among them', () => {
    expect(draw(2, 5).height - draw(2, 3).height).toBeGreaterThanOrEqual(18);
    const frames = draw(2, 3).svg.match(/<rect[^>]*fill="none"/g) ?? [];
    expect(frames).toHaveLength(2 + 3 + 1);
  });

  it('tells every wire in its words and escapes what names contain', () => {
    const drawing = drawOneLine({
      subject: 'A & B',
      apart: [{ lines: ['Joined for 24 V'], row: load('02', 'Bow motor') }],
      battery: ['Battery <1>'],
      atBattery: [load('01', 'Pump "aft"')],
      fontCss: '',
    });
    expect(drawing.alt).toContain('01, Pump "aft", fuse 5 A, 2.5 mm², red');
    expect(drawing.alt).toContain('Joined for 24 V alone: 02, Bow motor');
    expect(drawing.svg).toContain('Battery &lt;1&gt;');
  });

  it('has ink of #444 or darker in every line and text, and lines of 0.18 mm at least', () => {
    const { svg } = draw(3, 6);
    for (const [, ink] of svg.matchAll(/(?:stroke|fill)="(#[0-9a-f]{6})"/g)) {
      expect(['#1a1d1c', '#ffffff']).toContain(ink);
    }
    const widths = [...svg.matchAll(/stroke-width="([\d.]+)"/g)].map(([, width]) => Number(width));
    expect(Math.min(...widths)).toBeGreaterThanOrEqual(0.18);
    const sizes = [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(2.2);
  });

  it('is drawn without a wire at all', () => {
    expect(draw(0, 0).alt).toContain('nothing');
    expect(draw(0, 0).svg).not.toMatch(/NaN|Infinity/);
  });
});

describe('the labels of a switch panel', () => {
  it('stand six in a row, those to spare among them', () => {
    const labels = Array.from({ length: 7 }, (_, index) => ({
      position: String(index + 1),
      name: index === 6 ? '' : 'Bilge pump, automatic',
      fuse: index === 6 ? '' : '5 A',
    }));
    const drawing = drawPanelStrip({ subject: 'Switch panel', labels, fontCss: '' });
    expect(drawing.svg.match(/width="29.4"/g)).toHaveLength(7);
    expect(drawing.height).toBe(37);
    expect(drawing.alt).toContain('7 to spare');
  });
});
