import { deliveryOf, isKeptQuote, type Letter, quoteView } from '../documents/index.ts';
import {
  customerAlternative,
  customerFigures,
  type FiguredOrder,
  type Figures,
} from '../figures/index.ts';
import { type Finding, stoppingIssue } from '../findings/index.ts';
import { driftOf, freezeQuote, isAgreed, type IssuedQuote } from '../issued/index.ts';
import { digestOf, headOf, canonicalWithDigest } from '../read/index.ts';
import { drawingFontCss } from '../site/index.ts';
import { type IsoDate, parseIsoDate } from '../units/index.ts';
import type { CommandOptions } from './commands.ts';
import { EXIT } from './exit.ts';
import { allFindings, noSuchOrder, loadWorkspace, type LoadedWorkspace } from './load.ts';
import { editedData, type Edition } from '../words/index.ts';
import { printSealings } from './print-documents.ts';
import { refuse } from './refuse.ts';
import { reportFindings } from './report.ts';
import { finishBegun, seal } from './seal.ts';
import { clockDay } from './today.ts';

/** Seals a quote as it is sent: its data, its page and its PDF never change from then on. */
export async function issue({ workspace, number, on }: CommandOptions<'issue'>): Promise<number> {
  const written = clockDay();
  const day = on === undefined ? written : parseIsoDate(on);
  if (!day) return refuse('issue', `--on ${on} is not a day written YYYY-MM-DD`);
  if (day > written) return refuse('issue', `${day} is still to come; today is ${written}`);
  await finishBegun(workspace);
  const loaded = loadWorkspace(workspace, { day });
  const unknown = noSuchOrder(loaded, number);
  if (unknown !== undefined) return refuse('issue', unknown);
  const entry = loaded.orders.find(({ order }) => order.value.number === number);
  const why = entry && (whyNotNow(loaded, day, written) ?? whyNotThis(entry, number));
  if (why !== undefined) return refuse('issue', why, EXIT.findings);
  const stops = whatStops(loaded, entry, number);
  const figures = entry?.quoted;
  if (!entry || !figures || stops.length > 0) {
    reportFindings(stops, loaded);
    return refuse('issue', `${number} is not fit to be sent. Fix the errors first`, EXIT.findings);
  }
  const before = loaded.issued.get(number)?.at(-1);
  const revision = (before?.revision ?? 0) + 1;
  const view = viewOf(loaded, entry, figures, before);
  const inputs = inputsOf(loaded, entry.order.file);
  if (
    before &&
    (isOfTheSameFiles(before, inputs) || saysTheSame(before, view, figures.build.yard))
  ) {
    process.stdout.write(
      `${number} says what revision ${before.revision} says; nothing to issue\n`,
    );
    return EXIT.fine;
  }
  const content = freezeQuote({ figures, revision, issuedOn: day, inputs, view });
  const sealings = await printSealings([
    {
      view,
      date: figures.build.order.dates.quoted ?? day,
      line: { number, revision, day, written },
      json: Buffer.from(canonicalWithDigest(editedData(content, figures.build.yard))),
    },
  ]);
  if (typeof sealings === 'string') return refuse('issue', sealings, EXIT.findings);
  const done = await seal(workspace, sealings, headOf(loaded.ledger));
  if ('refused' in done) return refuse('issue', done.refused, EXIT.findings);
  process.stdout.write(
    `${number}, revision ${revision}, issued on ${day}${day === written ? '' : ` (written on ${written})`}\n` +
      `Sealed as orders/issued/${number}-r${revision}.pdf, with its page and its data: none of it changes from now on.\n` +
      `To mail it, build: the same bytes stand in customer/${number}/${view.document.pdf}.\n` +
      `Digest of the ledger: ${done.head}\n`,
  );
  return EXIT.fine;
}

/** Why nothing may be issued on that day. */
function whyNotNow(
  { ledger, ledgerBroken }: LoadedWorkspace,
  day: IsoDate,
  written: IsoDate,
): string | undefined {
  if (ledgerBroken) return 'the ledger is damaged; run: npm run orlop -- ledger';
  const last = ledger.lines.at(-1);
  if (last && written < last.written)
    return `the clock of this machine says ${written}, and the last line of the ledger was written on ${last.written}; set the clock`;
  if (last && day < last.day)
    return `the last line of the ledger is of ${last.day}; nothing is issued on an earlier day`;
  return undefined;
}

/** Why this order may not be issued as it stands. */
function whyNotThis({ order }: FiguredOrder, number: string): string | undefined {
  const { status, acceptance } = order.value;
  if (isAgreed(order.value) || acceptance)
    return `${number} is accepted: what changes now is a variation, not a revision`;
  return status === 'closed' ? `${number} is closed` : undefined;
}

/** What stops the order from being sent, each as an error; a mistake in another order does not. */
function whatStops(
  loaded: LoadedWorkspace,
  entry: FiguredOrder | undefined,
  number: string,
): readonly Finding[] {
  const own =
    entry?.order.file ?? loaded.brokenOrders.find((broken) => broken.number === number)?.file;
  const apart = new Set(
    loaded.findings.filter(({ place: { file } }) => file.startsWith('orders/') && file !== own),
  );
  const allowed = new Set<string>(entry?.order.value.allow.map((one) => one.finding));
  return stoppingIssue(
    allFindings(loaded, number).filter((one) => !apart.has(one)),
    allowed,
  );
}

function viewOf(
  { plan }: LoadedWorkspace,
  { alternatives }: FiguredOrder,
  figures: Figures,
  before: IssuedQuote | undefined,
): Letter {
  const drift = before && driftOf(before, figures);
  return quoteView(customerFigures(figures), {
    fontCss: drawingFontCss(),
    revision: (before?.revision ?? 0) + 1,
    delivery: deliveryOf(plan, figures.build.order.number),
    alternatives: alternatives.map(customerAlternative),
    ...(before && drift && !('notComputed' in drift) && { earlier: { ...before, drift } }),
  });
}

/** Every file that the quote was made of, with its digest, in order of name: the order's own and the catalogue's. */
function inputsOf({ sources }: LoadedWorkspace, order: string) {
  return [...sources]
    .filter(([file]) => file === order || file.startsWith('catalogue/'))
    .map(([file, text]) => ({ file, sha256: digestOf(text) }))
    .toSorted((a, b) => (a.file < b.file ? -1 : 1));
}

/** True when no file that the quote was made of has changed. */
const isOfTheSameFiles = (
  { inputs: before }: IssuedQuote,
  inputs: IssuedQuote['inputs'],
): boolean => canonicalWithDigest(before) === canonicalWithDigest(inputs);

/** True when nothing but the number of the revision would be another. */
function saysTheSame({ view: before }: IssuedQuote, view: Letter, edition: Edition): boolean {
  return (
    isKeptQuote(before) &&
    before.parts !== undefined &&
    canonicalWithDigest(wordsOf(before)) === canonicalWithDigest(editedData(wordsOf(view), edition))
  );
}

/** What a letter says beside its own number and what changed since the one before. */
function wordsOf(letter: object): unknown {
  const parts: readonly (readonly [string, unknown])[] = Object.entries(letter);
  return Object.fromEntries(
    parts.flatMap(([name, said]) => {
      if (name === 'document' || name === 'facts') return [];
      const isChanges = (one: unknown): boolean =>
        typeof one === 'object' && one !== null && 'id' in one && one.id === 'changes';
      return [[name, Array.isArray(said) ? said.filter((one) => !isChanges(one)) : said]];
    }),
  );
}
