import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { nearestName } from '../findings/index.ts';
import { COMMAND_NAMES, type CommandName, commandOf, flagsOf, type Run } from './commands.ts';
import { flagWords, RUN } from './help.ts';

type CommandLine =
  | Run
  | { readonly kind: 'help'; readonly command: CommandName | undefined }
  | { readonly kind: 'version' }
  | { readonly kind: 'mistake'; readonly message: string };

const PROJECT = fileURLToPath(new URL('../../', import.meta.url));

/** Every flag there is: one that takes a value does so for each command. */
const options = Object.fromEntries(
  COMMAND_NAMES.flatMap((name) => [...flagsOf(name)]).map(([name, { value, short }]) => [
    name,
    { type: value === undefined ? 'boolean' : 'string', ...(short && { short }) } as const,
  ]),
);
const CONFIG = { options, allowPositionals: true, strict: false, tokens: true } as const;

/** Reads the command line. A mistake says what was typed, what may be typed, and what to try. */
export function parseCommandLine(words: readonly string[]): CommandLine {
  const { tokens, positionals } = parseArgs({ args: [...words], ...CONFIG });
  const [name, ...rest] = positionals;
  const flags = tokens.filter((token) => token.kind === 'option');
  const given = new Map(flags.map((flag) => [flag.name, flag.value]));
  const command = COMMAND_NAMES.find((one) => one === name);
  const takes = flagsOf(command);
  if (given.has('version')) return { kind: 'version' };
  if (name !== undefined && !command)
    return mistake(`has no command "${name}"`, command, nearestName(name, COMMAND_NAMES));
  if (given.has('help') || words.length === 0) return { kind: 'help', command };
  for (const flag of flags) {
    const facts = takes.get(flag.name);
    const [typed = ''] = (words[flag.index] ?? '').split('=');
    // "-only" would be read as four flags of a letter each.
    if (!facts || /^-[^-]./.test(typed))
      return mistake(`takes no ${typed}`, command, nearestFlag(typed, command));
    if (facts.value !== undefined && flag.value === undefined)
      return mistake(`needs a value for ${typed}`, command, flagWords([flag.name, facts]));
  }
  if (!command) return mistake('needs a command', command);
  const said = rest.map((word) => `"${word}"`).join(' ');
  const { number } = commandOf(command);
  if (number && rest.length !== 1)
    return mistake(`takes one order number${said && `, not ${said}`}`, command);
  if (!number && said)
    return mistake(`takes no ${said}`, command, takes.has('only') ? `--only ${rest[0]}` : '--help');
  return runOf(command, given, rest[0]);
}

function nearestFlag(typed: string, command: CommandName | undefined): string | undefined {
  const flags = [...flagsOf(command)];
  const word = typed.replace(/^-+/, '').toLowerCase();
  const names = flags.map(([name]) => name);
  const near = names.find((name) => word.length === 1 && name.startsWith(word));
  const meant = near ?? nearestName(word, names);
  return flags.filter(([name]) => name === meant).map(flagWords)[0];
}

/** What was typed, what may be typed, and a command to try. */
function mistake(what: string, command: CommandName | undefined, attempt = '--help'): CommandLine {
  const number = command && commandOf(command).number ? ['NUMBER'] : [];
  const takes = command
    ? `It takes: ${[...number, ...[...flagsOf(command)].map(flagWords)].join(', ')}`
    : `Commands: ${COMMAND_NAMES.join(', ')}`;
  const start = command ? `orlop ${command}` : 'orlop';
  const again = [RUN, command ?? [], attempt === '--help' ? [] : number, attempt].flat().join(' ');
  return { kind: 'mistake', message: `${start} ${what}.\n${takes}.\nTry: ${again}` };
}

type GivenFlags = ReadonlyMap<string, string | undefined>;

/** The options of a command: what was typed, and the defaults of its row for the rest. */
function runOf(command: CommandName, given: GivenFlags, number: string | undefined): Run {
  const workspace = resolve(given.get('workspace') ?? PROJECT);
  const values = Object.entries(commandOf(command).flags).map(([name, flag]) => {
    if (flag.value === undefined) return [name, given.has(name)];
    const text = given.get(name) ?? flag.default;
    return [name, flag.folder ? resolve(given.has(name) ? '' : workspace, text ?? '') : text];
  });
  const own: unknown = {
    ...Object.fromEntries(values),
    workspace,
    ...(number !== undefined && { number }),
  };
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- made of the row that the type is made of
  return { kind: 'run', command, options: own } as Run;
}
