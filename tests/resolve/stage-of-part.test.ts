import { describe, expect, it } from 'vitest';
import { stageOfPart, stagesOf } from '../../src/resolve/index.ts';
import { figuresOf, orders } from '../demonstration/workspace.ts';

const { build } = figuresOf('dunlin-430');
const [shell] = build.items;

function stagesOfCode(code: string): readonly string[] {
  return (shell?.parts ?? [])
    .filter((part) => part.code === code)
    .map((part) => (shell ? stageOfPart(shell, part) : ''));
}

describe('a part is fetched', () => {
  it('where it is used: resin of the skin coat with the laminate, the bag with the infusion', () => {
    expect(stagesOfCode('TC-0102')).toEqual(['laminate']);
    expect(stagesOfCode('TC-0101')).toEqual(['infusion']);
    expect(stagesOfCode('TC-0501')).toEqual(['infusion']);
    expect(stagesOfCode('TC-0510')).toEqual(['mould-preparation']);
    expect(stagesOfCode('TC-0105')).toEqual(['laminate', 'infusion']);
  });

  it('for a stage that its item is worked on in, whatever the catalogue names', () => {
    const [part] = shell?.parts ?? [];
    if (!shell || !part) throw new Error('a shell of parts');
    expect(stageOfPart(shell, { ...part, stage: 'release' })).toBe('release');
    expect(stageOfPart(shell, { ...part, stage: 'trailer' })).toBe('gelcoat');
    for (const { figures } of orders) {
      for (const item of figures?.build.items ?? []) {
        for (const one of item.parts) expect(stagesOf(item)).toContain(stageOfPart(item, one));
      }
    }
  });
});
