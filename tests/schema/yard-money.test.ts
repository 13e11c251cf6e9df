import { rmSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { computeFigures } from '../../src/figures/index.ts';
import { describePlace } from '../../src/findings/index.ts';
import { moneyToText } from '../../src/money/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import { decimalToShortText } from '../../src/units/index.ts';
import { OPTIONS, ORDER, workspaceOf, YARD } from '../read/samples.ts';
import { resolveSample } from '../resolve/invented.ts';

function spotsOf(yard: string): readonly string[] {
  const folder = workspaceOf({ 'catalogue/yard.yaml': yard });
  const { findings, sources } = readWorkspace(folder);
  rmSync(folder, { recursive: true });
  return findings.map(
    ({ code, place, received }) =>
      `${code} ${describePlace(place, sources.get(place.file)).split(':')[1]} ${received}`,
  );
}
const figuresOf = (yard: string, order = '') => {
  const { build, findings } = resolveSample({
    'catalogue/yard.yaml': yard,
    'orders/t-1.yaml': ORDER + order,
  });
  if (!build) throw new Error(findings.map(({ received }) => received).join());
  return computeFigures(build, []);
};

const TRADES = `trades:
  laminator: { name: Laminator, wage: 33.00, onCosts: 25%, productive: 80% }
`;
const TRADED = YARD.replace('  laminate: 50\n', '')
  .replace('  laminate: { does: Work. }', '  laminate: { does: Work., trade: laminator }')
  .concat(TRADES);

describe('the rate of a stage', () => {
  it('is that of its trade, loaded', () => {
    const { price } = figuresOf(TRADED);
    expect(price.rates.map(({ stage, rate }) => [stage, moneyToText(rate)])).toEqual([
      ['laminate', '51.56'],
    ]);
    // 20 h x 51.56
    expect(price.lines[0] && moneyToText(price.lines[0].labour)).toBe('1031.20');
  });
  it('is its own where it has one', () => {
    const { price } = figuresOf(TRADED.replace('rates:\n', 'rates:\n  laminate: 60\n'));
    expect(price.rates.map(({ rate }) => moneyToText(rate))).toEqual(['60.00']);
  });
  it('must be there, or its trade', () => {
    expect(spotsOf(YARD.replace('  laminate: 50\n', ''))).toEqual([
      expect.stringMatching(/^MISSING_KEY \d+ no "laminate:"$/),
    ]);
    expect(spotsOf(TRADED.replace('trade: laminator', 'trade: laminater'))).toEqual([
      expect.stringMatching(/^UNKNOWN_ID \d+ the trade "laminater"$/),
    ]);
  });
});

describe('a stage that a shop has no words for', () => {
  const WITHOUT = YARD.replace('  infusion: 50\n', '').replace('  infusion: { does: Work. }\n', '');

  it('is left out by a shop that does not do it', () => {
    expect(spotsOf(WITHOUT)).toEqual([]);
    expect(figuresOf(WITHOUT).price.rates.map(({ stage }) => stage)).toEqual(['laminate']);
  });
  it('costs something where hours are worked in it: UNKNOWN_ID at the hours', () => {
    const { spots } = resolveSample({
      'catalogue/yard.yaml': WITHOUT,
      'catalogue/options/seats.yaml': OPTIONS.replace(
        'name: Seat, class: fit-out',
        'name: Seat, class: fit-out, hours: [{ stage: infusion, hours: 2 }]',
      ),
      'orders/t-1.yaml': `${ORDER}extras:
  - { name: Shelf, class: fit-out, hours: [{ stage: infusion, hours: 1 }] }
`,
    });
    expect(spots).toEqual([
      'UNKNOWN_ID orders/t-1.yaml:17:53',
      'UNKNOWN_ID orders/t-1.yaml:1:1',
      'UNKNOWN_ID catalogue/options/seats.yaml:4:62',
    ]);
  });
});

describe('the first boats of a hull', () => {
  const learning = `learning: { factors: [1.3, 1.1], stages: [laminate, infusion] }\nrework: 5%\n`;
  const hoursOf = (order: string) => {
    const { price, stageHours } = figuresOf(YARD + learning, order);
    const [shell] = price.lines;
    return [
      shell && decimalToShortText(shell.costedHours),
      ...stageHours.map(({ hours }) => decimalToShortText(hours)),
    ];
  };
  // 20 h of lamination; rework is paid for and not planned.
  it.each([
    ['firstOfKind: true\n', ['27.3', '26']],
    ['hullCount: 1\n', ['27.3', '26']],
    ['hullCount: 2\n', ['23.1', '22']],
    ['hullCount: 3\n', ['21', '20']],
    ['', ['21', '20']],
  ])('%j', (order, hours) => {
    expect(hoursOf(order)).toEqual(hours);
  });
});

describe('payments', () => {
  const paid = (stages: string) =>
    YARD.replace(/payments:\n(?: {2}- .*\n)+/, `payments:\n${stages}`);
  it('may be fixed amounts beside shares that make the whole', () => {
    const yard = paid(`  - { name: Deposit, when: On order, event: order, amount: 1000 }
  - { name: Balance, when: On handover, event: handover, share: 100% }
`);
    const { price } = figuresOf(yard);
    expect(price.payments.map(({ event, amount }) => [event, moneyToText(amount)])).toEqual([
      ['order', '1000.00'],
      ['handover', '2557.64'],
    ]);
  });
  it('whose shares do not make the whole are a mistake', () => {
    const [spot] = spotsOf(paid('  - { name: Deposit, when: On order, amount: 1000 }\n'));
    expect(spot).toMatch(/^WRONG_VALUE \d+ shares that make 0 %/);
  });
});
