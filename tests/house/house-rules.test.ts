import { bareWords } from './word-rules.ts';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from './gate-tree.ts';
import { projectFiles } from './project-files.ts';
import {
  importsWithoutExtension,
  silencedWithoutReason,
  tooFull,
  tooLong,
  tooManyThrow,
  unitsByHand,
  withoutDocstring,
  withoutSource,
} from './source-rules.ts';
import { ofOneMachine, unescaped, withoutSchemaLine } from './text-rules.ts';

const files = projectFiles(ROOT);
const matching = (pattern: RegExp) => files.filter(({ path }) => pattern.test(path));
const sources = matching(/^src\/.*\.ts$/);
const code = matching(/^(?:src|tests)\/.*\.ts$/);

describe('the house', () => {
  it('is seen by these rules', () => {
    expect(sources.length).toBeGreaterThan(5);
    expect(files.map(({ path }) => path)).toContain('package.json');
  });

  it('says with each exported function what it returns', () => {
    expect(sources.flatMap(withoutDocstring)).toEqual([]);
  });

  it('says in the rooms where each method comes from', () => {
    expect(sources.flatMap(withoutSource)).toEqual([]);
  });

  it('keeps its files short', () => {
    expect(code.flatMap(tooLong)).toEqual([]);
  });

  it('keeps its folders small', () => {
    expect(tooFull(matching(/^(?:src|tests)\//))).toEqual([]);
  });

  it('throws in few places and collects findings in all others', () => {
    expect(tooManyThrow(sources)).toEqual([]);
  });

  it('prints every quantity with the formatter', () => {
    expect(sources.flatMap(unitsByHand)).toEqual([]);
  });

  it('leaves the words that editions differ in to them', () => {
    // The words of a quote of before there were letters are those that it was sent with.
    const templates = matching(/^templates\/(?!quote-before-forms).*\.njk$/);
    expect([...sources, ...templates].flatMap(bareWords)).toEqual([]);
  });

  it('names the file that it imports', () => {
    expect(sources.flatMap(importsWithoutExtension)).toEqual([]);
  });

  it('says why whenever it silences the linter', () => {
    expect(code.flatMap(silencedWithoutReason)).toEqual([]);
  });

  it('escapes everything on a page but its own drawings and styles', () => {
    expect(matching(/^templates\/.*\.njk$/).flatMap(unescaped)).toEqual([]);
  });

  it('holds nothing of the machine that it was written on', () => {
    expect(files.flatMap(ofOneMachine)).toEqual([]);
  });

  it('leads the editor from each file people write to its schema', () => {
    const written = matching(/^(?:orders|catalogue)\/.*\.ya?ml$/);
    const exists = (path: string): boolean => existsSync(join(ROOT, path));
    expect(written.flatMap((file) => withoutSchemaLine(file, exists))).toEqual([]);
  });
});
