import { describe, expect, it } from 'vitest';
import { HULL } from '../read/samples.ts';
import { resolveSample } from './invented.ts';

const MATERIALS = `materials:
  - { kind: fabric, part: AC-1, fibre: 600 g/m2, share: 60%, wetWith: AC-2 }
  - { kind: resin, part: AC-2 }
`;
const laminate = (lines: string): string => HULL.replace('moulds:', `laminate:\n${lines}moulds:`);
const PANELS = '  panels: [{ name: Bottom, strip: [0, 1], layers: [AC-1] }]\n';

/** Findings of the catalogue as code and what was received. */
function told(hull: string, materials = MATERIALS, stock?: string): readonly string[] {
  const { ofCatalogue } = resolveSample({
    'catalogue/hulls/tern-400.yaml': hull,
    'catalogue/materials.yaml': materials,
    ...(stock !== undefined && { 'catalogue/stock.yaml': stock }),
  });
  return ofCatalogue.map(({ code, received }) => `${code} ${received}`);
}

describe('materials, stock and lay-ups', () => {
  it('are sound when every code is known', () => {
    expect(told(laminate(PANELS))).toEqual([]);
  });

  it.each([
    [
      'a layer of an unknown material',
      PANELS.replace('[AC-1]', '[AC-9]'),
      /coat or fabric or core or ready-made "AC-9"/,
    ],
    [
      'a resin as a layer',
      PANELS.replace('[AC-1]', '[AC-2]'),
      /coat or fabric or core or ready-made "AC-2"/,
    ],
    [
      'a strip beyond the lines',
      PANELS.replace('[0, 1]', '[0, 9]'),
      /OUT_OF_RANGE from point 0 to 9/,
    ],
    ['a strip upside down', PANELS.replace('[0, 1]', '[1, 1]'), /OUT_OF_RANGE from point 1 to 1/],
    [
      'a piece of what is no fabric',
      `${PANELS}  pieces: [{ name: Half, length: 4 m, width: 1 m, of: [AC-2] }]\n`,
      /fabric "AC-2"/,
    ],
    [
      'a bottom panel of another name',
      `${PANELS}  bottom: { panel: Keel, short: 0.3 m, long: 1 m, forward: 1 m, waterline: 3 m, speed: 20 kn }\n`,
      /panel "Keel"/,
    ],
  ])('are told %s', (_, lines, words) => {
    const found = told(laminate(lines));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(words);
  });

  const inStructure = (lines: string): string =>
    HULL.replace(/(\nstructure:\n)/, `$1  laminate:\n${lines}`);

  it.each([
    ['a sound lay-up', '[0, 1]', 'AC-1', 'AC-2', []],
    ['an unknown layer', '[0, 1]', 'AC-9', 'AC-2', [/fabric or core or ready-made "AC-9"/]],
    ['a resin that is none', '[0, 1]', 'AC-1', 'AC-1', [/resin "AC-1"/]],
    ['a strip beyond the lines', '[0, 9]', 'AC-1', 'AC-2', [/OUT_OF_RANGE from point 0 to 9/]],
  ])('of the structure are told %s', (_, strip, layer, resin, words) => {
    const found = told(
      inStructure(
        `    resin: ${resin}\n    panels: [{ name: Liner, strip: ${strip}, layers: [${layer}] }]\n`,
      ),
    );
    expect(found).toHaveLength(words.length);
    for (const [index, word] of words.entries()) expect(found[index]).toMatch(word);
  });

  it('are told codes that no price list has', () => {
    const found = told(
      HULL,
      MATERIALS.replace('part: AC-1', 'part: AC-77'),
      'counted: 2026-11-01\nstock: [{ part: AC-88, quantity: 2 }]\n',
    );
    expect(found.join('\n')).toMatch(/part "AC-77".*\n.*part "AC-88"/);
  });
});
