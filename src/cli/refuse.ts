import { EXIT } from './exit.ts';
import type { CommandName } from './help.ts';

/** Says on the error stream why a command does not go on; gives the exit code, that of a mistake on the command line. */
export function refuse(command: CommandName, why: string, code: number = EXIT.usage): number {
  process.stderr.write(`orlop ${command}: ${why}\n`);
  return code;
}
