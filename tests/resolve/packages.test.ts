import { describe, expect, it } from 'vitest';
import { computeFigures } from '../../src/figures/index.ts';
import { moneyToText } from '../../src/money/index.ts';
import { OPTIONS, ORDER, YARD } from '../read/samples.ts';
import { resolveSample } from './invented.ts';

const PRICED = `${OPTIONS.replace('name: Seat, class: fit-out', 'name: Seat, class: fit-out, price: 300')}
  - { id: lamp, name: Lamp, class: fit-out, price: 100 }
  - { id: horn, name: Horn, class: fit-out, price: 60 }
`;
const OFFERS = `packages:
  - { id: light-and-sound, name: Light and sound, options: [lamp, horn], price: 120 }
  - { id: night, name: Night, options: [lamp, seat], share: 10% }
`;
const sample = (order: string, offers = OFFERS) =>
  resolveSample({
    'catalogue/yard.yaml': YARD + offers,
    'catalogue/options/seats.yaml': PRICED,
    'orders/t-1.yaml': ORDER + order,
  });

describe('a package', () => {
  it('brings its options, and its price is shared by them', () => {
    const { build, spots } = sample('packages: [light-and-sound]\n');
    expect(spots).toEqual([]);
    expect(build?.packages.map(({ keys }) => keys)).toEqual([['option:lamp', 'option:horn']]);
    const lines = build ? computeFigures(build, []).price.lines : [];
    expect(lines.slice(-2).map((line) => [line.key, moneyToText(line.price)])).toEqual([
      ['option:lamp', '75.00'],
      ['option:horn', '45.00'],
    ]);
  });
  it('takes the options that the order lists itself', () => {
    const { build } = sample('packages: [night]\n');
    expect(build?.items.map(({ key }) => key)).toEqual([
      'shell',
      'structure',
      'option:seat',
      'option:rod-holder',
      'option:lamp',
    ]);
    expect(build && moneyToText(computeFigures(build, []).price.savings)).toBe('40.00');
  });
  it.each([
    ['that is not known', 'packages: [nite]\n', ['UNKNOWN_ID orders/t-1.yaml:16:12']],
    [
      'that shares an option with another',
      'packages: [night, light-and-sound]\n',
      ['ORDERED_TWICE orders/t-1.yaml:16:19'],
    ],
  ])('%s is a mistake', (_, order, spots) => {
    expect(sample(order).spots).toEqual(spots);
  });
  it('has one of each option', () => {
    const offers = `packages:\n  - { id: fishing, name: Fishing, options: [seat, rod-holder], share: 5% }\n`;
    expect(sample('packages: [fishing]\n', offers).spots).toEqual([
      'QUANTITY_OUT_OF_RANGE orders/t-1.yaml:13:5',
    ]);
  });
  it('whose option is not in the catalogue is told there', () => {
    const offers = `packages:\n  - { id: odd, name: Odd, options: [seat, set], share: 5% }\n`;
    expect(sample('', offers).spots[0]).toMatch(/^UNKNOWN_ID catalogue\/yard\.yaml/);
  });
  it('that saves nothing is a warning', () => {
    const { build } = sample('packages: [light-and-sound]\n', OFFERS.replace('120', '160'));
    expect(build && computeFigures(build, []).findings.map(({ code }) => code)).toEqual([
      'PACKAGE_SAVES_NOTHING',
    ]);
  });
});

describe('what else an order says of money', () => {
  it('a discount on a class that the yard does not have is a mistake', () => {
    expect(sample('discount: { share: 5%, class: hul, reason: Show. }\n').spots).toEqual([
      'UNKNOWN_ID orders/t-1.yaml:16:31',
    ]);
  });
});
