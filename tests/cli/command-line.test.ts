import { describe, expect, it } from 'vitest';
import { parseCommandLine } from '../../src/cli/command-line.ts';
import { HELP } from '../../src/cli/help.ts';

const COMMANDS = [
  'build',
  'check',
  'issue',
  'ledger',
  'new',
  'plan',
  'preview',
  'schema',
  'verify',
];
const parse = (line: string) => parseCommandLine(line.split(' ').filter(Boolean), COMMANDS);

describe('the command line', () => {
  it('runs a command with the project as workspace and its _site as output', () => {
    const asked = parse('build');
    if (asked.kind !== 'run') throw new Error(asked.kind);
    expect(asked.command).toBe('build');
    expect(asked.options.out).toBe(`${asked.options.workspace}/_site`);
    expect(asked.options).toMatchObject({ pdf: true, json: false, port: 8080, rest: [] });
  });
  it('puts the output in the workspace that is named', () => {
    const asked = parse('build --workspace /yard --only A-1 --no-pdf');
    expect(asked).toMatchObject({
      kind: 'run',
      options: { workspace: '/yard', out: '/yard/_site', only: 'A-1', pdf: false },
    });
  });
  it.each([
    ['', 'help'],
    ['--help', 'help'],
    ['build --help', 'help'],
    ['check -h', 'help'],
    ['--version', 'version'],
  ])('"%s" asks for %s', (line, kind) => {
    expect(parse(line).kind).toBe(kind);
  });
  it.each([
    ['bulid', 'did you mean "build"'],
    ['build A-1', '--only A-1'],
    ['verify --only A-1', 'takes no --only'],
    ['build --promise A-1', 'takes no --promise'],
    ['build --on 2026-03-20', 'takes no --on'],
    ['preview --port seventy', '--port is a whole number'],
    ['build --frobnicate', 'frobnicate'],
    ['--workspace /yard', 'no command given'],
  ])('"%s" is a mistake that says how to mend it', (line, words) => {
    const asked = parse(line);
    expect(asked).toMatchObject({ kind: 'mistake', message: expect.stringContaining(words) });
  });
  it('has a help text with an example for every command', () => {
    for (const command of COMMANDS) {
      const asked = parse(`${command} --help`);
      expect(asked).toMatchObject({ kind: 'help', command });
      expect(HELP).toHaveProperty(command, expect.stringMatching(/Examples?:\n {2}npm run /));
      expect(HELP.orlop).toContain(`  ${command} `);
    }
  });
});
