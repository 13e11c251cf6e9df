/** A flag: with a `value` it takes a word after it, without it is on or off. */
export interface Flag {
  readonly help: string;
  readonly value?: string;
  readonly short?: string;
  readonly default?: string;
  /** True for a folder, whose default stands in the workspace. */
  readonly folder?: true;
}

interface Command {
  /** What it does; the first sentence stands in the list of commands. */
  readonly text: string;
  /** True for a command that must be given the number of one order. */
  readonly number?: true;
  readonly flags: Readonly<Record<string, Flag>>;
  /** What exit code 1 means. */
  readonly fails: string;
  /** Command lines that run as they stand in the demonstration. */
  readonly examples: readonly string[];
}

const yes = (help: string) => ({ help });
const text = (value: string, help: string) => ({ help, value });
const folder = (usual: string, help: string) =>
  ({ help, value: 'DIR', default: usual, folder: true }) as const;

/** Flags that may be given with any command. */
const COMMON: Readonly<Record<string, Flag>> = {
  workspace: text('DIR', 'folder with orders/ and catalogue/ (default: this project)'),
  help: { help: 'this text; also -h', short: 'h' },
  version: { help: 'which version this is; also -v', short: 'v' },
};

/** Each command with all that it takes: parsing, help and mistakes are made of this. */
export const COMMANDS = {
  check: {
    text: 'Reads every order and catalogue file and says what is wrong. Each finding has its file, line and column.',
    flags: {
      only: text('NUMBER', 'findings of one order and of the catalogue only'),
      json: yes('findings as JSON'),
    },
    fails: 'there are errors',
    examples: ['check', 'check --only DC-2608'],
  },
  build: {
    text: 'Makes every document: pages, PDFs and figures. Those for the yard are in yard/ of the output folder, those for customers in customer/.',
    flags: {
      only: text('NUMBER', 'documents of one order, and the pages of the yard'),
      'no-pdf': yes('pages only'),
      out: folder('_site', 'folder to write to'),
    },
    fails: 'there are errors, or a document could not be made',
    examples: ['build', 'build --only DC-2608 --no-pdf'],
  },
  preview: {
    text: 'Shows the pages in a browser while you type. They are on this machine only, and are made again when an order or the catalogue is saved. Writes no file. Ctrl-C ends it.',
    flags: { port: { ...text('N', 'port, from 1 to 65535'), default: '8080' } },
    fails: 'the pages cannot be shown, for example because the port is in use',
    examples: ['preview', 'preview --port 8081'],
  },
  new: {
    text: 'Starts an order file. In orders/NUMBER.yaml, what somebody must ask is left out or has question marks; the quote cannot be issued until it is filled in. Never overwrites a file.',
    number: true,
    flags: {
      hull: text('ID', 'a hull of the catalogue; needed'),
      customer: text('NAME', 'who it is for'),
    },
    fails: 'the file could not be written',
    examples: ['new 2026-041 --hull dunlin-430 --customer "Reed Bank Oysters"'],
  },
  issue: {
    text: 'Seals the quote of an order as it is sent. orders/issued/NUMBER-rREVISION.pdf is the quote, .html its page, .json all its figures with a digest of each file it was made from; orders/issued/ledger.jsonl gets a line with the digests of the three. From then on the quote is a copy of these files, whatever changes in the catalogue. A change is a new revision with a table of what changed; after acceptance it is a variation. An order that is not fit to be sent is refused.',
    number: true,
    flags: { on: text('DAY', 'the day it was sent, YYYY-MM-DD, if not today; both days are kept') },
    fails: 'nothing was issued',
    examples: ['issue DC-2606'],
  },
  ledger: {
    text: 'Lists what was issued, and whether it is unchanged. Prints the digest of the ledger, which you can keep elsewhere.',
    flags: {
      check: text('DIGEST', 'compare the ledger with a digest that was printed earlier'),
      'take-in': yes('once: take in what an earlier version has issued without a ledger'),
    },
    fails: 'something was changed or is missing',
    examples: ['ledger'],
  },
  plan: {
    text: 'Says when each order is built, and what date can be promised. Prints the planned start and finish of every accepted order, the promised day, and the bottleneck.',
    flags: {
      promise: text('NUMBER', 'what date can be promised for an order that is not accepted yet'),
      json: yes('the same as JSON'),
    },
    fails: 'an order cannot be planned',
    examples: ['plan', 'plan --promise DC-2606'],
  },
  verify: {
    text: 'Checks the calculations against published values. Prints one row for each: source, value, ours, error, tolerance; then checks the sums of every order of the workspace against the rules for an electronic invoice.',
    flags: { json: yes('the same as JSON') },
    fails: 'a check fails',
    examples: ['verify'],
  },
  schema: {
    text: 'Writes the schemas that a text editor completes and checks with. It then explains the fields and offers the names of hulls, options, outboards, trailers and parts. Run it again after you add one.',
    flags: { out: folder('catalogue/schema', 'folder to write to') },
    fails: 'a file could not be written',
    examples: ['schema', 'schema --out /tmp/schema'],
  },
} as const satisfies Readonly<Record<string, Command>>;

export type CommandName = keyof typeof COMMANDS;

/** What a command is run with: what its row of the table names, and nothing else. */
export type CommandOptions<Name extends CommandName> = {
  readonly [Key in keyof FlagsOf<Name>]: FlagsOf<Name>[Key] extends { value: string }
    ? string | (FlagsOf<Name>[Key] extends { default: string } ? never : undefined)
    : boolean;
} & { readonly workspace: string } & ((typeof COMMANDS)[Name] extends { number: true }
    ? { readonly number: string }
    : unknown);
/** A command with its options. */
export type Run<Name extends CommandName = CommandName> = {
  [Key in Name]: { kind: 'run'; command: Key; options: CommandOptions<Key> };
}[Name];
type FlagsOf<Name extends CommandName> = (typeof COMMANDS)[Name]['flags'];

/** The row of a command, without what is special to it. */
export const commandOf = (name: CommandName): Command => COMMANDS[name];

const isCommand = (name: string): name is CommandName => Object.hasOwn(COMMANDS, name);
export const COMMAND_NAMES: readonly CommandName[] = Object.keys(COMMANDS).filter(isCommand);

/** Every flag that may be given with a command, or without one, by its name. */
export const flagsOf = (name?: CommandName): ReadonlyMap<string, Flag> =>
  new Map(Object.entries({ ...(name && commandOf(name).flags), ...COMMON }));
