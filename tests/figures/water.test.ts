import { describe, expect, it } from 'vitest';
import { computeFigures, conditionOf, type Figures } from '../../src/figures/index.ts';
import { CHINED, ORDER, YARD } from '../read/samples.ts';
import { readYaml, validate } from '../../src/read/index.ts';
import { yardSchema } from '../../src/schema/index.ts';
import { resolveSample } from '../resolve/invented.ts';
import { figuresOf as boxOf } from './box-boat.ts';

const BOW_MOTOR = `group: Gear
order: 1
options:
  - { id: bow-motor, name: Bow motor, class: fit-out, free: For a test., current: 50 A, bowMotor: { thrust: 250 N, voltage: 12 V }, mass: 20 kg, at: { x: 3.4 m, z: 0.5 m } }
`;

interface Said {
  readonly yard?: string;
  readonly hull?: string;
  readonly order?: string;
}

/** A boat of the samples with the water that each file says, or none. */
function figuresIn({ yard, hull, order }: Said): Figures {
  const line = (water: string | undefined): string => (water ? `water: ${water}\n` : '');
  const { build, findings } = resolveSample({
    'orders/t-1.yaml': `${ORDER.replace('  people: 3\n', `  people: 3\n${order ? `  ${line(order)}` : ''}`).replace(/options:[\s\S]*?fuel/, 'options: [bow-motor]\nfuel')}outboard: { model: outboard-20, shaft: long }\n`,
    'catalogue/hulls/tern-400.yaml': `${CHINED}${line(hull)}`,
    'catalogue/options/seats.yaml': BOW_MOTOR,
    'catalogue/yard.yaml': YARD.replace('water: sea\n', line(yard)),
  });
  if (!build) throw new Error(findings.map(({ code, received }) => `${code} ${received}`).join());
  return computeFigures(build, []);
}

const figures = {
  fresh: figuresIn({ order: 'fresh' }),
  sea: figuresIn({ order: 'sea' }),
  both: figuresIn({ order: 'both' }),
};

const freeboardOf = ({ float: { afloat } }: Figures): number =>
  (afloat && conditionOf(afloat, 'fully loaded')?.state?.freeboards.lowest.freeboard) ?? Number.NaN;

function speedOf({ drive }: Figures): number {
  const speed = drive.loadings.find(({ name }) => name === 'loaded')?.speed;
  return speed && 'speed' in speed ? speed.speed.likely : Number.NaN;
}

function forceOf({ drive: { bowMotor } }: Figures): number {
  const needed = bowMotor?.needed;
  return needed && 'needed' in needed ? needed.needed : Number.NaN;
}

describe('the water that a boat is used in', () => {
  it('is what the order says, else the hull, else the yard; both where nobody says', () => {
    const water = (said: Said): string => figuresIn(said).build.order.boat.water;
    expect(water({ order: 'fresh', hull: 'sea', yard: 'sea' })).toBe('fresh');
    expect(water({ hull: 'fresh', yard: 'sea' })).toBe('fresh');
    expect(water({ yard: 'fresh' })).toBe('fresh');
    expect(water({})).toBe('both');
  });

  it('moves every draught by the 2.5 % of its density, near the waterline of a wall-sided boat', () => {
    const sinks = freeboardOf(figures.sea) - freeboardOf(figures.fresh);
    const { afloat } = figures.sea.float;
    const load = afloat && conditionOf(afloat, 'fully loaded')?.load.mass;
    const perMetre = (afloat?.perCentimetre?.sinks ?? Number.NaN) * 100;
    // What fresh water carries less at the same waterline, over the waterplane; trim moves the ends a little.
    const wanted = ((load ?? Number.NaN) * 0.025) / perMetre;
    expect(sinks).toBeGreaterThan(0);
    expect(Math.abs(sinks - wanted)).toBeLessThan(0.1 * wanted + 0.0005);
  });

  it('is the worse of the two for each figure where it is both', () => {
    for (const [of, worse] of [
      [freeboardOf, Math.min],
      [speedOf, Math.min],
      [forceOf, Math.max],
    ] as const) {
      expect(of(figures.fresh)).not.toBe(of(figures.sea));
      expect(of(figures.both)).toBe(worse(of(figures.fresh), of(figures.sea)));
    }
  });

  it('is one water for all that floats, and one for all that is driven, each by its name', () => {
    expect(figures.both.float.afloat?.water).toBe('fresh');
    expect(figures.both.float.afloat).toEqual({
      ...figures.fresh.float.afloat,
      other: expect.objectContaining({ water: 'sea', crew: figures.sea.float.afloat?.crew }),
    });
    const slower = speedOf(figures.fresh) < speedOf(figures.sea) ? 'fresh' : 'sea';
    expect(figures.both.drive.water).toBe(slower);
    expect(figures.both.drive.loadings).toEqual(figures[slower].drive.loadings);
  });

  it('is one field: of the two that there were, each is told what stands for it', () => {
    const told = (from: string, to: string): readonly string[] => {
      const text = YARD.replace(from, to);
      const { findings } = validate(yardSchema, readYaml(text, 'yard.yaml'));
      return findings.map(({ code, received, remedy }) => `${code} ${received}: ${remedy}`);
    };
    expect(told('water: sea\n', 'water: 1025 kg/m3\n')).toEqual([
      'WRONG_VALUE "1025 kg/m3": Choose one of those named',
    ]);
    expect(told('water: sea\n', 'drive: { water: sea }\n')).toEqual([
      'UNKNOWN_KEY "water:": Write it once, beside "drive:" and not in it: "water: fresh", "sea" or "both"',
    ]);
  });
});

it('is screened in the other water too: a deep narrow box has less stability in sea water, where it floats higher', () => {
  const narrow = (height: number): Figures =>
    boxOf({
      order: `${ORDER.replace('people: 3', 'people: 1\n  water: both')}extras: [{ name: Weight, class: fit-out, free: For a test., mass: 1100 kg, at: { x: 2 m, z: ${height} m } }]\n`,
      hull: [
        [/\[0\.8,/g, '[0.4,'],
        [/0\.6\]/g, '0.9]'],
      ],
    });
  const least = ({ float: { afloat } }: Figures): number => {
    if (!afloat) return Number.NaN;
    const names = ['with engine', 'performance test', 'fully loaded'] as const;
    return Math.min(
      ...names.map(
        (name) => conditionOf(afloat, name)?.state?.metacentricHeight?.byForm ?? Number.NaN,
      ),
    );
  };
  // GM falls evenly with the height of the weight: at this one it is just above nothing in fresh water.
  const [low, high] = [least(narrow(0.2)), least(narrow(0.21))];
  const height = 0.2 + (0.01 * (low - 0.0005)) / (low - high);
  const found = narrow(height);
  expect(found.float.afloat).toMatchObject({ water: 'fresh', other: { water: 'sea' } });
  expect(least(found)).toBeCloseTo(0.0005, 5);
  const lolls = found.findings.filter(({ code }) => code === 'FLOAT_LOLLS');
  expect(lolls.length).toBeGreaterThan(0);
  expect(lolls.every(({ received }) => received.endsWith(', in sea water'))).toBe(true);
});
