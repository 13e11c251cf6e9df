import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fibreByVolume,
  layerThickness,
  layUpOf,
  materialsOf,
  type ReadyLayer,
  sectionOf,
  weighLaminate,
} from '../../src/laminate/index.ts';
import { metres } from '../../src/units/index.ts';
import { anyPanels, fabric, foam, gelcoat, panel } from './lay-ups.ts';

describe('the thickness of a layer', () => {
  it('is the relation of the standard, which is the volume of glass and resin', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 3, noNaN: true }),
        fc.double({ min: 0.1, max: 0.8, noNaN: true }),
        (w, psi) => {
          const millimetres = (w / 3.072) * (2.56 / psi - 1.36);
          expect(layerThickness(w, psi) * 1000).toBeCloseTo(millimetres, 9);
        },
      ),
    );
  });

  it('goes with the fibre by mass, which is always above the fibre by volume', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.8, noNaN: true }), (psi) => {
        expect(fibreByVolume(psi)).toBeLessThan(psi);
      }),
    );
  });
});

describe('weighing a laminate', () => {
  it('makes the whole of fibre, resin, gelcoat and core, panel by panel', () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const all = weighLaminate(panels);
        expect(all.refused).toEqual([]);
        expect(all.fibre + all.resin + all.gelcoat + all.core).toBeCloseTo(all.total, 8);
        expect(all.panels.reduce((sum, { total }) => sum + total, 0)).toBeCloseTo(all.total, 8);
      }),
    );
  });

  it('weighs what its kit weighs', () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const kit = materialsOf(panels);
        const quantity = (name: string): number =>
          kit.find((need) => need.name === name)?.quantity ?? 0;
        const all = weighLaminate(panels);
        expect(quantity('resin')).toBeCloseTo(all.resin, 8);
        expect(quantity('white gelcoat')).toBeCloseTo(all.gelcoat, 8);
      }),
    );
  });

  it('counts both faces of the core and leaves gelcoat out of the thickness', () => {
    const layUp = layUpOf([gelcoat(0.7), fabric(1.2, 0.55), foam(0.015), fabric(1.2, 0.55)]);
    const withoutCoat = layUpOf([fabric(1.2, 0.55), foam(0.015), fabric(1.2, 0.55)]);
    expect(layUp).toMatchObject({ gelcoat: 0.7, fibre: 2.4 });
    expect(layUp).toHaveProperty('total', expect.closeTo(6.563_64 + 0.7, 5));
    expect('thickness' in layUp && 'thickness' in withoutCoat && layUp.thickness).toBe(
      'thickness' in withoutCoat && withoutCoat.thickness,
    );
  });

  it('refuses a layer that cannot be, and weighs the rest', () => {
    const all = weighLaminate([
      panel('bottom', 4, [fabric(0.6, 0.6)]),
      panel('by volume?', 4, [fabric(0.6, 60)]),
      panel('no area', 0, [fabric(0.6, 0.6)]),
      panel('thin air', 1, [foam(0)]),
      panel('negative', 1, [gelcoat(-1)]),
    ]);
    expect(all.refused.map(({ panel: { name } }) => name)).toEqual([
      'by volume?',
      'no area',
      'thin air',
      'negative',
    ]);
    expect(all.total).toBeCloseTo(4, 12);
  });
});

describe('the middle hull of the demonstration', () => {
  const infused = 0.62;
  const shell = [
    gelcoat(0.7),
    fabric(0.45, 0.3, 'mat'),
    fabric(0.6, infused),
    fabric(0.8, infused),
    fabric(0.6, infused),
  ];
  // Areas as her file has them: 10.3 m2 of shell, 7.3 m2 of it cored, 2.6 m2 of keel, 18.1 m of tape, the transom board.
  const panels = [
    panel('shell', 10.3, shell),
    panel('core', 7.3, [foam(0.012, 80, 0.3)]),
    panel('keel', 2.6, [fabric(0.45, infused, 'unidirectional')]),
    panel('tape', 18.1 * 0.15, [fabric(0.45, infused, 'tape')]),
    panel('transom', 0.62, [foam(0.03, 200, 0.3)]),
  ];

  it('weighs, by her lay-up, within 4 % of what her file says', () => {
    expect(weighLaminate(panels).total / 76).toBeGreaterThan(0.96);
    expect(weighLaminate(panels).total / 76).toBeLessThan(1.04);
  });
});

describe('what is bought laminated', () => {
  const bought = (some: Partial<ReadyLayer> = {}): ReadyLayer => ({
    kind: 'ready-made',
    name: 'panel',
    thickness: metres(0.025),
    fibrePerArea: 3.2,
    resinPerArea: 3.22,
    gelcoatPerArea: 0,
    corePerArea: 1.68,
    ...some,
  });

  it('counts with what it is made of, and takes no resin from the pot', () => {
    const alone = panel('deck', 2, [bought()]);
    expect(layUpOf(alone.layers)).toEqual({
      thickness: 0.025,
      fibre: 3.2,
      resin: 3.22,
      gelcoat: 0,
      core: 1.68,
      total: 8.1,
    });
    expect(materialsOf([alone])).toEqual([{ name: 'panel', quantity: 2, unit: 'm2' }]);
    const glassed = layUpOf([bought(), fabric(0.6, 0.5)]);
    expect(glassed).toMatchObject({ fibre: 3.2 + 0.6, resin: 0.6 + 3.22 });
    expect(glassed).not.toHaveProperty('fibreFraction');
  });

  it('is nothing that strength is worked out for, and must weigh something', () => {
    expect(sectionOf([bought()])).toEqual({
      notComputed: 'panel is bought laminated: ask its maker',
    });
    expect(layUpOf([bought({ resinPerArea: -0.01 })])).toHaveProperty('notComputed');
    expect(layUpOf([bought({ thickness: metres(0) })])).toHaveProperty('notComputed');
    const nothing = { fibrePerArea: 0, resinPerArea: 0, corePerArea: 0 };
    expect(layUpOf([bought(nothing)])).toHaveProperty('notComputed');
  });
});
