import { COMMAND_NAMES, type CommandName, commandOf, type Flag, flagsOf } from './commands.ts';

/** What stands before a command when it is typed. */
export const RUN = 'npm run orlop --';
const WIDTH = 80;

/** The text of --help: of the program, or of one command. */
export function helpText(name?: CommandName): string {
  const command = name && commandOf(name);
  const flags = [...flagsOf(name)].map((flag) => [flagWords(flag), meaning(flag[1])] as const);
  const blocks = [
    [`Usage: ${RUN} ${name ?? 'COMMAND'}${command?.number ? ' NUMBER' : ''} [options]`],
    wrap(command?.text ?? 'From one order file: price, weight, and what each person does next.'),
    command ? [] : aligned(COMMAND_NAMES.map((one) => [one, summaryOf(one)])),
    aligned(flags),
    ['Examples:', ...(command?.examples ?? ['check --help']).map((line) => `  ${RUN} ${line}`)],
    wrap(`Exit codes: 0 fine; 1 ${command?.fails ?? 'not done'}; 2 a mistake on the command line.`),
  ];
  return blocks
    .filter((block) => block.length > 0)
    .map((block) => `${block.join('\n')}\n`)
    .join('\n');
}

/** What a command does, without its full stop. */
const summaryOf = (name: CommandName): string => commandOf(name).text.replace(/\.(?: .*|)$/, '');

/** A flag as it is typed: "--only NUMBER". */
export const flagWords = ([name, { value }]: readonly [string, Flag]): string =>
  `--${name}${value === undefined ? '' : ` ${value}`}`;

const meaning = ({ help, default: usual, folder }: Flag): string =>
  usual === undefined ? help : `${help} (default: ${usual}${folder ? ' in the workspace' : ''})`;

/** Two columns: what is typed, and what it does. */
function aligned(rows: readonly (readonly [string, string])[]): readonly string[] {
  const left = Math.max(...rows.map(([typed]) => typed.length)) + 4;
  return rows.flatMap(([typed, does]) =>
    wrap(does, WIDTH - left).map(
      (line, index) => `${(index === 0 ? `  ${typed}` : '').padEnd(left)}${line}`,
    ),
  );
}

/** Lines broken between words. */
const wrap = (text: string, width = WIDTH): readonly string[] =>
  text.match(new RegExp(`\\S.{0,${width - 1}}(?=\\s|$)`, 'g')) ?? [];
