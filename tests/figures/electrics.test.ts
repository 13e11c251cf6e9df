import { describe, expect, it } from 'vitest';
import {
  computeFigures,
  type ElectricsFigures,
  type Figures,
  figuresData,
} from '../../src/figures/index.ts';
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

  it('adds a day’s use up from its circuits, each at its own voltage', () => {
    const { seriesBanks, volts } = electricsOf(figures);
    const day = (at: number): number =>
      circuits
        .filter((one) => one.volts === at)
        .reduce((sum, { row }) => sum + row.circuit.current * row.circuit.hoursADay, 0);
    expect(budget.ampereHours).toBeCloseTo(day(volts), 9);
    for (const one of seriesBanks) expect(one.budget.ampereHours).toBeCloseTo(day(one.volts), 9);
    expect(new Set(circuits.map((one) => one.volts))).toEqual(
      new Set([volts, ...seriesBanks.map((one) => one.volts)]),
    );
  });

  it('counts every battery in one bank', () => {
    const { bank, seriesBanks, starter } = electricsOf(figures);
    const banks = [bank, ...seriesBanks.map((one) => one.bank)].flatMap((one) =>
      'notComputed' in one ? [] : [one],
    );
    const apart = starter && !banks.some(({ items }) => items.includes(starter.battery)) ? 1 : 0;
    const ordered = figures.build.items
      .filter(({ electrics }) => electrics?.battery)
      .reduce((sum, { quantity }) => sum + quantity, 0);
    expect(banks.reduce((sum, one) => sum + one.batteries, 0) + apart).toBe(ordered);
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

  it('is VOLTAGE_WITHOUT_BANK when a motor of 24 V has one house battery, and not with two', () => {
    const motor = (batteries: number) => {
      const { electrics, findings } = figuresOf(
        'curlew-560',
        `options: [battery-start, { option: battery-agm-100, quantity: ${batteries} }, switch-panel-6, nav-lights, bow-mount-plate, bow-motor-360n]\n`,
      );
      if ('notComputed' in electrics) throw new Error(electrics.notComputed);
      return { electrics, codes: findings.map(({ code }) => code) };
    };
    expect(motor(1).codes).toContain('VOLTAGE_WITHOUT_BANK');
    // Two in series are 100 Ah at 24 V; the house then lives on the starting battery of 70 Ah.
    const two = motor(2);
    expect(two.codes).not.toContain('VOLTAGE_WITHOUT_BANK');
    expect(two.electrics.seriesBanks).toMatchObject([
      { volts: 24, bank: { batteries: 2, rated: 100, usable: 50 } },
    ]);
    expect(two.electrics.bank).toMatchObject({ batteries: 1, rated: 70 });
    expect(motor(3).electrics.bank).toMatchObject({ batteries: 1, rated: 100 });
  });

  it('leads every cable from the batteries of its own voltage', () => {
    const { electrics } = figuresOf(
      'curlew-560',
      'options: [battery-start, { option: battery-agm-100, quantity: 2 }, switch-panel-6, nav-lights, bow-mount-plate, bow-motor-360n]\n',
    );
    if ('notComputed' in electrics) throw new Error(electrics.notComputed);
    // Both house batteries are the motor's: the panel lives on the starting battery by the transom.
    const { feeder } = electrics;
    const panel = 1.2 * (0.34 * 5.6 + 0.04 * 2.25 + 0.34 * 0.89);
    expect(feeder && 'row' in feeder && feeder.row.circuit.run).toBeCloseTo(panel, 9);
    const motor = electrics.circuits.find(({ volts }) => volts === 24);
    const bow = 1.2 * (0.69 * 5.6 + 0.26 * 2.25 + 0.69 * 0.89);
    expect(motor?.row.circuit.run).toBeCloseTo(bow, 9);
  });

  it('is nothing without anything electrical', () => {
    const { electrics } = figuresOf('teal-370');
    expect(electrics).toEqual({ notComputed: 'nothing electrical is ordered' });
  });
});

describe('the starter cable as data', () => {
  it('is at least what the engine’s maker asks for, as the build sheet has it', () => {
    const figures = figuresOf(
      'dunlin-430',
      'options: [battery-start, switch-panel-6, steering-cable, side-console, control-side]\noutboard: { model: outboard-29-4, shaft: long }\n',
    );
    const { starter } = electricsOf(figures);
    expect(starter?.makersMm2).toBeCloseTo(25, 9);
    expect(starter && 'metricMm2' in starter.cable && starter.cable.metricMm2).toBeLessThan(25);
    expect(figuresData(figures)['wire.starter.area']?.value).toBeCloseTo(25, 9);
  });
});

describe('the hours of a bow motor', () => {
  const hours = (motor: string, batteries: number): unknown =>
    figuresOf(
      'curlew-560',
      `options: [battery-start, { option: battery-agm-100, quantity: ${batteries} }, switch-panel-6, nav-lights, bow-mount-plate, ${motor}]\n`,
    ).drive.bowMotor?.time;
  const used = (time: unknown): number => {
    const { hours: of, current } = time as { readonly hours: number; readonly current: number };
    return of * current;
  };

  it('at 24 V are those of its own row of two, whatever else the house has', () => {
    // Two of 1200 Wh, half of it used, at 24 V: 50 Ah.
    expect(used(hours('bow-motor-360n', 2))).toBeCloseTo(50, 6);
    expect(used(hours('bow-motor-360n', 3))).toBeCloseTo(50, 6);
    expect(hours('bow-motor-360n', 1)).toEqual({
      notComputed: 'no batteries in series make its voltage',
    });
  });

  it('at the boat’s own voltage are those of every battery of the house', () => {
    expect(used(hours('bow-motor-250n', 1))).toBeCloseTo(50, 6);
    expect(used(hours('bow-motor-250n', 3))).toBeCloseTo(150, 6);
  });
});
