import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derive/index.ts';
import { computeFigures } from '../../src/figures/index.ts';
import { boatKit } from '../../src/figures/laminate/boat-kit.ts';
import { checkLaminate } from '../../src/figures/laminate/check.ts';
import { laminateFigures } from '../../src/figures/laminate/shell.ts';
import { mixingOf } from '../../src/figures/laminate/mixing.ts';
import { type PartLayUp, partLayUps } from '../../src/figures/laminate/parts.ts';
import type { Build, BuildItem } from '../../src/resolve/index.ts';
import type { Material, PartLaminate } from '../../src/schema/index.ts';
import { decimalToNumber, kilograms, metres, parseDecimal, ZERO } from '../../src/units/index.ts';
import { buildOf, catalogue, orders } from '../demonstration/workspace.ts';

const decimal = (text: string) => parseDecimal(text) ?? ZERO;
const HULLS = [...catalogue.hulls.keys()];
const LAID = [...catalogue.options.values()].filter(({ value }) => value.laminate !== undefined);

/** Every option with a lay-up, on every hull that it fits. */
const FITTED = LAID.flatMap(({ value: { id, fits, requires } }) =>
  HULLS.filter((hull) => fits === undefined || fits.includes(hull)).map(
    (hull) =>
      [id, hull, [id, ...requires.flatMap((one) => [one].flat().slice(0, 1))].join()] as const,
  ),
);

function layUpOf(build: Build, key: string): PartLayUp {
  const found = partLayUps(build).find(({ item }) => item.key === key);
  if (!found) throw new Error(`no lay-up of ${key}`);
  return found;
}

const massOf = new Map([...catalogue.parts].map(([code, { value }]) => [code, value.mass]));

/** What holds of the lay-up of any item of the demonstration. */
function expectSound({ item, mass, kit, rest, panels, withoutArea }: PartLayUp): void {
  expect(withoutArea).toEqual([]);
  expect(mass.refused).toEqual([]);
  expect(panels.flatMap(({ missing }) => missing)).toEqual([]);
  for (const { part, inBoat, listed } of kit.lines) {
    expect(Math.abs(inBoat / (listed ?? Number.NaN) - 1), part).toBeLessThan(0.03);
  }
  // By the materials' own masses it weighs what its panels weigh, and with the rest what the item is said to.
  const weighed = kit.lines.reduce(
    (sum, { part, inBoat }) => sum + inBoat * (massOf.get(part) ?? Number.NaN),
    0,
  );
  expect(Math.abs(weighed / mass.total - 1)).toBeLessThan(0.002);
  expect(Math.abs((mass.total + rest) / item.mass - 1)).toBeLessThan(0.03);
  for (const { part, list } of kit.cuts) {
    expect(list.refused).toEqual([]);
    const line = kit.lines.find((one) => one.part === part);
    const covers = line?.unit === 'm' ? 0.15 : 1;
    expect(list.cutArea, part).toBeGreaterThan((line?.inBoat ?? Number.POSITIVE_INFINITY) * covers);
  }
}

describe('the lay-ups of structure and options', () => {
  it.each(HULLS)('agree with list and mass of the structure of the %s', (hull) => {
    const part = layUpOf(buildOf(hull), 'structure');
    expectSound(part);
    expect([part.process, part.stage]).toEqual(['hand', 'laminate']);
    expect(part.kit.lines.map((line) => line.part)).toContain('TC-0103');
    expect(part.kit.cuts.length).toBeGreaterThan(1);
  });

  it.each(FITTED)('agree with list and mass of %s on the %s', (id, hull, options) => {
    const part = layUpOf(buildOf(hull, `options: [${options}]`), `option:${id}`);
    expectSound(part);
    expect(part.stage).toBe('fit-out');
  });

  it('are those of every deck, console, locker and tank that is built here', () => {
    expect(LAID.map(({ value }) => value.id)).toEqual(
      expect.arrayContaining([
        'casting-deck-forward',
        'casting-deck-aft',
        'side-console',
        'centre-console',
        'anchor-locker',
        'dry-locker',
        'ballast-tank',
      ]),
    );
  });

  it('grow with the hull and with how many are ordered', () => {
    const area = (hull: string): number =>
      layUpOf(buildOf(hull, 'options: [bench-seat]'), 'option:bench-seat').panels[0]?.area ?? 0;
    expect(area('curlew-560') / area('dunlin-430')).toBeCloseTo(2.25 / 1.85, 9);
    const build = buildOf('teal-370', 'options: [bench-seat]');
    const two = changed(build, 'option:bench-seat', { quantity: 2 });
    expect(layUpOf(two, 'option:bench-seat').panels[0]?.area).toBeCloseTo(2 * 0.32 * 1.6, 9);
  });

  it('raise nothing in the orders of the demonstration', () => {
    const codes = orders.flatMap(({ findings }) => findings.map(({ code }) => code));
    for (const code of ['LAYUP_IMPOSSIBLE', 'LAYUP_MASS_OFF', 'KIT_DIFFERS'] as const) {
      expect(codes).not.toContain(code);
    }
  });
});

const dunlin = buildOf('dunlin-430', 'options: [dry-locker]');

function changed(build: Build, key: string, more: Partial<BuildItem>): Build {
  const items = build.items.map((item) => (item.key === key ? { ...item, ...more } : item));
  return { ...build, items };
}
const told = (build: Build): readonly string[] =>
  checkLaminate({
    build: derive(build),
    laminate: laminateFigures(build),
    partLayUps: partLayUps(build),
    mixing: mixingOf(build),
  }).map(({ code }) => code);
const structure = layUpOf(dunlin, 'structure');
if (!structure.item.layUp) throw new Error('the structure has a lay-up');
const writtenLayUp = structure.item.layUp;

describe('what the lay-up of a part is told', () => {
  it('is LAYUP_MASS_OFF beyond 5 % of the item’s mass', () => {
    const whole = structure.mass.total + structure.rest;
    const at = (share: number) =>
      told(changed(dunlin, 'structure', { mass: kilograms(whole / share) }));
    expect(at(1.051)).toContain('LAYUP_MASS_OFF');
    expect(at(1.049)).not.toContain('LAYUP_MASS_OFF');
    expect(at(0.949)).toContain('LAYUP_MASS_OFF');
    expect(at(0.951)).not.toContain('LAYUP_MASS_OFF');
  });

  it('is KIT_DIFFERS beyond 3 % of what its list has, and when the list has none', () => {
    const tape = structure.kit.lines.find(({ part }) => part === 'TC-0450-TP')?.inBoat ?? 0;
    const { parts } = structure.item;
    const at = (share: number) =>
      told(
        changed(dunlin, 'structure', {
          parts: parts.map((part) =>
            part.code === 'TC-0450-TP'
              ? { ...part, quantity: decimal((tape / share).toFixed(6)) }
              : part,
          ),
        }),
      );
    expect(at(1.031)).toContain('KIT_DIFFERS');
    expect(at(1.029)).not.toContain('KIT_DIFFERS');
    const none = parts.filter(({ code }) => code !== 'TC-0450-TP');
    expect(told(changed(dunlin, 'structure', { parts: none }))).toContain('KIT_DIFFERS');
  });

  it('is LAYUP_IMPOSSIBLE for a floor above the sheer, and not for one below it', () => {
    const sheer = 0.6;
    const at = (height: number) => {
      const { laminate, rest } = writtenLayUp;
      const panels = laminate.panels.map((panel) =>
        panel.flat ? { ...panel, flat: { ...panel.flat, height: metres(height) } } : panel,
      );
      return told(
        changed(dunlin, 'structure', { layUp: { laminate: { ...laminate, panels }, rest } }),
      );
    };
    // From 15 % of the length forward her sheer is at 0.61 m and more.
    expect(at(sheer)).not.toContain('LAYUP_IMPOSSIBLE');
    expect(at(sheer + 0.05)).toContain('LAYUP_IMPOSSIBLE');
  });

  it('is LAYUP_IMPOSSIBLE when nothing is known of a layer', () => {
    const materials = new Map(dunlin.materials);
    materials.delete('TC-0432');
    expect(told({ ...dunlin, materials })).toContain('LAYUP_IMPOSSIBLE');
  });

  it('is told of a hull whose shell has no lay-up as well, with what is mixed for it', () => {
    const { laminate: _, ...hull } = dunlin.hull;
    const figures = computeFigures({ ...dunlin, hull }, []);
    expect(figures.laminate).toHaveProperty('notComputed');
    expect(figures.partLayUps.map(({ item }) => item.key)).toEqual([
      'structure',
      'option:dry-locker',
    ]);
    expect(figures.mixing.map(({ part }) => part)).toContain('TC-0103');
  });
});

describe('fibre by mass', () => {
  const fabric = dunlin.materials.get('TC-0600-BX');
  if (fabric?.kind !== 'fabric') throw new Error('a fabric');
  const { share: _, shares: __, ...bare } = fabric;
  const laid = (process: PartLaminate['process'], material: Partial<Material>, hand = '0.49') => {
    const { workshop } = dunlin.yard;
    const byHand = { ...workshop.fibre.hand, multiaxial: decimal(hand) };
    const yard = {
      ...dunlin.yard,
      workshop: { ...workshop, fibre: { ...workshop.fibre, hand: byHand } },
    };
    const { laminate, rest } = writtenLayUp;
    const items = dunlin.items.map((item) =>
      item.key === 'structure'
        ? { ...item, layUp: { laminate: { ...laminate, process }, rest } }
        : item,
    );
    const one = { ...bare, ...material } as Material;
    const materials = new Map([...dunlin.materials, ['TC-0600-BX', one]]);
    const { panels } = layUpOf({ ...dunlin, yard, items, materials }, 'structure');
    const layer = panels.flatMap(({ layers }) => layers).find(({ name }) => name === 'TC-0600-BX');
    return layer?.kind === 'fabric' ? layer.fibreFraction : Number.NaN;
  };

  it('is the yard’s for the process, unless the material says otherwise, for the process before for all', () => {
    expect(laid('hand', {})).toBe(0.49);
    expect(laid('hand', {}, '0.45')).toBe(0.45);
    expect(laid('infusion', {})).toBe(0.62);
    expect(laid('hand', { share: decimal('0.55') })).toBe(0.55);
    const shares = { hand: decimal('0.44') };
    expect(laid('hand', { share: decimal('0.55'), shares })).toBe(0.44);
    expect(laid('infusion', { share: decimal('0.55'), shares })).toBe(0.55);
  });

  it('goes by the fabric’s architecture', () => {
    expect(laid('hand', { architecture: 'mat' })).toBe(0.3);
    expect(laid('infusion', { architecture: 'woven' })).toBe(0.57);
  });

  it('makes thickness and resin: less fibre, more of both', () => {
    const at = (hand: string) => {
      const { workshop } = dunlin.yard;
      const byHand = { ...workshop.fibre.hand, multiaxial: decimal(hand) };
      const yard = {
        ...dunlin.yard,
        workshop: { ...workshop, fibre: { ...workshop.fibre, hand: byHand } },
      };
      return layUpOf({ ...dunlin, yard }, 'structure').mass;
    };
    // Fibre 2.394 kg of biaxial and 1.485 kg of tape; resin w (1 - psi) / psi, the cores' 1.67 kg beside it.
    expect(at('0.49').fibre).toBeCloseTo(at('0.4').fibre, 9);
    expect(at('0.4').resin - at('0.5').resin).toBeCloseTo(3.879 * (1.5 - 1), 3);
    const tape = ({ panels }: PartLayUp['mass']) =>
      panels.find(({ panel }) => panel.name === 'Taped joints')?.layUp.thickness ?? 0;
    // t = w / 3.072 (2.56 / psi - 1.36) mm: 0.45 kg/m2 at 50 % is 0.551 mm.
    expect(tape(at('0.5')) * 1000).toBeCloseTo((0.45 / 3.072) * (2.56 / 0.5 - 1.36), 6);
    expect(tape(at('0.4'))).toBeGreaterThan(tape(at('0.5')));
  });
});

describe('the kit of the whole boat', () => {
  it('has a material that shell and structure take once, and the shelf meets it once', () => {
    const laminate = laminateFigures(dunlin);
    const shell = 'notComputed' in laminate ? [] : laminate.kit.lines;
    const kits = [shell, ...partLayUps(dunlin).map(({ kit }) => kit.lines)];
    const all = kits.flat();
    const together = boatKit(dunlin, kits);
    const codes = together.map(({ part }) => part);
    expect(new Set(codes).size).toBe(codes.length);
    for (const { part, inBoat, needed, fromStock } of together) {
      const same = all.filter((line) => line.part === part);
      expect(inBoat).toBeCloseTo(
        same.reduce((sum, line) => sum + line.inBoat, 0),
        9,
      );
      const held = decimalToNumber(dunlin.stock?.held.get(part) ?? ZERO);
      expect(fromStock).toBeCloseTo(Math.min(held, needed), 9);
    }
    const biaxial = together.find(({ part }) => part === 'TC-0600-BX');
    // 21.8 m2 in the list of the shell and 4 m2 in that of the structure.
    expect(biaxial?.listed).toBeCloseTo(25.8, 9);
  });
});
