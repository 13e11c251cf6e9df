import { describe, expect, it } from 'vitest';
import { type Hull, STAGES } from '../../src/schema/index.ts';
import { decimalToNumber } from '../../src/units/index.ts';
import { catalogue, figuresOf, hoursOf, orders, priceOf } from './workspace.ts';

/*
 * Whether the invented boats are near what such boats are. Every band here is common practice, no source: what
 * the trade says of one boat of 4.5 m by 1.9 m, scaled by length times beam, and wide.
 */
const REFERENCE = 4.5 * 1.9;
const hulls: readonly Hull[] = [...catalogue.hulls.values()].map(({ value }) => value);
const scaleOf = ({ dimensions }: Hull): number => (dimensions.length * dimensions.beam) / REFERENCE;

/** How far a value is from the middle of its band, as a share of it. */
const away = (value: number, middle: number): number => Math.abs(value / middle - 1);

const byHull = hulls.map((hull) => [hull.id, hull] as const);

/** Gunwales are part of the structure; these are decks, hatches, a seat and stowage, without electrics. */
const FITTED = `options:
  - casting-deck-forward
  - { option: floor-hatch, quantity: 2 }
  - dry-locker
  - side-pockets
  - bench-seat
  - { option: grab-rail, quantity: 2 }
  - heavy-rubbing-strake
  - anchor-kit-light
  - deck-nonslip
`;

/** Electrics, electronics, bow motor, two batteries of 100 Ah and a trailer, with the engine that suits the hull. */
function full(hull: Hull): string {
  const engine = ENGINES[hull.id];
  return `${FITTED}  - battery-start
  - switch-panel-6
  - bilge-pump
  - nav-lights
  - { option: battery-agm-100, quantity: 2 }
  - charger-mains
  - chart-display-9
  - vhf-radio
  - bow-mount-plate
  - bow-motor-250n
${engine?.options ?? ''}outboard: { model: ${engine?.model}, shaft: ${hull.shaft} }
trailer: ${engine?.trailer}
`;
}

const HELM = '  - side-console\n  - steering-cable\n  - control-side\n';
const ENGINES: Readonly<Record<string, { model: string; trailer: string; options: string }>> = {
  'teal-370': { model: 'outboard-11', trailer: 'trailer-single-600', options: '' },
  'dunlin-430': { model: 'outboard-29-4', trailer: 'trailer-single-1200', options: HELM },
  'curlew-560': {
    model: 'outboard-44',
    trailer: 'trailer-tandem-1990',
    options: `${HELM}  - fuel-tank-60\n`,
  },
};

describe('masses of the three boats', () => {
  it.each(byHull)('out of the mould: 80 kg scaled, foam-cored and infused: %s', (_, hull) => {
    expect(away(figuresOf(hull.id).mass.bareHull.mass, 80 * scaleOf(hull))).toBeLessThan(0.3);
  });

  it.each(byHull)('bare, with floor and gunwales: 115 kg scaled: %s', (_, hull) => {
    expect(away(figuresOf(hull.id).mass.completed.mass, 115 * scaleOf(hull))).toBeLessThan(0.4);
  });

  it.each(byHull)('fitted out: a little over 200 kg scaled: %s', (_, hull) => {
    expect(away(figuresOf(hull.id, FITTED).mass.completed.mass, 210 * scaleOf(hull))).toBeLessThan(
      0.3,
    );
  });

  it.each(byHull)(
    'what stays of the materials comes to the mass that is written: %s',
    (_, hull) => {
      const { laminate } = figuresOf(hull.id);
      const lines = 'notComputed' in laminate ? [] : laminate.kit.lines;
      const lost = lines.reduce((sum, one) => sum + one.lost, 0);
      for (const half of [hull.shell, hull.structure]) {
        const listed = half.parts.reduce((sum, { part, quantity }) => {
          const bought = catalogue.parts.get(part)?.value;
          if (!bought || bought.class === 'consumable') return sum;
          return sum + decimalToNumber(quantity) * bought.mass;
        }, 0);
        // Infused resin that stays in mesh and lines is bought, and is not in the boat.
        const kept = half === hull.shell ? listed - lost : listed;
        expect(away(kept, half.mass)).toBeLessThan(0.03);
      }
    },
  );

  it.each(byHull)(
    'centre: aft of the middle, near the centreline, below the sheer: %s',
    (_, hull) => {
      const { centre } = figuresOf(hull.id, full(hull)).mass.ready;
      const { length, beam, depth } = hull.dimensions;
      expect(centre.x / length).toBeGreaterThan(0.2);
      expect(centre.x / length).toBeLessThan(0.45);
      expect(Math.abs(centre.y)).toBeLessThan(0.04 * beam);
      expect(centre.z / depth).toBeGreaterThan(0.3);
      expect(centre.z / depth).toBeLessThan(0.8);
    },
  );
});

describe('hours of the three boats', () => {
  const MOULDING = STAGES.slice(0, STAGES.indexOf('fit-out'));

  it.each(byHull)('in and round the mould: 80 scaled: %s', (_, hull) => {
    expect(away(hoursOf(figuresOf(hull.id), ...MOULDING), 80 * scaleOf(hull))).toBeLessThan(0.4);
  });

  it.each(byHull)('bare: 125 scaled: %s', (_, hull) => {
    expect(away(hoursOf(figuresOf(hull.id)), 125 * scaleOf(hull))).toBeLessThan(0.4);
  });

  it.each(byHull)('in full: 240 scaled: %s', (_, hull) => {
    expect(away(hoursOf(figuresOf(hull.id, full(hull))), 240 * scaleOf(hull))).toBeLessThan(0.4);
  });
});

describe('prices of the three boats', () => {
  // 52 000 AUD in 2016 with 40 hp, electronics, bow motor, two batteries and trailer. The allowance for ten years
  // of rising prices is an assumption: 3.4 % a year.
  const FULL_2016 = 52_000;
  const ALLOWANCE = 1.034 ** 10;

  it.each(byHull)('in full: 52 000 AUD of 2016, scaled and raised: %s', (_, hull) => {
    const price = priceOf(figuresOf(hull.id, full(hull)));
    expect(away(price, FULL_2016 * ALLOWANCE * scaleOf(hull))).toBeLessThan(0.3);
  });

  it.each([
    ['teal-370', 18_000, 28_000],
    ['dunlin-430', 35_000, 75_000],
    ['curlew-560', 85_000, 160_000],
  ])('as ordered: the %s from %i to %i AUD', (hull, least, most) => {
    const ofHull = orders.flatMap(({ order, figures }) =>
      figures && order.value.hull === hull ? [priceOf(figures)] : [],
    );
    expect(ofHull.length).toBeGreaterThan(1);
    expect(Math.min(...ofHull)).toBeGreaterThan(least);
    expect(Math.max(...ofHull)).toBeLessThan(most);
  });
});
