import { describe, expect, it } from 'vitest';
import {
  drawCapacityPlate,
  type Drawing,
  drawOnTrailer,
  drawPowerCurve,
  type OnTrailerInput,
} from '../../src/draw/index.ts';
import { createFormatter, UNIT_KINDS } from '../../src/units/index.ts';
import { COOT } from './invented-hull.ts';
import { malformed, textsOf } from './read-svg.ts';

const KNOT = UNIT_KINDS.speed.kn;
const HOSTILE = `</text><script>x</script> & "quoted" <b>`;

const curve = (ordered = 'Outboard 20 kW'): Drawing =>
  drawPowerCurve({
    subject: 'the Coot 400',
    format: createFormatter('en-AU', 'metric'),
    lines: [
      {
        name: 'light: 300 kg',
        points: [
          { speed: 10 * KNOT, power: 6000 },
          { speed: 20 * KNOT, power: 14_000 },
        ],
        marks: [
          { speed: 18 * KNOT, power: 12_000, ordered: false },
          { speed: 24 * KNOT, power: 20_000, ordered: ordered !== '' },
        ],
      },
      { name: 'loaded: 500 kg', points: [], marks: [] },
    ],
    ordered,
    fontCss: '',
  });
const plate = (value = '4'): Drawing =>
  drawCapacityPlate({
    standing: 'Draft: for the builder to confirm and sign',
    boat: 'Coot 400',
    facts: [
      { label: 'Most people', value },
      { label: 'Hull identification number', value: '' },
    ],
    cautions: ['Estimated to a method; verify by its test.'],
    fontCss: '',
  });
const onTrailer = (change: Partial<OnTrailerInput> = {}): Drawing =>
  drawOnTrailer({
    hull: COOT,
    winchPost: 1.2,
    axle: 3.9,
    axles: 1,
    trailerLength: 5.5,
    centre: 3.6,
    texts: {
      ball: '48 kg on the ball',
      axles: '436 kg on the wheels',
      winchPost: 'winch post 1.20 m',
      axle: 'axle 3.90 m',
      centre: 'centre of both 3.60 m',
    },
    fontCss: '',
    ...change,
  });
const circles = (svg: string): number => svg.split('<circle').length - 1;

describe.each([
  ['curve of power', () => curve(), () => curve(HOSTILE)],
  ['capacity plate', () => plate(), () => plate(HOSTILE)],
  ['boat on her trailer', () => onTrailer(), () => onTrailer({ hull: { ...COOT, name: HOSTILE } })],
])('the %s', (_name, draw, hostile) => {
  it('is well-formed, says what it shows, and has no number that is none', () => {
    const { svg, alt } = draw();
    expect(malformed(svg)).toBe('');
    expect(alt.length).toBeGreaterThan(40);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it('holds hostile text as text', () => {
    expect(malformed(hostile().svg)).toBe('');
    expect(hostile().svg).not.toContain('<script');
  });
});

describe('the curve of power', () => {
  it('has a mark for each outboard and a ring around the one that is ordered', () => {
    // Two marks, two in the legend; with an ordered one a ring more in each.
    expect(circles(curve('').svg)).toBe(4);
    expect(circles(curve().svg)).toBe(6);
    expect(textsOf(curve().svg)).toContain('as ordered: Outboard 20 kW');
  });

  it('says in words where no outboard makes it plane', () => {
    expect(curve().alt).toContain('Loaded: 500 kg: no outboard makes it plane.');
  });
});

describe('the capacity plate', () => {
  it('says that it is a draft, and leaves a blank blank', () => {
    expect(textsOf(plate().svg)).toContain('Draft: for the builder to confirm and sign');
    expect(plate().alt).toContain('Hull identification number: blank');
  });
});

describe('the boat on her trailer', () => {
  it('has two circles a wheel, one pair for each axle, and the ball', () => {
    expect(circles(onTrailer().svg)).toBe(3);
    expect(circles(onTrailer({ axles: 2 }).svg)).toBe(5);
  });
});
