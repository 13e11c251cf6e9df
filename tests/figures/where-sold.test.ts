import { describe, expect, it } from 'vitest';
import { methodsOf, placeOf } from '../../src/figures/limits/jurisdiction.ts';
import { ORDER, YARD } from '../read/samples.ts';
import { resolveSample } from '../resolve/invented.ts';

const buildIn = (locale: string, yard = '', order = '') => {
  const { build } = resolveSample({
    'catalogue/yard.yaml': YARD.replace('en-AU', locale).replace('limits: {', `${yard}limits: {`),
    'orders/t-1.yaml': ORDER + order,
  });
  if (!build) throw new Error(`no build in ${locale}`);
  return build;
};

describe('whose rules are read where a shop names none', () => {
  it.each([
    ['en-AU', 'AU', ['australian', 'iso']],
    ['en-NZ', 'NZ', ['australian', 'iso']],
    ['en-GB', 'UK-EU', ['iso']],
    ['en-US', 'US', ['cfr-183', 'iso']],
  ])('%s: those of its region', (locale, place, methods) => {
    const build = buildIn(locale);
    expect(placeOf(build)).toEqual({ place });
    expect(methodsOf(build.yard)).toEqual(methods);
  });
  it('are the yard’s, then the order’s, where they name them', () => {
    expect(placeOf(buildIn('en-US', 'tow: { place: NZ }\n'))).toEqual({ place: 'NZ' });
    expect(placeOf(buildIn('en-US', '', 'tow: { place: UK-EU }\n'))).toEqual({
      place: 'UK-EU',
    });
  });

  it('are never guessed: a place without rules says what is lacking, and is rated by ISO', () => {
    const build = buildIn('en-CA');
    expect(placeOf(build)).toEqual({
      notComputed: 'the road rules of CA are not known here, and no tow: place: is given',
      because: 'data missing',
      field: 'tow.place',
    });
    expect(methodsOf(build.yard)).toEqual(['iso']);
    expect(placeOf(buildIn('en-CA', 'tow: { place: US }\n'))).toEqual({ place: 'US' });
  });
});
