import { describe, expect, expectTypeOf, it } from 'vitest';
import { parseCommandLine } from '../../src/cli/command-line.ts';
import { COMMAND_NAMES, type CommandOptions, COMMANDS, flagsOf } from '../../src/cli/commands.ts';
import { helpText } from '../../src/cli/help.ts';
import { loaded } from '../demonstration/workspace.ts';

/** The words of a line as a shell gives them. */
const wordsOf = (line: string) =>
  [...line.matchAll(/"([^"]*)"|\S+/g)].map(([all, said]) => said ?? all);
const parse = (line: string) => parseCommandLine(wordsOf(line));

describe('the command line', () => {
  it('runs a command with the project as workspace and its _site as output', () => {
    const asked = parse('build');
    if (asked.kind !== 'run' || asked.command !== 'build') throw new Error(asked.kind);
    const { workspace, ...others } = asked.options;
    expect(others).toEqual({ only: undefined, 'no-pdf': false, out: `${workspace}/_site` });
  });
  it('puts the output in the workspace that is named, or where it is told', () => {
    expect(parse('build --workspace /yard --only A-1 --no-pdf')).toEqual({
      kind: 'run',
      command: 'build',
      options: { workspace: '/yard', out: '/yard/_site', only: 'A-1', 'no-pdf': true },
    });
    expect(parse('schema -- --workspace')).toMatchObject({ kind: 'mistake' });
    expect(parse('schema --workspace /yard')).toHaveProperty(
      'options.out',
      '/yard/catalogue/schema',
    );
    expect(parse('schema --workspace /yard --out /else')).toHaveProperty('options.out', '/else');
  });
  it('gives a command what its row of the table names, and nothing else', () => {
    expectTypeOf<CommandOptions<'issue'>>().toEqualTypeOf<
      { readonly on: string | undefined } & { readonly workspace: string } & {
        readonly number: string;
      }
    >();
    expectTypeOf<CommandOptions<'preview'>['port']>().toEqualTypeOf<string>();
    expectTypeOf<CommandOptions<'verify'>>().not.toHaveProperty('out');
    const asked = parse('issue A-1 --on 2026-03-20 --workspace /yard');
    expect(asked).toHaveProperty('options', {
      number: 'A-1',
      on: '2026-03-20',
      workspace: '/yard',
    });
  });
  it.each([
    ['', 'help'],
    ['--help', 'help'],
    ['build --help', 'help'],
    ['check -h', 'help'],
    ['--version', 'version'],
    ['-v', 'version'],
  ])('"%s" asks for %s', (line, kind) => {
    expect(parse(line).kind).toBe(kind);
  });
  it.each([
    ['bulid', 'no command "bulid"', 'build'],
    ['frobnicate', 'no command "frobnicate"', '--help'],
    ['build A-1', 'build takes no "A-1"', 'build --only A-1'],
    ['plan A-1', 'plan takes no "A-1"', 'plan --help'],
    ['verify --only A-1', 'verify takes no --only', 'verify --help'],
    ['verify --out /tmp', 'verify takes no --out', 'verify --help'],
    ['issue A-1 --out=/tmp', 'issue takes no --out', 'issue --help'],
    ['build --promise A-1', 'build takes no --promise', 'build --help'],
    ['plan --promis A-1', 'plan takes no --promis', 'plan --promise NUMBER'],
    ['issue A-1 --onn 2026-03-20', 'issue takes no --onn', 'issue NUMBER --on DAY'],
    ['preview -p 80', 'preview takes no -p', 'preview --port N'],
    ['build -x', 'build takes no -x', 'build --help'],
    ['check -only A-1', 'check takes no -only', 'check --only NUMBER'],
    ['-V', 'orlop takes no -V', '--version'],
    ['check --only', 'check needs a value for --only', 'check --only NUMBER'],
    ['new', 'new takes one order number', 'new --help'],
    ['issue A-1 A-2', 'issue takes one order number, not "A-1" "A-2"', 'issue --help'],
    ['--workspace /yard', 'orlop needs a command', '--help'],
  ])('"%s" is a mistake: what was typed, what may be typed, what to try', (line, what, attempt) => {
    const asked = parse(line);
    if (asked.kind !== 'mistake') throw new Error(asked.kind);
    const [first, second, third] = asked.message.split('\n');
    expect(first).toBe(
      `orlop ${what.replace(/^orlop /, '').replace(/^no command/, 'has no command')}.`,
    );
    const [name] = wordsOf(line);
    const command = COMMAND_NAMES.find((one) => one === name);
    const allowed = command
      ? [...flagsOf(command).keys()].map((flag) => `--${flag}`)
      : COMMAND_NAMES;
    for (const word of allowed) expect(second).toContain(word);
    expect(third).toBe(`Try: npm run orlop -- ${attempt}`);
  });
});

describe('help', () => {
  it.each([undefined, ...COMMAND_NAMES])(
    'of %s fits in 80 columns and names every flag',
    (name) => {
      const text = helpText(name);
      expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
      for (const flag of flagsOf(name).keys()) expect(text).toContain(`  --${flag}`);
      expect(text).toMatch(/^Usage: npm run orlop -- /);
      expect(text).toMatch(/Examples:\n {2}npm run orlop -- \S/);
      expect(text.replaceAll(/\s+/g, ' ')).toMatch(/Exit codes: 0 fine; 1 .*; 2 a mistake/);
    },
  );
  it('of the program names every command with what it does', () => {
    for (const name of COMMAND_NAMES)
      expect(helpText()).toMatch(new RegExp(`^  ${name} +[A-Z].*[^.]$`, 'm'));
  });
  it('says a default where there is one', () => {
    expect(helpText('build')).toContain('(default: _site in the workspace)');
    expect(helpText('preview')).toContain('(default: 8080)');
  });
  const examples = Object.values(COMMANDS).flatMap(
    (command): readonly string[] => command.examples,
  );
  it.each(examples)('"%s" runs: it is understood, and names what the demonstration has', (line) => {
    const asked = parse(line);
    if (asked.kind !== 'run') throw new Error(`${line}: ${asked.kind}`);
    const orders = loaded.orders.map(({ order }) => order.value.number);
    for (const [number] of line.matchAll(/DC-\d+/g)) expect(orders).toContain(number);
    const hull = asked.command === 'new' ? asked.options.hull : 'dunlin-430';
    expect([...(loaded.catalogue?.hulls.keys() ?? [])]).toContain(hull);
  });
});
