import { describe, expect, it } from 'vitest';
import { computeFigures } from '../../src/figures/index.ts';
import { moneyToText } from '../../src/money/index.ts';
import { HULL, ORDER, PARTS, YARD } from '../read/samples.ts';
import { resolveSample, type ResolvedSample } from './invented.ts';

const LIST = 'catalogue/parts/acme-parts.csv';
const EARLY = PARTS.replace(',6.80,AUD,0.46,2026-02-02', ',6.80,AUD,0.46,2025-11-03');
const TWO_ROWS = `${EARLY}AC-1,"Cloth, 450 g/m2",fabric,m2,7.40,AUD,0.46,2026-03-02
`;
const on = (day: string) => ({ 'orders/t-1.yaml': ORDER.replace('2026-03-14', day) });
const clothOf = ({ build }: ResolvedSample) => {
  const cloth = build?.items[0]?.parts[0];
  return cloth && `${moneyToText(cloth.unitCost)} ${cloth.priceDate}`;
};
const costOf = ({ build }: ResolvedSample) => {
  const [shell] = build ? computeFigures(build, []).price.lines : [];
  return shell && moneyToText(shell.materials);
};

describe('an order has the prices of its day', () => {
  it.each([
    ['2026-03-01', '6.80 2025-11-03', []],
    ['2026-03-02', '7.40 2026-03-02', []],
    ['2026-06-01', '7.40 2026-03-02', []],
    ['2025-11-03', '6.80 2025-11-03', []],
    ['2025-11-02', '6.80 2025-11-03', ['PART_PRICE_LATER orders/t-1.yaml:4:3']],
  ])('on %s', (day, cloth, spots) => {
    const sample = resolveSample({ [LIST]: TWO_ROWS, ...on(day) });
    expect(clothOf(sample)).toBe(cloth);
    expect(sample.spots).toEqual(spots);
  });

  it('that of its quote once there is one', () => {
    const sample = resolveSample({
      [LIST]: TWO_ROWS,
      'orders/t-1.yaml': ORDER.replace('2026-03-14', '2026-02-10\n  quoted: 2026-03-20'),
    });
    expect(clothOf(sample)).toBe('7.40 2026-03-02');
  });

  it('and an old row is old only where no newer one is', () => {
    const old = resolveSample({ [LIST]: EARLY, ...on('2026-06-01') });
    expect(old.spots).toEqual([`PART_PRICE_OLD ${LIST}:2:48`]);
  });
});

describe('a part priced in another currency', () => {
  const foreign = { [LIST]: PARTS.replace('6.80,AUD', '6.80,USD') };
  const rates = (rows: string) => ({ 'catalogue/yard.yaml': `${YARD}exchange:\n${rows}` });
  const RATE = '  - { currency: USD, rate: 1.50, date: 2026-02-02, buffer: 4% }\n';

  it('costs what the rate of the day with its buffer makes it', () => {
    // 12 m2 x 1.10 x 6.80 x 1.50 x 1.04
    const sample = resolveSample({ ...foreign, ...rates(RATE) });
    expect(costOf(sample)).toBe('140.03');
    expect(sample.spots).toEqual([]);
  });
  it('without a rate is left out of no price: the order says so', () => {
    const { build, findings } = resolveSample(foreign);
    expect(build).toBeUndefined();
    expect(findings.map(({ code, received }) => [code, received])).toEqual([
      ['UNKNOWN_ID', 'the part "AC-1", which has mistakes of its own'],
    ]);
  });
  it('has the newest rate that is not later', () => {
    const later = `${RATE}  - { currency: USD, rate: 1.60, date: 2026-03-20 }\n`;
    expect(costOf(resolveSample({ ...foreign, ...rates(later) }))).toBe('140.03');
    const sample = resolveSample({ ...foreign, ...rates(later), ...on('2026-03-20') });
    expect(costOf(sample)).toBe('143.62');
  });
  it('warns of a rate that is later, or too old', () => {
    const at = (date: string) =>
      resolveSample({ ...foreign, ...rates(RATE.replace('2026-02-02', date)) }).spots;
    expect(at('2026-03-15')).toEqual(['EXCHANGE_DATE orders/t-1.yaml:4:3']);
    expect(at('2025-09-15')).toEqual([]);
    expect(at('2025-09-14')).toEqual(['EXCHANGE_DATE orders/t-1.yaml:4:3']);
  });
});

describe('the moulds', () => {
  it('are paid back by the boats that are expected of them, beside their wear', () => {
    const hull = 'catalogue/hulls/tern-400.yaml';
    const { build } = resolveSample({ [hull]: `${HULL}mould: { cost: 40000, boats: 30 }\n` });
    const [shell] = build?.items ?? [];
    expect(shell?.otherCost && moneyToText(shell.otherCost)).toBe('1733.33');
  });
});
