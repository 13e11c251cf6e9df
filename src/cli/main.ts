import { parseCommandLine } from './command-line.ts';
import { build } from './build.ts';
import { check } from './check.ts';
import { HELP } from './help.ts';
import { issue } from './issue.ts';
import { ledger } from './ledger.ts';
import { newOrder } from './new.ts';
import { programName } from './program.ts';
import { plan } from './plan.ts';
import { preview } from './preview.ts';
import { EXIT } from './exit.ts';
import { schema } from './schema.ts';
import { verify } from './verify.ts';

const COMMANDS = {
  build,
  check,
  issue,
  ledger,
  new: newOrder,
  plan,
  preview,
  schema,
  verify,
} as const;

/**
 * Runs one command.
 *
 * @param words - the command line without the program's name
 * @returns the exit code: 0 fine, 1 findings of error level, 2 usage
 */
export async function main(words: readonly string[]): Promise<number> {
  const asked = parseCommandLine(words, Object.keys(COMMANDS));
  if (asked.kind === 'help') {
    process.stdout.write(asked.command === undefined ? HELP.orlop : HELP[asked.command]);
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
    return await COMMANDS[asked.command](asked.options);
  } catch (error) {
    process.stderr.write(`orlop ${asked.command}: ${describe(error)}\n`);
    return EXIT.findings;
  }
}

function describe(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return process.env['ORLOP_DEBUG'] ? (error.stack ?? error.message) : error.message;
}
