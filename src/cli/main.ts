import { parseCommandLine } from './command-line.ts';
import type { CommandName, CommandOptions, Run } from './commands.ts';
import { build } from './build.ts';
import { check } from './check.ts';
import { helpText } from './help.ts';
import { issue } from './issue.ts';
import { ledger } from './ledger.ts';
import { newOrder } from './new.ts';
import { programName } from './program.ts';
import { plan } from './plan.ts';
import { preview } from './preview.ts';
import { EXIT } from './exit.ts';
import { schema } from './schema.ts';
import { verify } from './verify.ts';

const RUNNERS: {
  readonly [Name in CommandName]: (options: CommandOptions<Name>) => Promise<number>;
} = {
  build,
  check,
  issue,
  ledger,
  new: newOrder,
  plan,
  preview,
  schema,
  verify,
};

/**
 * Runs one command.
 *
 * @param words - the command line without the program's name
 * @returns the exit code: 0 fine, 1 findings of error level, 2 usage
 */
export async function main(words: readonly string[]): Promise<number> {
  const asked = parseCommandLine(words);
  if (asked.kind === 'help') {
    process.stdout.write(helpText(asked.command));
    return EXIT.fine;
  }
  if (asked.kind === 'version') {
    process.stdout.write(`${programName()}\n`);
    return EXIT.fine;
  }
  if (asked.kind === 'mistake') {
    process.stderr.write(`${asked.message}\n`);
    return EXIT.usage;
  }
  try {
    return await run(asked);
  } catch (error) {
    process.stderr.write(`orlop ${asked.command}: ${describe(error)}\n`);
    return EXIT.findings;
  }
}

function run<Name extends CommandName>({ command, options }: Run<Name>): Promise<number> {
  return RUNNERS[command](options);
}

function describe(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return process.env['ORLOP_DEBUG'] ? (error.stack ?? error.message) : error.message;
}
