import { type DocumentHead, pageHead, pdfName } from '../sections/head.ts';
import { boatName, customerLines, present } from '../sections/words.ts';
import type { CustomerBuild } from '../../figures/index.ts';
import type { Field, Part, Standing } from './block.ts';
import type { Yard } from '../../schema/index.ts';

/** A document for a customer, as text. No cost, hour or margin has a place in it. */
export interface Letter {
  readonly document: DocumentHead;
  readonly shop: ShopHead;
  readonly customer: readonly string[];
  readonly facts: readonly Field[];
  readonly heading: string;
  readonly lead: string;
  /** What the customer said that the boat is for, as theirs; empty where it is not repeated. */
  readonly told: string;
  readonly standing?: Standing;
  readonly parts: readonly Part[];
}

/** What one kind of letter says of itself. */
interface Kind {
  readonly pdf: Parameters<typeof pdfName>[0];
  /** "Draft quote DC-2608". */
  readonly name: string;
  readonly subject: string;
  /** The day in its reference; left out: none. */
  readonly day?: string;
  readonly revision?: number | undefined;
}

/** Who writes, to whom, and what the sheets are called. */
export function letterHead(
  build: CustomerBuild,
  { pdf, name, subject, day, revision }: Kind,
): Pick<Letter, 'document' | 'shop' | 'customer'> {
  const { yard, order } = build;
  return {
    document: {
      ...pageHead(yard, `${name}: ${boatName(build)}`, subject),
      runningHead: `${name}, ${boatName(build)}`,
      reference: day === undefined ? name : `${name}, ${day}`,
      pdf: pdfName(pdf, order.number, revision),
    },
    shop: shopHead(yard),
    customer: customerLines(build),
  };
}

/** A quote as it was kept as data: a letter, or in the form of before there were letters. */
export interface KeptQuote {
  readonly document: DocumentHead;
  readonly parts?: readonly Part[];
}

/** True for what was kept of a quote: a letter, or what has its head, its price and its items. */
export function isKeptQuote(kept: unknown): kept is KeptQuote {
  return (
    typeof kept === 'object' &&
    kept !== null &&
    'document' in kept &&
    ('parts' in kept || ('price' in kept && 'groups' in kept))
  );
}

/** The shop as at the head of a letter. */
interface ShopHead {
  readonly name: string;
  /** Empty when the shop has none. */
  readonly strapline: string;
  readonly address: readonly string[];
  /** Telephone, electronic mail, registration: those that there are. */
  readonly reach: readonly string[];
}

/** The shop's head for a letter to a customer. */
function shopHead({ shop }: Pick<Yard, 'shop'>): ShopHead {
  const { name, strapline = '', address, phone, email, registration } = shop;
  return { name, strapline, address, reach: present([phone, email, registration]) };
}
