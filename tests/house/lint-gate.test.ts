import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { removeTree, runGate, writeTree, type GateResult } from './gate-tree.ts';
import { soundTree } from './sound-tree.ts';

type Plant = { readonly file: string; readonly text: string; readonly rule: string };

const lines = (count: number, line: string): string => `${line}\n`.repeat(count);
const clock = 'export const now = (): number => new Date().getTime();\n';
const readsFile = "import { readFileSync } from 'node:fs';\n\nexport const read = readFileSync;\n";
const defaultExport = 'const value = 1;\n\nexport default value;\n';

/** One file a break: what is planted, and the rule that must name it. */
const PLANTS: readonly Plant[] = [
  {
    file: 'src/float/any.ts',
    text: 'export const show = (value: any): string => String(value);\n',
    rule: 'no-explicit-any',
  },
  {
    file: 'src/float/bang.ts',
    text: 'export const first = (of: readonly number[]): number => of[0]!;\n',
    rule: 'no-non-null-assertion',
  },
  {
    file: 'src/plan/bare.ts',
    text: 'export const at = (text: string): unknown => JSON.parse(text).at;\n',
    rule: 'no-unsafe-member-access',
  },
  { file: 'src/mass/clock.ts', text: clock, rule: 'no-restricted-globals' },
  { file: 'src/schema/clock.ts', text: clock, rule: 'no-restricted-globals' },
  { file: 'src/plan/clock.ts', text: clock, rule: 'no-restricted-globals' },
  {
    file: 'src/documents/machine.ts',
    text: 'export const machine = (): string => process.platform;\n',
    rule: 'no-restricted-globals',
  },
  {
    file: 'src/draw/dice.ts',
    text: 'export const dice = (): number => Math.random();\n',
    rule: 'no-restricted-properties',
  },
  { file: 'src/tow/file.ts', text: readsFile, rule: 'no-restricted-imports' },
  { file: 'src/resolve/file.ts', text: readsFile, rule: 'no-restricted-imports' },
  { file: 'src/derive/file.ts', text: readsFile, rule: 'no-restricted-imports' },
  {
    file: 'src/price/said.ts',
    text: "export const say = (): void => console.log('a room is silent');\n",
    rule: 'no-console',
  },
  { file: 'src/limits/default.ts', text: defaultExport, rule: 'no-default-export' },
  { file: 'tests/default.test.ts', text: defaultExport, rule: 'no-default-export' },
  {
    file: 'src/cli/adrift.ts',
    text: 'export function start(): void {\n  Promise.resolve(1);\n}\n',
    rule: 'no-floating-promises',
  },
  {
    file: 'src/findings/missing.ts',
    text: [
      "export function level(severity: 'error' | 'warning' | 'note'): number {",
      '  switch (severity) {',
      "    case 'error':",
      '      return 2;',
      "    case 'warning':",
      '      return 1;',
      '  }',
      '  return 0;',
      '}\n',
    ].join('\n'),
    rule: 'switch-exhaustiveness-check',
  },
  {
    file: 'src/units/loose.ts',
    text: "export const same = (a: unknown): boolean => a == 'kg';\n",
    rule: 'eqeqeq',
  },
  {
    file: 'src/money/types.ts',
    text: "import { View } from '../documents/view.ts';\n\nexport type Seen = View;\n",
    rule: 'consistent-type-imports',
  },
  {
    file: 'src/site/egg.ts',
    text: "import { hen } from './hen.ts';\n\nexport const egg = (): string => hen();\n",
    rule: 'no-cycle',
  },
  {
    file: 'src/site/long-file.ts',
    text: lines(301, '// one more line'),
    rule: 'max-lines',
  },
  {
    file: 'src/print/long-function.ts',
    text: `export function long(): string {\n  let text = '';\n${lines(60, "  text += 'a';")}  return text;\n}\n`,
    rule: 'max-lines-per-function',
  },
  {
    file: 'src/electrics/quiet.ts',
    text: '// oxlint-disable-next-line no-var -- nothing to silence here\nexport const amps = 5;\n',
    rule: 'unused-directive',
  },
];

const ALLOWED = {
  'tests/vitest.config.ts': defaultExport,
  '.eleventy.js': defaultExport,
  'src/cli/clock.ts': clock,
  'src/print/file.ts': readsFile,
  'src/schema/steel-table.ts': `export const rows = [\n${lines(301, '  1,')}];\n`,
  '_site/page.js': defaultExport,
  '.cache/page.js': defaultExport,
};

type Diagnostic = {
  readonly code?: string;
  readonly message: string;
  readonly filename: string;
};
type Report = { readonly diagnostics: readonly Diagnostic[]; readonly number_of_files: number };

const LINT = ['--type-aware', '--deny-warnings', '--format', 'json'] as const;
const trees: string[] = [];
let sound: GateResult;
let planted: GateResult;

beforeAll(async () => {
  const plants = Object.fromEntries(PLANTS.map(({ file, text }) => [file, text]));
  const hen = "import { egg } from './egg.ts';\n\nexport const hen = (): string => egg();\n";
  trees.push(writeTree({ ...soundTree(), ...ALLOWED }));
  trees.push(writeTree({ ...soundTree(), ...plants, 'src/site/hen.ts': hen }));
  const [soundAt = '', plantedAt = ''] = trees;
  [sound, planted] = await Promise.all([
    runGate(soundAt, 'oxlint', LINT),
    runGate(plantedAt, 'oxlint', LINT),
  ]);
}, 60_000);

afterAll(() => trees.forEach(removeTree));

/** The rule that speaks: `max-lines` of `eslint(max-lines)`. */
function ruleOf({ code, message }: Diagnostic): string {
  if (code === undefined) return /^Unused .*directive/.test(message) ? 'unused-directive' : message;
  return /\(([\w-]+)\)/.exec(code)?.[1] ?? code;
}

const report = ({ output }: GateResult): Report => JSON.parse(output) as Report;

describe('the lint gate', () => {
  it('passes a sound tree, the shell with its clock and files included', () => {
    expect(report(sound).diagnostics).toEqual([]);
    expect(sound.status).toBe(0);
    expect(report(sound).number_of_files).toBeGreaterThan(45);
  });

  it('fails a tree with planted breaks', () => {
    expect(planted.status).toBeGreaterThan(0);
  });

  it.each(PLANTS)('names $rule for $file', ({ file, rule }) => {
    const here = report(planted).diagnostics.filter(({ filename }) => filename === file);
    expect(here.map(ruleOf)).toContain(rule);
  });
});
