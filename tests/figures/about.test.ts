import { describe, expect, it } from 'vitest';
import { figuresData } from '../../src/figures/index.ts';
import { factsAbout, FINDING_CODES, type FindingCode } from '../../src/findings/index.ts';
import { orders } from '../demonstration/workspace.ts';

const names = new Set(
  orders.flatMap(({ figures }) => (figures ? Object.keys(figuresData(figures)) : [])),
);
const matches = (about: string): boolean => {
  const pattern = new RegExp(`^${about.replaceAll('.', '\\.').replaceAll('*', '.+')}$`);
  return [...names].some((name) => pattern.test(name));
};
const codes = (Object.keys(FINDING_CODES) as FindingCode[]).filter(
  (code) => factsAbout(code).length > 0,
);

describe('what a finding is about', () => {
  it.each(codes)('is a fact that the orders of the demonstration have: %s', (code) => {
    expect(factsAbout(code).filter((about) => !matches(about))).toEqual([]);
  });

  it('is said of every finding that compares a figure with a limit', () => {
    const compared = codes.filter((code) => /OVER|LOW|HIGH|WEAK|SHORT|LONG|WIDE/.test(code));
    expect(compared.length).toBeGreaterThan(15);
    expect(factsAbout('LOAD_OVER_RATING')).toEqual(['mass.load']);
    expect(factsAbout('YAML_SYNTAX')).toEqual([]);
  });
});
