import { describe, expect, it } from 'vitest';
import { runChecks } from '../../src/verify/index.ts';

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
      ]),
    );
    expect(checks.length).toBeGreaterThanOrEqual(30);
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
});
