import { describe, expect, it } from 'vitest';
import {
  customerAlternative,
  customerFigures,
  customerVariation,
} from '../../src/figures/index.ts';
import { byNumber, orders } from '../demonstration/workspace.ts';
import { inventedFigures, SECRETS } from '../documents/invented-build.ts';

const text = (value: unknown): string =>
  JSON.stringify(value, (_, one: unknown) => (typeof one === 'bigint' ? String(one) : one));

/** Fields that hold what the shop alone may know; afloat a margin is one of stability, and on the road a place is a country. */
const SECRET =
  /"(cost|unitCost|otherCost|fixedPrice|marginShare|marginClass|margins|class|rates|wastage|labour|overhead|parts|supplier|suppliers|notes?|remedy|allow|free)":/;

describe('the figures for a customer', () => {
  it('have lost what was planted for the shop, not only hidden it', () => {
    const all = inventedFigures();
    const said = text(customerFigures(all));
    for (const secret of SECRETS) {
      expect(text(all)).toContain(secret);
      expect(said).not.toContain(secret);
    }
  });

  it.each(byNumber)('of %s have no cost, rate, margin, part or note', (_, figures) => {
    const { float: _float, tow: _tow, ...rest } = customerFigures(figures);
    expect(text(rest)).not.toMatch(SECRET);
    expect(text(rest)).not.toMatch(/"margin":/);
    expect(text(figures)).toMatch(SECRET);
  });

  it('are as careful with every alternative and variation', () => {
    const alternatives = orders.flatMap((one) => one.alternatives);
    const variations = orders.flatMap((one) => one.variations);
    expect(alternatives.length * variations.length).toBeGreaterThan(0);
    const said = text([alternatives.map(customerAlternative), variations.map(customerVariation)]);
    expect(said).not.toMatch(SECRET);
    expect(said).not.toMatch(/"(margin|figures|add|place)":/);
    expect(said).toContain('"differences":');
  });

  it('know whether anything electric is in the boat, which they no longer can see', () => {
    expect(customerFigures(inventedFigures()).isWired).toBe(false);
    const byName = new Map(byNumber);
    const wired = byName.get('DC-2606');
    expect(wired && customerFigures(wired).isWired).toBe(true);
  });
});
