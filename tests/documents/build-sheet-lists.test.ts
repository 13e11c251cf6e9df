import { describe, expect, it } from 'vitest';
import type { BuildItem, BuildPart } from '../../src/resolve/index.ts';
import { STAGES } from '../../src/schema/index.ts';
import { metres } from '../../src/units/index.ts';
import { fittedFigures } from './fitted-build.ts';
import { cellsOf, rowsOf } from './letters.ts';
import { decimal, idOf, itemsOf, materialsOf, sheet, stagesOf, work } from './sheets.ts';

const [anyPart] = fittedFigures().build.items[0]?.parts ?? [];
if (!anyPart) throw new Error('the invented shell has a part');
const part = (more: Partial<BuildPart>): BuildPart => ({ ...anyPart, ...more });

describe('the materials to fetch', () => {
  it.each([
    ['each', '2.01', '0', '3', ''],
    ['each', '1', '0', '1', ''],
    ['set', '1', '0', '1', 'set'],
    ['set', '2', '0.1', '2', 'sets'],
    ['sheet', '1', '0.1', '2', 'sheets'],
    ['kg', '10', '0.08', '10.8', 'kg'],
    ['kg', '10.01', '0', '10.1', 'kg'],
    ['kg', '0.111', '0', '0.12', 'kg'],
    ['m2', '7.2', '0.1', '8.0', 'm²'],
  ])(
    'have the allowance of what is measured off in them: %s, %s and %s give %s',
    (unit, used, wastage, quantity, words) => {
      const parts = [part({ unit, quantity: decimal(used), materialClass: 'consumable' })];
      const view = sheet({
        yard: { wastage: { consumable: decimal(wastage) } },
        items: { 'Bow seat': { parts, hours: [work('cure', '1')] } },
      });
      expect(materialsOf(view, idOf('cure'))).toMatchObject([
        { amount: `${quantity} ${words}`.trim() },
      ]);
    },
  );

  it('are added up once a code', () => {
    const parts = [part({ code: 'K-1', quantity: decimal('2') })];
    const hours = [work('cure', '1')];
    const view = sheet({
      items: { 'Bow seat': { parts, hours }, 'House battery': { parts, hours } },
    });
    expect(materialsOf(view, idOf('cure'))).toMatchObject([{ code: 'K-1', amount: '4' }]);
  });

  it.each([
    ['gelcoat', 'gelcoat', true],
    ['fabric', 'laminate', true],
    ['core', 'laminate', true],
    ['resin', 'infusion', true],
    ['consumable', 'mould-preparation', false],
    ['hardware', 'fit-out', false],
    ['cable', 'wiring', false],
  ] as const)('stand in the stage that uses them: %s in %s', (materialClass, stage, traced) => {
    const hours = STAGES.map((one) => work(one, '1'));
    const view = sheet({
      items: { 'Bow seat': { hours, parts: [part({ code: 'K-9', materialClass })] } },
    });
    const found = stagesOf(view).flatMap(({ id }) =>
      materialsOf(view, id).flatMap((one) => (one.code === 'K-9' ? [[id, one.traced]] : [])),
    );
    expect(found).toEqual([[idOf(stage), traced]]);
  });
});

describe('where things go', () => {
  const placed = (more: Partial<BuildItem>) =>
    rowsOf(sheet({ items: { 'Bow seat': more } }), 'placing')
      .map(cellsOf)
      .find(([, name]) => name?.endsWith('Bow seat'));

  it.each([
    [1.25, 0, 0.3, '1,250 mm', '{centre}', '300 mm'],
    [0.5, -0.4, 0, '500 mm', '400 mm P', '0 mm'],
    [0.5, 0.4, 0.1, '500 mm', '400 mm S', '100 mm'],
    [-0.25, 0.0004, -0.05, '250 mm behind', '{centre}', '−50 mm'],
  ])('reads %d, %d, %d as a shop measures', (x, y, z, forward, across, up) => {
    expect(placed({ at: { x: metres(x), y: metres(y), z: metres(z) } })?.slice(1)).toEqual([
      '2 × Bow seat',
      forward,
      across,
      up,
    ]);
  });

  it('says so where nobody gave a position, and gives no dimension', () => {
    expect(placed({ placed: false })?.slice(2)).toEqual(['no position given: ask before fitting']);
  });

  it('lists what is in the boat, and not the boat itself or what she stands on', () => {
    const rows = rowsOf(sheet(), 'placing').map(cellsOf);
    expect(rows.map(([, name]) => name)).toEqual([
      '2 × Bow seat',
      '2 × House battery',
      'House battery charger',
      'Outboard 15 kW, long shaft',
    ]);
  });

  it('numbers things as the drawing and the lists of the stages do', () => {
    const view = sheet();
    const rows = rowsOf(view, 'placing').map(cellsOf);
    const numbers = new Map(rows.map(([number, name]) => [name, number]));
    expect(numbers.get('2 × Bow seat')).toBe('1');
    const fitted = stagesOf(view).flatMap(({ id }) => itemsOf(view, id));
    expect(fitted.length).toBeGreaterThan(3);
    for (const [, number, name] of fitted) expect(number).toBe(numbers.get(name) ?? '');
  });
});
