import { describe, expect, it } from 'vitest';
import { computeFigures, type ElectricsFigures, type Figures } from '../../src/figures/index.ts';
import type { Build, BuildItem } from '../../src/resolve/index.ts';
import { amperes, metres } from '../../src/units/index.ts';
import { figuresOf, orders } from '../demonstration/workspace.ts';

function electricsOf({ electrics }: Figures): ElectricsFigures {
  if ('notComputed' in electrics) throw new Error(electrics.notComputed);
  return electrics;
}

const wired = orders.flatMap(({ figures }) =>
  figures && !('notComputed' in figures.electrics) ? [figures] : [],
);
const byNumber = wired.map((figures) => [figures.build.order.number, figures] as const);

describe.each(byNumber)('the wiring of %s', (_, figures) => {
  const { circuits, feeder, refused, budget, panel } = electricsOf(figures);

  it('has a fuse that protects every wire and bears its load', () => {
    expect(refused).toEqual([]);
    const rows = circuits.map(({ row }) => row);
    for (const { circuit, conductor, fuse } of feeder && 'row' in feeder
      ? [...rows, feeder.row]
      : rows) {
      expect(fuse, circuit.name).toBeLessThanOrEqual(conductor.ampacity);
      expect(fuse, circuit.name).toBeGreaterThanOrEqual(circuit.current);
      expect(fuse, circuit.name).toBeLessThanOrEqual(circuit.largestFuse ?? fuse);
      expect(conductor.metricMm2, circuit.name).toBeGreaterThanOrEqual(conductor.areaMm2);
      expect(conductor.dropShare, circuit.name).toBeLessThanOrEqual(
        circuit.drop === 'critical' ? 0.03 : 0.1,
      );
    }
  });

  it('has a main fuse that no fuse behind it is larger than', () => {
    const behind = circuits.filter(({ from }) => from === 'panel').map(({ row }) => row.fuse);
    const main = feeder && 'row' in feeder ? feeder.row.fuse : 0;
    expect(panel === undefined).toBe(feeder === undefined);
    expect(Math.max(0, ...behind)).toBeLessThanOrEqual(main);
  });

  it('wires every item that draws current, and numbers the wires from 1', () => {
    const drawing = figures.build.items.filter(({ current }) => current > 0);
    expect(new Set(circuits.map(({ item }) => item.key))).toEqual(
      new Set(drawing.map(({ key }) => key)),
    );
    const current = circuits.reduce((sum, { row }) => sum + row.circuit.current, 0);
    expect(current).toBeCloseTo(
      drawing.reduce((sum, one) => sum + one.current, 0),
      9,
    );
    expect(circuits.map(({ row }) => row.position)).toEqual(circuits.map((__, index) => index + 1));
  });

  it('adds a day’s use up from its circuits, at the boat’s voltage', () => {
    const day = circuits.reduce(
      (sum, { row, volts }) => sum + (row.circuit.current * row.circuit.hoursADay * volts) / 12,
      0,
    );
    expect(budget.ampereHours).toBeCloseTo(day, 9);
  });
});

const OPTIONS = 'options: [battery-start, switch-panel-6, bilge-pump, nav-lights, vhf-radio]\n';
const { build } = figuresOf('dunlin-430', OPTIONS);

/** Codes that the order is told with one of its items changed. */
function told(key: string, change: (item: BuildItem) => Partial<BuildItem>): readonly string[] {
  const items = build.items.map((item) => (item.key === key ? { ...item, ...change(item) } : item));
  const changed: Build = { ...build, items };
  return computeFigures(changed, []).findings.map(({ code }) => code);
}

describe('what the wiring is told', () => {
  it('is FUSE_ABOVE_DEVICE when a device draws more than its largest fuse', () => {
    // A VHF radio with a largest fuse of 10 A, not continuous.
    const draws = (current: number) =>
      told('option:vhf-radio', () => ({ current: amperes(current) }));
    expect(draws(10)).not.toContain('FUSE_ABOVE_DEVICE');
    expect(draws(10.1)).toContain('FUSE_ABOVE_DEVICE');
  });

  it('is WIRE_REFUSED when not even the thickest cable on the shelf is thick enough', () => {
    const far = (x: number) =>
      told('option:vhf-radio', ({ at }) => ({ at: { ...at, x: metres(x) } }));
    expect(far(4)).not.toContain('WIRE_REFUSED');
    expect(far(80)).toContain('WIRE_REFUSED');
  });

  it('is PANEL_FULL from one circuit more than the panel has places', () => {
    // Two circuits are switched: lights and radio. The bilge pump is wired to the battery.
    const ways = (count: number) =>
      told('option:switch-panel-6', ({ electrics }) => ({
        electrics: { ...electrics, panel: { ways: count } },
      }));
    expect(ways(2)).not.toContain('PANEL_FULL');
    expect(ways(1)).toContain('PANEL_FULL');
  });

  it('is BANK_TOO_SMALL when a day draws more than may be used', () => {
    // Of 70 Ah AGM half may be used, 35 Ah; pump and radio draw 3.8 x 0.1 + 5 x 0.5 = 2.88 Ah, the lights 4 h x current.
    const lights = (current: number) =>
      told('option:nav-lights', () => ({ current: amperes(current) }));
    expect(lights(32.1 / 4)).not.toContain('BANK_TOO_SMALL');
    expect(lights(32.2 / 4)).toContain('BANK_TOO_SMALL');
  });

  it('is nothing without anything electrical', () => {
    const { electrics } = figuresOf('teal-370');
    expect(electrics).toEqual({ notComputed: 'nothing electrical is ordered' });
  });
});
