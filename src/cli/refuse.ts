import type { CommandName } from './commands.ts';
import { EXIT } from './exit.ts';
import { RUN } from './help.ts';

/** Says on the error stream why a command does not go on; gives the exit code, that of a mistake on the command line. */
export function refuse(command: CommandName, why: string, code: number = EXIT.usage): number {
  const attempt = code === EXIT.usage ? `Try: ${RUN} ${command} --help\n` : '';
  process.stderr.write(`orlop ${command}: ${why}\n${attempt}`);
  return code;
}
