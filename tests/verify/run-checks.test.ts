import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { byTier, orderChecks, runChecks } from '../../src/verify/index.ts';
import { rowsOf, tierOf } from '../../src/verify/run-checks.ts';
import { orders } from '../demonstration/workspace.ts';

describe('the checks against the published world', () => {
  it('all pass, each with a source and a value', () => {
    const checks = runChecks();
    expect(checks.filter(({ pass }) => !pass)).toEqual([]);
    expect(
      checks.every(({ source, published }) => source !== '' && Number.isFinite(published)),
    ).toBe(true);
    expect(new Set(checks.map(({ area }) => area))).toEqual(
      new Set([
        'units',
        'money',
        'mass',
        'float',
        'drive',
        'limits',
        'tow',
        'laminate',
        'electrics',
        'plan',
        'rows',
      ]),
    );
  });

  it('fail when ours is further off than the tolerance, and when it is no number', () => {
    const one = { area: 'a', name: 'n', source: 's', published: 1, unit: 'm', tolerance: 0.1 };
    const [near, far, none] = runChecks([
      { ...one, ours: () => 1.05 },
      { ...one, ours: () => 1.2 },
      { ...one, ours: () => Number.NaN },
    ]);
    expect([near?.pass, far?.pass, none?.pass]).toEqual([true, false, false]);
  });

  it('lose no row without being told', () => {
    expect(runChecks().at(-1)).toMatchObject({ area: 'rows', pass: true });
    expect(runChecks([rowsOf('rows', 3, 2)])[0]?.pass).toBe(false);
  });

  it('have the tier that their source words, and one had first hand names the place in it', () => {
    expect(tierOf('ISO 1 annex B, second hand')).toBe('second hand');
    expect(tierOf('ISO 1 clause 2 (from memory)')).toBe('from memory');
    expect(tierOf('An act, s 1, worked by hand')).toBe('derived');
    expect(tierOf('A handbook, table 2, as printed')).toBe('first hand');
    const place = /table|appendix|instance|CFR \d|example|flotation/i;
    const vague = runChecks().filter(
      ({ tier, source }) => tier === 'first hand' && !place.test(source),
    );
    expect(vague.map(({ source }) => source)).toEqual([]);
  });

  it('are as many of each tier as the README says', () => {
    const readme = readFileSync(path.resolve(import.meta.dirname, '../../README.md'), 'utf8');
    const told = byTier([...runChecks(), ...orderChecks(orders)]).map(
      ([tier, count]) => `${count} ${tier}`,
    );
    expect(readme.replaceAll(/\s+/g, ' ')).toContain(told.join(', '));
  });
});
