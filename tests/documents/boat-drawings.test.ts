import { describe, expect, it } from 'vitest';
import { drawBoat } from '../../src/documents/sections/boat-drawing.ts';
import { drawForWorkshop } from '../../src/documents/build-sheet/workshop-drawing.ts';
import type { Figures } from '../../src/figures/index.ts';
import { kilograms, metres } from '../../src/units/index.ts';
import { inventedFigures, SECRETS } from './invented-build.ts';

const priced = { price: '100.00' };
const ITEMS = [
  { kind: 'shell', group: 'Hull', name: 'Coot 400 hull shell', ...priced },
  { kind: 'structure', group: 'Hull', name: 'Coot 400 structure', ...priced },
  { kind: 'option', group: 'Seats', name: 'Bow seat <wide>', ...priced },
  { kind: 'option', group: 'Colours', name: 'Sand gelcoat', ...priced },
  { kind: 'extra', group: 'One-off items', name: 'Rack for sieves', ...priced },
  { kind: 'outboard', group: 'Outboard', name: 'Outboard 22 kW', ...priced },
  { kind: 'trailer', group: 'Trailer', name: 'Trailer', ...priced },
] as const;

const figures = inventedFigures({ items: ITEMS });

function withItem(name: string, change: Partial<Figures['build']['items'][number]>): Figures {
  const items = figures.build.items.map((item) =>
    item.name === name ? { ...item, ...change } : item,
  );
  return { ...figures, build: { ...figures.build, items } };
}

const svgOf = (src: string): string => decodeURIComponent(src.slice(src.indexOf(',') + 1));

describe('the numbers of the drawings', () => {
  it('count options, one-off items and the outboard in the order of the Build', () => {
    expect([...drawBoat(figures, '').numbers]).toEqual([
      ['option:2', '1'],
      ['option:3', '2'],
      ['extra:4', '3'],
      ['outboard:5', '4'],
    ]);
  });

  it('are the same for the workshop as for the customer', () => {
    expect(drawForWorkshop(figures, '').numbers).toEqual(drawBoat(figures, '').numbers);
  });

  it('pass over an item that nobody gave a position', () => {
    const unplaced = withItem('Bow seat <wide>', { placed: false });
    expect(drawBoat(unplaced, '').numbers.get('option:2')).toBeUndefined();
    expect(drawBoat(unplaced, '').numbers.get('option:3')).toBe('1');
  });

  it('pass over what weighs nothing and lies in the middle for want of a position', () => {
    const middle = { x: metres(2), y: metres(0), z: metres(0.35) };
    const colour = withItem('Sand gelcoat', { mass: kilograms(0), at: middle });
    expect(drawBoat(colour, '').numbers.has('option:3')).toBe(false);
    const heavy = withItem('Sand gelcoat', { mass: kilograms(2), at: middle });
    expect(drawBoat(heavy, '').numbers.has('option:3')).toBe(true);
  });
});

describe('the pictures', () => {
  it('of the quote name the boat and what is numbered in her, and nothing that a customer must not read', () => {
    const [picture] = drawBoat(figures, '').pictures;
    expect(picture?.alt).toMatch(/the Coot 400, 4\.00\sm long/);
    expect(picture?.alt).toContain('1 Bow seat <wide>; 2 Sand gelcoat; 3 Rack for sieves');
    expect(svgOf(picture?.src ?? '')).toMatch(/^<svg /);
    const all = `${JSON.stringify(picture)}${svgOf(picture?.src ?? '')}`;
    for (const secret of SECRETS) expect(all).not.toContain(secret);
  });

  it('of the workshop are the placing, the body plan, how she floats and the masses', () => {
    const alts = drawForWorkshop(figures, '').pictures.map(({ alt }) => alt);
    expect(alts).toHaveLength(5);
    expect(alts[0]).toContain('1 Bow seat <wide>, 1100 mm forward of the transom');
    expect(alts[1]).toMatch(/1 Bow seat <wide>, \d+ mm above the baseline/);
    expect(alts[2]).toContain('Body plan of the Coot 400');
    expect(alts[3]).toContain('from the starboard side');
    expect(alts[4]).toMatch(/Seats 22\skg/);
  });
});
