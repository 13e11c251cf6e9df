import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { nearestName } from '../findings/index.ts';
import type { CommandName } from './help.ts';

/** What every command is given; a command reads those that its help names. */
export interface CommandOptions {
  /** Absolute folder with orders/ and catalogue/. */
  readonly workspace: string;
  /** Absolute folder that documents are written to. */
  readonly out: string;
  readonly only?: string;
  /** Words after the command. */
  readonly rest: readonly string[];
  readonly json: boolean;
  readonly pdf: boolean;
  readonly hull?: string;
  readonly customer?: string;
  readonly port: number;
  /** The order that a date is asked for. */
  readonly promise?: string;
  /** The day that a quote is issued on, when not this one. */
  readonly on?: string;
  /** A digest that the ledger is held against. */
  readonly check?: string;
  readonly takeIn: boolean;
}

export type CommandLine =
  | { readonly kind: 'run'; readonly command: CommandName; readonly options: CommandOptions }
  | { readonly kind: 'help'; readonly command?: CommandName }
  | { readonly kind: 'version' }
  | { readonly kind: 'mistake'; readonly message: string };

const PROJECT = fileURLToPath(new URL('../../', import.meta.url));

const FLAGS = {
  workspace: { type: 'string', short: 'w' },
  out: { type: 'string', short: 'o' },
  only: { type: 'string' },
  json: { type: 'boolean' },
  'no-pdf': { type: 'boolean' },
  hull: { type: 'string' },
  customer: { type: 'string' },
  port: { type: 'string' },
  promise: { type: 'string' },
  on: { type: 'string' },
  check: { type: 'string' },
  'take-in': { type: 'boolean' },
  version: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

/** Flags that a command takes beside --workspace, --out and --help. */
const TAKES: Readonly<Record<CommandName, readonly string[]>> = {
  build: ['only', 'no-pdf'],
  check: ['only', 'json'],
  issue: ['on'],
  ledger: ['check', 'take-in'],
  new: ['hull', 'customer'],
  plan: ['promise', 'json'],
  preview: ['port'],
  schema: [],
  verify: ['json'],
};

/** Reads the command line; a mistake names the nearest right word. */
export function parseCommandLine(
  words: readonly string[],
  commands: readonly string[],
): CommandLine {
  const parsed = tryParse(words);
  if (typeof parsed === 'string') return mistake(parsed);
  const { values, positionals } = parsed;
  const [name, ...rest] = positionals;
  if (values.version) return { kind: 'version' };
  if (name === undefined)
    return values.help || words.length === 0 ? { kind: 'help' } : mistake('no command given');
  if (!isCommand(name, commands)) {
    const near = nearestName(name, commands);
    return mistake(
      `there is no command "${name}"${near === undefined ? '' : `; did you mean "${near}"?`}`,
    );
  }
  if (values.help) return { kind: 'help', command: name };
  const stray = Object.keys(values).find(
    (flag) => !['workspace', 'out', 'help', ...TAKES[name]].includes(flag),
  );
  if (stray !== undefined) return mistake(`orlop ${name} takes no --${stray}`);
  if (name !== 'new' && name !== 'issue' && rest.length > 0)
    return mistake(
      `orlop ${name} takes no "${rest.join(' ')}"; for one order write --only ${rest[0]}`,
    );
  const port = Number(values.port ?? 8080);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    return mistake('--port is a whole number from 1 to 65535');
  return {
    kind: 'run',
    command: name,
    options: {
      workspace: resolve(values.workspace ?? PROJECT),
      out: resolve(values.out ?? resolve(values.workspace ?? PROJECT, '_site')),
      rest,
      json: values.json ?? false,
      pdf: !(values['no-pdf'] ?? false),
      takeIn: values['take-in'] ?? false,
      port,
      ...(values.only !== undefined && { only: values.only }),
      ...(values.promise !== undefined && { promise: values.promise }),
      ...(values.on !== undefined && { on: values.on }),
      ...(values.check !== undefined && { check: values.check }),
      ...(values.hull !== undefined && { hull: values.hull }),
      ...(values.customer !== undefined && { customer: values.customer }),
    },
  };
}

function tryParse(words: readonly string[]) {
  try {
    return parseArgs({ args: [...words], options: FLAGS, allowPositionals: true });
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

function isCommand(name: string, commands: readonly string[]): name is CommandName {
  return commands.includes(name);
}

function mistake(message: string): CommandLine {
  return {
    kind: 'mistake',
    message: `orlop: ${message}\nRun "npm run orlop -- --help" for the commands.`,
  };
}
