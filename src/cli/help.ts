const COMMON = `
  --workspace DIR  folder with orders/ and catalogue/ (default: this project)
  --out DIR        folder to write to (default: _site in the workspace)
  --help           this text
`;

const EXITS = 'Exit codes: 0 fine, 1 findings of error level, 2 a mistake on the command line.\n';

/** The text of --help, for the program and for each command. */
export const HELP = {
  orlop: `Usage: npm run orlop -- COMMAND [options]

From one order file: price, weight, and what each person does next.

  check    read every order and catalogue file and say what is wrong
  build    make every document: pages, PDFs and figures
  preview  show the pages in a browser and follow what you type
  new      begin an order
  issue    seal a quote as it is sent
  ledger   what was issued, and whether it is as it was
  plan     when each order is built, and what date can be promised
  verify   hold the computations against published values
  schema   write the schemas that text editors complete and check by

  npm run orlop -- COMMAND --help   more on one command
  npm run orlop -- --version        which version this is
${EXITS}`,
  check: `Usage: npm run orlop -- check [options]

Reads every file of the workspace and prints each finding with its file, line and column.
  --only NUMBER    findings of one order and of the catalogue only
  --json           findings as JSON${COMMON}
Examples:
  npm run orlop -- check
  npm run orlop -- check --only 2026-031
${EXITS}`,
  build: `Usage: npm run orlop -- build [options]

Makes the yard's half (_site/yard) and the customers' half (_site/customer).
  --only NUMBER    documents of one order, and the index
  --no-pdf         pages only${COMMON}
Examples:
  npm run build
  npm run orlop -- build --only 2026-031 --out /tmp/site
${EXITS}`,
  preview: `Usage: npm run orlop -- preview [options]

Shows the pages on this machine only, and makes them again when an order or the catalogue is saved.
  --port N         port (default 8080)${COMMON}
Example:
  npm run preview
`,
  new: `Usage: npm run orlop -- new NUMBER --hull HULL [options]

Begins orders/NUMBER.yaml with every field explained; what somebody must ask is left out or has question marks, and the
quote is not issued before it is filled in. Never overwrites.
  --hull ID        a hull of the catalogue
  --customer NAME  who it is for${COMMON}
Example:
  npm run orlop -- new 2026-040 --hull dunlin-430 --customer "Reed Bank Oysters"
`,
  issue: `Usage: npm run orlop -- issue NUMBER [options]

Seals the quote of an order as it is sent: orders/issued/NUMBER-rREVISION.pdf is the quote, .html its page, .json
all its figures with a digest of each file it was made of; orders/issued/ledger.jsonl gets a line with the digests of
the three. From then on the quote is a copy of these bytes, whatever the catalogue does. A change is a new revision,
with a table of what changed; after acceptance it is a variation. An order that is not fit to be sent is refused.
  --on DAY         the day that it was sent, YYYY-MM-DD, when not today; both days are kept${COMMON}
Example:
  npm run orlop -- issue 2026-040
${EXITS}`,
  ledger: `Usage: npm run orlop -- ledger [options]

Says of every issued quote whether it stands: whether the ledger and its files are as they were written. Prints the
ledger's digest, which you can keep elsewhere.
  --check DIGEST   hold the ledger against a digest that was printed earlier
  --take-in        once: take in what an earlier version has issued without a ledger${COMMON}
Examples:
  npm run orlop -- ledger
  npm run orlop -- ledger --check DIGEST
${EXITS}`,
  plan: `Usage: npm run orlop -- plan [options]

Prints the planned start and finish of every accepted order, the promised day, and what binds.
  --promise NUMBER what date can be promised for an order that is not accepted yet; moves no accepted order
  --json           the same as JSON${COMMON}
Examples:
  npm run orlop -- plan
  npm run orlop -- plan --promise 2026-040
${EXITS}`,
  verify: `Usage: npm run orlop -- verify [options]

Prints one row for each check against published or exact values: source, value, ours, error, tolerance; then the
sums of every order of the workspace against the rules of an electronic invoice.
  --json           the same as JSON${COMMON}
Example:
  npm run verify
${EXITS}`,
  schema: `Usage: npm run orlop -- schema [options]

Writes catalogue/schema/*.schema.json from the program and this workspace's own catalogue, so that
a text editor completes the names of hulls, options, outboards, trailers and parts.${COMMON}
Example:
  npm run schema
`,
} as const;

export type CommandName = Exclude<keyof typeof HELP, 'orlop'>;
