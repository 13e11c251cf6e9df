import { describe, expect, it } from 'vitest';
import { computeFigures } from '../../src/figures/index.ts';
import { driftOf } from '../../src/issued/index.ts';
import { moneyToText } from '../../src/money/index.ts';
import { PARTS, YARD } from '../read/samples.ts';
import { resolveSample } from '../resolve/invented.ts';
import { sentOf } from './sent.ts';

const RATE = 'exchange:\n  - { currency: USD, rate: 1.50, date: 2026-02-02 }\n';
const LIST = 'catalogue/parts/acme-parts.csv';
const figured = (yard: string, parts: string) => {
  const { build, findings } = resolveSample({ 'catalogue/yard.yaml': yard, [LIST]: parts });
  if (!build) throw new Error(findings.map(({ received }) => received).join());
  return computeFigures(build, []);
};
const drift = (was: ReturnType<typeof figured>, now: ReturnType<typeof figured>) => {
  const drifted = driftOf(sentOf(was), now);
  if ('notComputed' in drifted) return drifted;
  return drifted.rows.map((row) => [
    row.key,
    row.causes.map(({ cause, amount, details }) => [cause, moneyToText(amount), ...details]),
  ]);
};

describe('what a sent quote would cost today', () => {
  // The cloth of the hull: 12 m2 x 1.1 x 6.80 AUD or USD, over 0.72, with 10 % of tax.
  const abroad = PARTS.replace('6.80,AUD', '6.80,USD');

  it('when a part is priced in another currency than it was', () => {
    const rows = drift(figured(YARD, PARTS), figured(YARD + RATE, abroad));
    // 89.76 -> 134.64; the hull 3124.67 -> 3187.00, with tax 3437.14 -> 3505.70
    expect(rows).toEqual([['shell', [['price list', '68.56', 'AC-1 6.80 AUD, now 6.80 USD']]]]);
  });
  it('names what a price is made with, and nothing else of the yard file', () => {
    const now = YARD.replace('laminate: 50', 'laminate: 60').concat('priceJump: 10%\n');
    // 20 h at 10.00 more: the hull 3124.67 -> 3402.44, its tax 312.47 -> 340.24
    expect(drift(figured(YARD, PARTS), figured(now, PARTS))).toEqual([
      ['shell', [['rate', '305.54', 'rates.laminate 50, now 60']]],
    ]);
  });
  it('when an exchange rate has moved', () => {
    const rows = drift(
      figured(YARD + RATE, abroad),
      figured(YARD + RATE.replace('1.50', '1.60'), abroad),
    );
    // 134.64 -> 143.62
    expect(rows).toEqual([['shell', [['rate', '13.72', 'exchange.USD 1.5, now 1.6']]]]);
  });
});
