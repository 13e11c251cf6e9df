import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { removeTree, ROOT, runGate, writeTree, type Files, type GateResult } from './gate-tree.ts';
import { soundTree } from './sound-tree.ts';

type Plant = { readonly file: string; readonly text: string; readonly rule: string };

/** One file a break: what is planted, and the rule that must name it. */
const PLANTS: readonly Plant[] = [
  ['src/plan/egg.ts', "import './hen.ts';", 'no-circular'],
  ['src/plan/deep.ts', "import '../figures/figures.ts';", 'one-face'],
  ['src/attic/attic.ts', "import '../units/index.ts';", 'every-folder-has-a-level'],
  ['src/units/bad.ts', "import '../findings/index.ts';", 'ground-stands-alone'],
  ['src/maths/bad.ts', "import '../units/index.ts';", 'ground-stands-alone'],
  ['src/findings/bad.ts', "import '../money/index.ts';", 'ground-stands-alone'],
  ['src/money/bad.ts', "import '../findings/index.ts';", 'money-imports-units-only'],
  ['src/schema/bad.ts', "import '../read/index.ts';", 'schema-looks-down'],
  ['src/read/bad.ts', "import '../resolve/index.ts';", 'read-looks-down'],
  ['src/resolve/bad.ts', "import '../figures/index.ts';", 'resolve-looks-down'],
  ['src/derive/bad.ts', "import '../mass/index.ts';", 'derive-looks-down'],
  ['src/float/bad.ts', "import '../mass/index.ts';", 'rooms-import-ground-only'],
  ['src/price/bad.ts', "import '../schema/index.ts';", 'rooms-import-ground-only'],
  [
    'src/tow/bad.ts',
    "import type { massName } from '../mass/index.ts';\nexport type M = typeof massName;",
    'rooms-import-ground-only',
  ],
  ['src/figures/bad.ts', "import '../documents/index.ts';", 'figures-look-down'],
  ['src/issued/bad.ts', "import '../plan/index.ts';", 'issued-looks-down'],
  ['src/issued/form/bad.ts', "import '../../schema/index.ts';", 'sent-quotes-stand-alone'],
  [
    'src/issued/form/types.ts',
    "import type { figuresName } from '../../figures/index.ts';\nexport type F = typeof figuresName;",
    'sent-quotes-stand-alone',
  ],
  ['src/issued/form/up.ts', "import '../bad.ts';", 'sent-quotes-stand-alone'],
  ['src/plan/bad.ts', "import '../verify/index.ts';", 'plan-looks-down'],
  ['src/verify/bad.ts', "import '../draw/index.ts';", 'verify-looks-down'],
  ['src/documents/bad.ts', "import '../site/index.ts';", 'documents-look-down'],
  ['src/draw/bad.ts', "import '../documents/index.ts';", 'draw-looks-down'],
  ['src/site/bad.ts', "import '../print/index.ts';", 'site-and-print-stand-apart'],
  ['src/print/bad.ts', "import '../cli/index.ts';", 'site-and-print-stand-apart'],
  ['src/cli/room.ts', "import '../float/index.ts';", 'only-figures-calls-rooms'],
  ['src/mass/fs.ts', "import 'node:fs';", 'rooms-are-pure'],
  ['src/laminate/path.ts', "import 'path';", 'rooms-are-pure'],
  ['src/resolve/fs.ts', "import 'node:fs';", 'only-reader-and-shell-touch-the-machine'],
  ['src/documents/os.ts', "import 'node:os';", 'only-reader-and-shell-touch-the-machine'],
  ['src/figures/reader.ts', "import '../read/index.ts';", 'pure-folders-never-run-the-reader'],
  ['src/price/dinero.ts', "import 'dinero.js';", 'only-money-knows-dinero'],
  ['src/cli/check.ts', "import 'fast-check';", 'no-development-packages'],
  ['src/cli/gone.ts', "import '../site/gone.ts';", 'no-unresolvable'],
].map(([file = '', text = '', rule = '']) => ({ file, text: `${text}\n`, rule }));

const LAYERS = ['src', '--config', '.dependency-cruiser.cjs'] as const;
const trees: string[] = [];
let sound: GateResult;
let planted: GateResult;
let present: GateResult;

beforeAll(async () => {
  const plants: Files = Object.fromEntries(PLANTS.map(({ file, text }) => [file, text]));
  trees.push(writeTree(soundTree()));
  trees.push(writeTree({ ...soundTree(), ...plants, 'src/plan/hen.ts': "import './egg.ts';\n" }));
  const [soundAt = '', plantedAt = ''] = trees;
  [sound, planted, present] = await Promise.all([
    runGate(soundAt, 'depcruise', LAYERS),
    runGate(plantedAt, 'depcruise', LAYERS),
    runGate(ROOT, 'depcruise', LAYERS),
  ]);
}, 60_000);

afterAll(() => trees.forEach(removeTree));

const modulesSeen = (output: string): number =>
  Number(/(\d+) modules, \d+ dependencies cruised/.exec(output)?.[1] ?? 0);

/** The rules that named a file, from lines such as `  error rule: from → to`. */
function rulesNaming(output: string, file: string): readonly string[] {
  const lines = output.split('\n').map((line) => /^\s*error ([\w-]+): (\S+)/.exec(line));
  return lines.flatMap((found) => (found?.[1] && found[2] === file ? [found[1]] : []));
}

const sourcesIn = (folder: string): number =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ts'),
  ).length;

describe('the layers gate', () => {
  it('passes a tree in which every import is allowed', () => {
    expect(sound.output).toContain('no dependency violations found');
    expect(sound.status).toBe(0);
  });

  it('sees the modules that it passes (under an unknown TypeScript it would see none)', () => {
    expect(modulesSeen(sound.output)).toBeGreaterThan(40);
    expect(modulesSeen(present.output)).toBeGreaterThanOrEqual(sourcesIn('src'));
  });

  it('passes the sources of Orlop', () => {
    expect(present.output.match(/^\s*error .*$/gm) ?? []).toEqual([]);
    expect(present.status).toBe(0);
  });

  it('fails a tree with planted breaks', () => {
    expect(planted.status).toBeGreaterThan(0);
  });

  it.each(PLANTS)('names $rule for $file', ({ file, rule }) => {
    expect(rulesNaming(planted.output, file)).toContain(rule);
  });

  it('blames only the planted files', () => {
    const guilty = new Set([...PLANTS.map(({ file }) => file), 'src/plan/hen.ts']);
    const named = planted.output.matchAll(/^\s*error [\w-]+: (\S+)/gm);
    expect([...named].map(([, file = '']) => file).filter((file) => !guilty.has(file))).toEqual([]);
  });

  it('has no rule that was not seen to fail, and no rule without a way to remedy', () => {
    type Rule = { readonly name: string; readonly severity: string; readonly comment: string };
    const load = createRequire(import.meta.url);
    const rules = (load('../../.dependency-cruiser.cjs') as { forbidden: readonly Rule[] })
      .forbidden;
    expect(rules.map(({ name }) => name).toSorted()).toEqual(
      [...new Set(PLANTS.map(({ rule }) => rule))].toSorted(),
    );
    expect(rules.filter((rule) => rule.severity !== 'error' || rule.comment.length < 60)).toEqual(
      [],
    );
  });
});
