import { describe, expect, it } from 'vitest';
import { limitsSection } from '../../src/documents/order-page/limits-section.ts';
import { rangeFigure, speedFigure } from '../../src/documents/quote/speed-figures.ts';
import { roadFigures } from '../../src/documents/quote/road-figures.ts';
import { fitterFacts } from '../../src/documents/build-sheet/performance.ts';
import { plateDrawing } from '../../src/documents/handover/plate-drawing.ts';
import type { Part } from '../../src/documents/blocks/block.ts';
import { speedSection } from '../../src/documents/order-page/speed-section.ts';
import { towingSection } from '../../src/documents/order-page/towing-section.ts';
import { changeText } from '../../src/documents/sections/fact-words.ts';
import { customerFigures, factsOf, type Figures } from '../../src/figures/index.ts';
import { createFormatter } from '../../src/units/index.ts';
import { alone, cellsOf, picturesOf, saidBy, tablesOf, wordsOf } from './letters.ts';
import { inventedFigures } from './invented-build.ts';
import { figuresOf as figuresOfHull, orders } from '../demonstration/workspace.ts';

const figuresOf = (number: string): Figures => {
  const figures = orders.find(({ order }) => order.value.number === number)?.figures;
  if (!figures) throw new Error(`${number} has no figures`);
  return figures;
};
const sectionsOf = (figures: Figures): readonly Part[] => [
  speedSection(figures, ''),
  limitsSection(figures),
  towingSection(figures, ''),
];
const tablesIn = (part: Part) => tablesOf(alone(part), part.id);
const picturesIn = (part: Part) => picturesOf(alone(part), part.id);
const wordsIn = (part: Part) => wordsOf(alone(part), part.id);

describe('speed, limits and towing of every order', () => {
  it.each(orders.map(({ order }) => order.value.number))(
    'print without a hole, and each says who verifies it: %s',
    (number) => {
      for (const section of sectionsOf(figuresOf(number))) {
        const text = saidBy(section);
        expect(text).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
        expect(text).toMatch(/verify|confirm|No trailer is in this order/i);
        for (const { columns, rows } of tablesIn(section))
          for (const { cells } of rows) expect(cells).toHaveLength(columns.length);
      }
    },
  );

  it('name the outboard that is ordered and every other that the hull may carry', () => {
    const speed = speedSection(figuresOf('DC-2609'), '');
    const rows =
      tablesIn(speed)[1]
        ?.rows.map(cellsOf)
        .map(([name]) => name) ?? [];
    // Of the catalogue's fourteen, those of 44 kW and more have the extra-long shaft that she takes.
    expect(rows).toHaveLength(5);
    expect(rows.filter((name) => name?.endsWith('as ordered'))).toHaveLength(1);
    expect(picturesIn(speed)).toHaveLength(1);
  });

  it('give each outboard with and without the water of the ballast tank', () => {
    const helm =
      'centre-console, steering-hydraulic, control-binnacle, fuel-tank-60, battery-start';
    const figures = figuresOfHull(
      'curlew-560',
      `options: [ballast-tank, ${helm}]\noutboard: { model: outboard-66, shaft: extra-long }\n`,
    );
    const speed = speedSection(figures, '');
    expect(tablesIn(speed)[1]?.columns.map(({ text }) => text)).toEqual([
      'Outboard',
      'Power',
      'Mass',
      'Light',
      'Light with ballast',
      'Loaded',
      'Loaded with ballast',
    ]);
    expect(picturesIn(speed)[0]?.alt).toContain('Loaded with ballast');
  });

  it('name the range of the method, the gear ratio, the slip and every drag', () => {
    const text = saidBy(speedSection(figuresOf('DC-2603'), ''));
    expect(text).toMatch(/trim 2° to 15°/);
    expect(text).toMatch(/between 6,000 and 5,000.rpm, at a gear ratio of 2.00 and a slip of 12/);
    expect(text).toMatch(/Chart display, 230 mm \(5.cm², coefficient 0.40\)/);
  });

  it('name what binds, and flag what is passed', () => {
    const limits = limitsSection(figuresOf('DC-2609'));
    const tables = tablesIn(limits);
    expect(tables[0]?.rows.at(-1)?.cells.at(-1)).toMatch(/^Limited by /);
    const flagged = tables[1]?.rows.filter(({ kind }) => kind === 'flag') ?? [];
    expect(flagged.length > 0).toBe(
      wordsIn(limits).some((text) => text.includes('neither category C nor D')),
    );
  });

  it('tell the post that was set from the one that is usual', () => {
    expect(saidBy(towingSection(figuresOf('DC-2604'), ''))).toMatch(
      /Winch post: 1\.20.m aft of the ball; 10.%, the usual share/,
    );
  });

  it('leave out what an order does not have', () => {
    const towing = towingSection(figuresOf('DC-2605'), '');
    expect([...tablesIn(towing), ...picturesIn(towing)]).toEqual([]);
    expect(wordsIn(speedSection(figuresOf('DC-2602'), ''))[0]).toContain('No outboard');
  });
});

describe('what the customer reads of it', () => {
  it('is an estimate, with what it depends on and the methods that found it', () => {
    const figures = customerFigures(figuresOf('DC-2606'));
    const [speed, range] = [...speedFigure(figures), ...rangeFigure(figures)];
    const [ball, road] = roadFigures(figures);
    expect(speed).toMatchObject({ label: 'Speed, estimated', methods: ['planing', 'crouch'] });
    expect(speed?.value).toMatch(/^\d+ to \d+.kn$/);
    expect(range).toMatchObject({ label: 'Range, estimated', methods: ['fuel'] });
    expect(range?.detail).toMatch(/33.% of the fuel kept back.*At full throttle/);
    expect(ball?.value).toMatch(/kg$/);
    expect(road?.detail).toMatch(/Brakes in Australia: /);
    expect(road?.methods).toEqual(['roadRules']);
  });

  it('says that the boat does not plane, and nothing where the method is not for its hull', () => {
    const [slow] = speedFigure(customerFigures(figuresOf('DC-2608')));
    expect(slow?.label).toBe('Speed before planing');
    expect(slow?.value).toMatch(/^\d+ to \d+.kn$/u);
    expect(slow?.detail).toContain('It does not plane with this load.');
    expect(speedFigure(customerFigures(inventedFigures()))).toEqual([]);
  });

  it('tells who carries the boat on a roof what it weighs there, and to check the papers', () => {
    const roof = roadFigures(customerFigures(figuresOf('DC-2608'))).at(-1);
    expect(roof).toMatchObject({ label: 'On a roof' });
    expect(roof?.detail).toMatch(/within the .* check the papers/);
    expect(wordsIn(towingSection(figuresOf('DC-2608'), ''))).toContainEqual(
      expect.stringMatching(/^On a roof/),
    );
  });

  it('is a plate that nobody signed yet', () => {
    const [plate] = plateDrawing(customerFigures(figuresOf('DC-2601')), '');
    expect(plate?.alt).toContain('Draft: for the builder to confirm and sign');
    expect(plate?.alt).toContain('DCB-D0430-2601');
    expect(plate?.alt).toMatch(/verify by/);
  });
});

it('an alternative says what it does to speed and tow ball, where both can be had', () => {
  const entry = orders.find(({ order }) => order.value.number === 'DC-2609');
  const named = (words: string) => entry?.alternatives?.find(({ name }) => name.includes(words));
  const [stronger, without] = [named('59 kW'), named('without a trailer')];
  const { speed } = stronger?.differences ?? {};
  expect(speed?.now.says).toBeGreaterThan(Number(speed?.was?.says));
  expect(stronger?.differences?.onBall).toBeDefined();
  expect(without?.differences).toBeDefined();
  expect(without?.differences?.onBall).toBeUndefined();
});

it('an alternative that planes where the order does not tells its speed', () => {
  const format = createFormatter('en-AU', 'metric');
  const fact = factsOf('drive')('customer', 'speed', '*.speed', 'Speed', 'planing');
  const [was, now] = [fact(9), fact(10)];
  expect(changeText({ now, was }, format)).toBe('+1.9\u00A0kn');
  expect(changeText({ now }, format)).toBe('about 19\u00A0kn');
  expect(changeText({ now, was: now }, format)).toBe('no change');
  expect(changeText({ now, was: fact(10.02) }, format)).toBe('no change');
  expect(changeText(undefined, format)).toBe('not computed');
});

it('the build sheet tells the fitter what to set by, and what the trial is held against', () => {
  const facts = fitterFacts(figuresOf('DC-2606'));
  expect(facts.map(({ label }) => label)).toEqual([
    'On the transom',
    'Propeller',
    'Speed on trial',
    'Bow motor',
    'Capacity plate',
    'Winch post',
    'On the road',
  ]);
  expect(facts.filter(({ value }) => !/estimated/i.test(value)).map(({ label }) => label)).toEqual([
    'On the transom',
  ]);
  expect(fitterFacts(figuresOf('DC-2602')).map(({ label }) => label)).toEqual(['Capacity plate']);
});
