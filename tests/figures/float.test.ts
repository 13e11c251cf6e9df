import { describe, expect, it } from 'vitest';
import { conditionOf, type Figures, figuresData } from '../../src/figures/index.ts';
import { figuresOf as demonstration, orders } from '../demonstration/workspace.ts';
import { OPTIONS, YARD } from '../read/samples.ts';
import { codes, DEGREE, figuresOf, lines, present, weighted } from './box-boat.ts';

describe('a box of a boat', () => {
  it('floats as a hand works it out', () => {
    const light = conditionOf(present(figuresOf({}).float?.afloat), 'light');
    // 140 kg and 5 % over 4 m x 1.6 m x 1025 kg/m3; BM = b2 / (12 d).
    const draught = (140 * 1.05) / (4 * 1.6 * 1025);
    const { state, load } = present(light);
    expect(((state?.draughtAft ?? 0) + (state?.draughtFore ?? 0)) / 2).toBeCloseTo(draught, 4);
    expect(state?.metacentricHeight?.byForm).toBeCloseTo(
      draught / 2 + 1.6 ** 2 / (12 * draught) - load.centre.z,
      1,
    );
  });

  it('has no finding', () => {
    expect(codes({})).toEqual([]);
  });
});

describe('what is found of her lines', () => {
  it('LINES_UNSOUND: a section that crosses itself; nothing more is said of her', () => {
    const crossed = { hull: [lines('[[0, 0], [0.8, 0], [0.2, 0.3], [0.8, -0.3]]')] };
    const figures = figuresOf(crossed);
    expect(figures.findings.map(({ code }) => code)).toContain('LINES_UNSOUND');
    expect(figures.float?.afloat).toBeUndefined();
    expect(figuresData(figures)['float.outcome']?.value).toContain('not computed');
  });
  it('LINES_ODD: heights that fall towards the sheer, not such as stay', () => {
    expect(codes({ hull: [lines('[[0, 0.01], [0.8, 0], [0.8, 0.6]]')] })).toEqual(['LINES_ODD']);
    expect(codes({})).toEqual([]);
  });
  it('HULL_WITHOUT_LINES: nothing is said of how she floats, and nothing else is missing', () => {
    const figures = figuresOf({ hull: [[/lines:\n(?: {2}- .*\n)+/, '']] });
    expect(figures.findings.map(({ code }) => code)).toEqual(['HULL_WITHOUT_LINES']);
    expect(figuresData(figures)['float.outcome']?.value).toContain('not computed');
  });
  it('LINES_DIFFER: further than 2 % from the declared beam', () => {
    expect(codes({ hull: [['beam: 1.6 m', 'beam: 1.56 m']] })).toEqual(['LINES_DIFFER']);
    expect(codes({ hull: [['beam: 1.6 m', 'beam: 1.57 m']] })).toEqual([]);
  });
});

describe('what is found of her volume', () => {
  // The box of 4 m by 1.6 m by 0.6 m encloses 3.84 m3.
  const declared = (volume: number): readonly [string, string] => [
    'shaft: long\nclass: hull',
    `enclosedVolume: ${volume} m3\nshaft: long\nclass: hull`,
  ];
  it('LINES_DIFFER: further than 2 % from the declared volume, either way', () => {
    for (const [outside, inside] of [
      [3.84 / 1.021, 3.84 / 1.019],
      [3.84 / 0.979, 3.84 / 0.981],
    ] as const) {
      const { findings } = figuresOf({ hull: [declared(outside)] });
      expect(findings.map(({ code }) => code)).toEqual(['LINES_DIFFER']);
      expect(findings[0]?.received).toContain('volume 3.840\u00A0m³');
      expect(codes({ hull: [declared(inside)] })).toEqual([]);
    }
  });
});

describe('what is found of her loaded as ordered', () => {
  const opening = (height: string): readonly [RegExp, string] => [
    /openings: .*/,
    `openings: [{ name: scupper, at: { x: 0, z: ${height} } }]`,
  ];
  it('FLOAT_SWAMPED: an opening under the water, not one that stands above it', () => {
    const scupper = conditionOf(
      present(figuresOf({ hull: [opening('0.5 m')] }).float?.afloat),
      'fully loaded',
    )?.state?.freeboards.lowest;
    expect(scupper?.name).toBe('scupper');
    const water = 0.5 - (scupper?.freeboard ?? 0);
    expect(codes({ hull: [opening(`${(water - 0.003).toFixed(3)} m`)] })).toContain(
      'FLOAT_SWAMPED',
    );
    expect(codes({ hull: [opening(`${(water + 0.003).toFixed(3)} m`)] })).not.toContain(
      'FLOAT_SWAMPED',
    );
  });
  it('FLOAT_NOT_UPRIGHT: a weight high above her turns her over, the same low down does not', () => {
    const found = codes({ order: weighted('{ x: 1.8 m, z: 12 m }', '150 kg') });
    expect(found).toContain('FLOAT_NOT_UPRIGHT');
    expect(codes({ order: weighted('{ x: 1.8 m, z: 0.2 m }', '150 kg') })).not.toContain(
      'FLOAT_NOT_UPRIGHT',
    );
  });
  it('FLOAT_LOLLS: GM just below zero fully loaded, not just above; stiff in every other condition', () => {
    // Only fully loaded is the gear aboard: 3 x 60 kg of it, over the middle of the box, as high as the test wants.
    const yard = YARD.replace('gearPerPerson: 10 kg', 'gearPerPerson: 60 kg');
    const at = (height: number) =>
      figuresOf({
        yard,
        hull: [
          [
            'shaft: long\nclass: hull',
            `gearAt: { x: 2 m, z: ${height.toFixed(4)} m }\nshaft: long\nclass: hull`,
          ],
          ['load: 450 kg', 'load: 900 kg'],
        ],
      });
    const height = (
      z: number,
      name: 'fully loaded' | 'with engine' | 'performance test',
    ): number => {
      const found = conditionOf(present(at(z).float?.afloat), name);
      return present(found?.state?.metacentricHeight).byForm;
    };
    // Upright the gear's height changes nothing but GM, by its share of all mass for each metre.
    const { mass } = present(conditionOf(present(at(1).float?.afloat), 'fully loaded')).load;
    const none = 1 + height(1, 'fully loaded') / (180 / mass);
    const lolls = (figures: Figures) =>
      figures.findings.filter(({ code }) => code.startsWith('FLOAT_'));
    const [above, below] = [at(none + 0.02), at(none - 0.02)];
    expect(lolls(above).map(({ code, received }) => [code, received])).toEqual([
      ['FLOAT_LOLLS', expect.stringMatching(/^fully loaded: GM/)],
    ]);
    expect(lolls(below)).toEqual([]);
    for (const name of ['with engine', 'performance test'] as const) {
      expect(height(none + 0.02, name)).toBeGreaterThan(0.3);
    }
    expect(height(none - 0.02, 'fully loaded')).toBeCloseTo((0.02 * 180) / mass, 3);
  });
  it('LIST_AT_REST: more than a degree, not less', () => {
    const heel = (y: number) => {
      const figures = figuresOf({ order: weighted(`{ x: 1.8 m, y: ${y} m, z: 0.3 m }`) });
      const afloat = present(figures.float?.afloat);
      return {
        degrees: (conditionOf(afloat, 'fully loaded')?.state?.heel ?? 0) / DEGREE,
        found: figures.findings.map(({ code }) => code),
      };
    };
    const { degrees } = heel(0.1);
    expect(heel(0.105 / degrees).found).toContain('LIST_AT_REST');
    expect(heel(0.095 / degrees).found).not.toContain('LIST_AT_REST');
  });
  it('TRIM_OUT_OF_BAND: outside the band, not just inside', () => {
    const afloat = present(figuresOf({}).float?.afloat);
    const trim = (conditionOf(afloat, 'fully loaded')?.state?.trim ?? 0) / DEGREE;
    const band = (most: number): readonly [string, string] => [
      'most: 8 deg',
      `most: ${most.toFixed(3)} deg`,
    ];
    expect(codes({ hull: [band(trim - 0.01)] })).toEqual(['TRIM_OUT_OF_BAND']);
    expect(codes({ hull: [band(trim + 0.01)] })).toEqual([]);
  });
  it('TRIM_OUT_OF_BAND says which move gains what, and the move does', () => {
    const options = OPTIONS.replace(
      'name: Seat, class: fit-out',
      'name: Seat, class: fit-out, mass: 40 kg, at: { x: 0.3 m, z: 0.3 m }, places: [{ name: forward, at: { x: 3 m, z: 0.3 m } }, { name: amidships, at: { x: 1 m, z: 0.3 m } }]',
    );
    const hull = [['most: 8 deg', 'most: -3 deg']] as const;
    const now = figuresOf({ options, hull });
    const told = now.findings.find(({ code }) => code === 'TRIM_OUT_OF_BAND');
    expect(told?.remedy).toMatch(/^Place Seat forward: that gains \d\.\d\u00A0degrees$/);
    const [move] = now.float?.afloat?.trim.moves ?? [];
    const moved = figuresOf({
      hull,
      options: options.replace('at: { x: 0.3 m, z: 0.3 m }', 'at: { x: 3 m, z: 0.3 m }'),
    });
    const trim = (figures: Figures): number =>
      conditionOf(present(figures.float?.afloat), 'fully loaded')?.state?.trim ?? NaN;
    // The contingency lies at the centre of what is fitted, so it moves a little with the seat.
    expect(trim(moved) / DEGREE).toBeCloseTo((move?.to.plane.trim ?? NaN) / DEGREE, 0);
    expect((trim(now) - (move?.to.plane.trim ?? NaN)) / DEGREE).toBeCloseTo(
      (move?.gain ?? NaN) / DEGREE,
      6,
    );
  });
});

describe('what is found of a ballast tank', () => {
  const tank = (facts: string): string =>
    OPTIONS.replace('name: Seat, class: fit-out', `name: Tank, class: fit-out, tank: { ${facts} }`);
  const low = 'from: 0.1 m, to: 1.1 m, top: 80 mm, halfBreadth: 0.4 m';
  it('TANK_OUTSIDE_HULL: beyond the bow, not within', () => {
    const outlet = 'outlet: { area: 200 cm2, height: 0 m }';
    const beyond = low.replace('to: 1.1 m', 'to: 6 m');
    expect(codes({ options: tank(`${beyond}, ${outlet}`) })).toEqual(['TANK_OUTSIDE_HULL']);
    expect(codes({ options: tank(`${low}, ${outlet}`) })).toEqual([]);
  });
  it('TANK_DOES_NOT_DRAIN: an outlet too high, not one at the bottom', () => {
    const at = (height: string): string =>
      tank(`${low}, outlet: { area: 200 cm2, height: ${height} }`);
    expect(codes({ options: at('75 mm') })).toEqual(['TANK_DOES_NOT_DRAIN']);
    expect(codes({ options: at('10 mm') })).toEqual([]);
  });
  it('TANK_OPENING_TOO_LARGE: an outlet larger than the aft end, a vent larger than the top, not as large', () => {
    // The end is 80 mm by 800 mm, 640 cm2; the top 0.8 m2.
    const at = (outlet: number, vent: number): string =>
      tank(`${low}, outlet: { area: ${outlet} cm2, height: 10 mm }, vent: ${vent} cm2`);
    expect(codes({ options: at(641, 30) })).toEqual(['TANK_OPENING_TOO_LARGE']);
    expect(codes({ options: at(30, 8100) })).toEqual(['TANK_OPENING_TOO_LARGE']);
    expect(codes({ options: at(639, 7900) })).toEqual([]);
  });
  it('holds and loses what a hand works out', () => {
    const options = tank(`${low}, permeability: 100%, outlet: { area: 200 cm2, height: 0 m }`);
    const { effect, drains } = present(figuresOf({ options }).float?.afloat?.ballast);
    expect(effect?.capacity).toBeCloseTo(1 * 0.8 * 0.08, 9);
    const { level = NaN, trim = NaN } = effect?.flooded ?? {};
    expect((level - 0.6 * Math.sin(trim)) / Math.cos(trim)).toBeGreaterThan(0.08);
    // Full, and the bow up by 4 degrees: the surface passes from the forward corner of the top to the aft one below.
    const rise = Math.tan(4 * DEGREE);
    const area = (height: number): number =>
      (0.8 * (Math.min(height, rise) - Math.max(0, height - 0.08))) / rise;
    const step = (0.08 + rise) / 20_000;
    // Torricelli, A dh / (Cd a sqrt 2 g h).
    const time = Array.from({ length: 20_000 }, (_, index) => (index + 0.5) * step).reduce(
      (sum, height) => sum + (area(height) * step) / (0.6 * 0.02 * Math.sqrt(2 * 9.80665 * height)),
      0,
    );
    expect((drains?.outcome === 'flows' ? drains.time : NaN) / time).toBeCloseTo(1, 2);
  });
});

describe('the orders of the demonstration afloat', () => {
  it.each(orders.map(({ order, figures }) => [order.value.number, figures] as const))(
    'float in every condition in which people are seated, GM two ways alike: %s',
    (_, figures) => {
      const { conditions } = present(figures?.float?.afloat);
      for (const { name, state } of conditions) {
        if (name === 'people to one side') continue;
        const gm = present(state?.metacentricHeight);
        expect(Math.abs(gm.bySlope / gm.byForm - 1)).toBeLessThan(0.006);
        expect(state?.freeboards.lowest.freeboard).toBeGreaterThan(0);
      }
    },
  );
  it('the catalogue’s ballast tank holds what a hand works out of the lines, and she lies deeper for it', () => {
    const { build, float } = demonstration('curlew-560', 'options: [ballast-tank]');
    const { effect, drains } = present(float?.afloat?.ballast);
    // Up to its top, below the chine, a section is a V: its area goes with the square of the height.
    const area = (x: number) => {
      const [keel, chine] = present(build.hull.lines.find((one) => one.x === x)).points;
      const [breadth, height] = present(chine);
      return 0.16 ** 2 * (breadth / (height - present(keel)[1]));
    };
    // Simpson's rule over three stations, a trapezium forward of them, less the 50 mm at the transom.
    const toStation = (0.56 / 3) * (area(0) + 4 * area(0.56) + area(1.12));
    const foremost = area(1.12) + (0.23 / 0.56) * (area(1.68) - area(1.12));
    const forward = 0.23 * ((area(1.12) + foremost) / 2);
    const byHand = 0.95 * (toStation + forward - 0.05 * area(0));
    expect(Math.abs((effect?.capacity ?? NaN) / byHand - 1)).toBeLessThan(0.01);
    expect(effect?.flooded.level).toBeGreaterThan(effect?.dry.level ?? NaN);
    expect(drains?.outcome === 'flows' && drains.time).toBeLessThan(6);
  });
});
