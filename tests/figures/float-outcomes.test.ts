import { describe, expect, it } from 'vitest';
import { checkFloat } from '../../src/figures/float/check.ts';
import { computeFigures, conditionOf, figuresData } from '../../src/figures/index.ts';
import { byNumber } from '../demonstration/workspace.ts';
import { codes, DEGREE, figuresOf, lines, present, weighted } from './box-boat.ts';

const ofCode = (found: ReturnType<typeof figuresOf>, code: string) =>
  found.findings.filter((one) => one.code === code);

describe('what comes of a boat that does not float as it should', () => {
  const onTransom = figuresOf({ order: weighted('{ x: 0 m, z: 0.3 m }', '900 kg') });

  it('FLOAT_GOES_DOWN: a weight on the transom, with the weight to move forward', () => {
    const found = ofCode(onTransom, 'FLOAT_GOES_DOWN').map(({ received }) => received);
    expect(found).toContain('fully loaded: goes down by the stern');
    const { equilibrium, remedy } = present(
      conditionOf(present(onTransom.float?.afloat), 'fully loaded'),
    );
    expect(equilibrium).toMatchObject({ outcome: 'goes down', by: 'stern' });
    expect(remedy).toMatchObject({ what: 'move', way: 'forward' });
    expect(ofCode(onTransom, 'FLOAT_GOES_DOWN')[0]?.remedy).toMatch(
      /^Move weight forward: at least [\d ,]+.kg by 1.m, or as much weight times distance$/,
    );
    expect(figuresData(onTransom)['float.fully-loaded.outcome']?.value).toBe(
      'goes down by the stern',
    );
  });

  it('is not said of the same weight amidships', () => {
    const { findings } = figuresOf({ order: weighted('{ x: 2 m, z: 0.3 m }', '900 kg') });
    expect(findings.map(({ code }) => code)).not.toContain('FLOAT_GOES_DOWN');
  });

  it('FLOAT_NOT_COMPUTED: a search that failed is said of the program, and nothing of the boat', () => {
    const figures = figuresOf({});
    const afloat = present(figures.float?.afloat);
    const failed = { outcome: 'not computed', notComputed: 'the search did not end' } as const;
    const conditions = afloat.conditions.map(({ name, load, people }) => ({
      name,
      load,
      people,
      equilibrium: failed,
    }));
    const findings = checkFloat({
      ...figures,
      float: {
        problems: [],
        afloat: { ...afloat, conditions },
      },
    });
    expect(new Set(findings.map(({ code }) => code))).toEqual(new Set(['FLOAT_NOT_COMPUTED']));
    expect(findings.map(({ severity }) => severity)).not.toContain('warning');
  });
});

describe('the lines between the cross-sections', () => {
  it('LINES_COARSE: told where curved and straight differ by more than 3 %, with the share', () => {
    const fuller = '[[0, 0], [1.3, 0], [1.3, 0.6]]';
    const figures = figuresOf({ hull: [lines(fuller)] });
    const { share = 0 } = present(figures.float?.afloat).spread ?? {};
    // A parabola of 0.8, 1.3, 0.8 m has a mean of 1.3 - 0.5 / 3; two straight lines have 1.05.
    expect(share).toBeCloseTo(1.05 / (1.3 - 0.5 / 3) - 1, 2);
    expect(ofCode(figures, 'LINES_COARSE')).toHaveLength(1);
    expect(codes({})).not.toContain('LINES_COARSE');
    expect(present(figuresOf({}).float?.afloat).spread?.share).toBeCloseTo(0, 9);
  });

  it.each(byNumber)(
    'run straight, they leave %s afloat as it was, to 2 cm and a quarter of a degree',
    (_, figures) => {
      const { build, float } = figures;
      const straight = computeFigures(
        { ...build, hull: { ...build.hull, linesBetween: 'straight' } },
        [],
      );
      const [before, after] = [float, straight.float].map((one) =>
        conditionOf(present(one?.afloat), 'fully loaded'),
      );
      expect(after?.equilibrium.outcome).toBe('floats');
      const lowest = [before, after].map((one) => one?.state?.freeboards.lowest.freeboard ?? 9);
      expect(Math.abs((lowest[0] ?? 0) - (lowest[1] ?? 1))).toBeLessThan(0.02);
      expect(Math.abs((before?.state?.trim ?? 0) - (after?.state?.trim ?? 1))).toBeLessThan(
        DEGREE / 4,
      );
    },
  );
});

describe('what moves in a tank', () => {
  it('is in the heel: a lean grows as the stiffness that the surface leaves', () => {
    const leaning = weighted('{ x: 2 m, y: 0.5 m, z: 0.3 m }', '30 kg');
    const at = (surface: string) => {
      const change = ['shaft: long\nclass: hull', `${surface}shaft: long\nclass: hull`] as const;
      const { afloat } = present(
        figuresOf({ order: leaning, hull: surface ? [change] : [] }).float,
      );
      return present(conditionOf(present(afloat), 'fully loaded'));
    };
    const [still, moving] = [at(''), at('tankSurface: { length: 1 m, breadth: 1 m }\n')];
    const [stiff, soft] = [still, moving].map(
      ({ state }) => state?.metacentricHeight?.byForm ?? 0,
    ) as [number, number];
    expect(soft).toBeLessThan(stiff);
    const [small, large] = [still, moving].map(({ state }) => Math.tan(state?.heel ?? 0)) as [
      number,
      number,
    ];
    expect(large / small).toBeCloseTo(stiff / soft, 1);
    expect(large).not.toBeCloseTo(small, 6);
  });
});
