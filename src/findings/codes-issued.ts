import type { CodeFacts } from './code-facts.ts';

/** What was sent and agreed, and what is fit to be sent. */
export const ISSUED_CODES = {
  ISSUED_ALTERED: {
    severity: 'error',
    audience: 'office',
    means: 'The file of an issued quote is not what it was when the quote was sent',
    remedy:
      'Bring the file back from a copy; what was sent never changes, so issue a new revision instead',
  },
  ISSUED_MISSING: {
    severity: 'error',
    audience: 'office',
    means: 'A file of an issued quote is missing',
    remedy: 'Bring the file back from a copy: the ledger says that it was sent',
  },
  ISSUED_NOT_IN_LEDGER: {
    severity: 'error',
    audience: 'office',
    means: 'A file stands among the issued quotes that the ledger does not name',
    remedy:
      'If it was issued, bring ledger.jsonl back from a copy; if not, move the file out of orders/issued',
  },
  LEDGER_BROKEN: {
    severity: 'error',
    audience: 'office',
    means: 'The ledger of issued quotes is not as it was written',
    remedy:
      'Bring orders/issued/ledger.jsonl back from a copy; lines are only ever added, by the program',
  },
  LEDGER_IN_DOUBT: {
    severity: 'error',
    audience: 'office',
    means: 'The ledger of issued quotes is damaged, so nobody can tell what was sent of this order',
    remedy: 'Bring orders/issued/ledger.jsonl back from a copy',
  },
  ISSUED_OF_OTHER_ORDER: {
    severity: 'error',
    audience: 'office',
    means: 'An issued quote belongs to an order that is not there',
    remedy: 'Bring the order file back: an order that was quoted is closed, never deleted',
  },
  REVISION_NOT_ISSUED: {
    severity: 'error',
    audience: 'office',
    means: 'The accepted revision of the quote is not among those that were issued',
    remedy: 'Correct acceptance: revision:, or bring its files back to orders/issued',
  },
  QUOTE_NOT_ISSUED: {
    severity: 'note',
    audience: 'office',
    means: 'The order is quoted but no quote was issued, so its numbers can still move',
    remedy: 'Issue the quote when it is sent',
  },
  QUOTE_DIFFERS: {
    severity: 'warning',
    audience: 'office',
    means: 'The quote that was sent last says another price than the order has',
    remedy:
      'Look at what changed on the order’s costing page; to send the new price, issue a revision',
  },
  QUOTE_EXPIRED: {
    severity: 'warning',
    audience: 'office',
    means: 'The quote is past the date it was valid until and not accepted',
    remedy: 'Quote again with a new date, or close the order',
    stopsIssue: 'always',
  },
  QUOTED_LATER: {
    severity: 'warning',
    audience: 'office',
    means: 'The date of the quote is still to come',
    remedy: 'Write the day that the quote is sent under dates: quoted:',
    stopsIssue: 'always',
  },
  VARIATION_DIFFERS: {
    severity: 'warning',
    audience: 'office',
    means: 'A variation was signed at another price than it has today',
    remedy: 'What was signed counts; look why it changed before you sign another',
  },
  PLACEHOLDER_LEFT: {
    severity: 'warning',
    audience: 'office',
    means: 'Something is still to be filled in',
    remedy: 'Write what belongs there in place of the question marks',
    stopsIssue: 'always',
  },
  PEOPLE_NOT_SAID: {
    severity: 'warning',
    audience: 'office',
    means:
      'The order does not say how many people the boat is to carry, so it is figured with all that the hull is rated for',
    remedy: 'Ask, and write people: under boat:',
    stopsIssue: 'always',
  },
  RATING_DRAFT: {
    severity: 'warning',
    audience: 'customer',
    safety: true,
    toCustomer:
      'The shop has not yet confirmed how many people, how much load and how much power this hull may carry',
    means: 'The ratings of the hull are a draft',
    remedy: 'Have the ratings confirmed, then take draft: out of the hull file',
    stopsIssue: 'always',
  },
  FREE_WITHOUT_REASON: {
    severity: 'warning',
    audience: 'office',
    means: 'An item costs the customer nothing and nobody says why',
    remedy: 'Give it its cost or its hours; if it is free, say why with free:',
    stopsIssue: 'always',
  },
  LINE_BELOW_COST: {
    severity: 'warning',
    audience: 'office',
    means: 'An item is sold for less than it costs the shop',
    remedy: 'Check price:, cost: and the discount for a typing mistake',
    stopsIssue: 'unless allowed',
  },
  TOTAL_UNLIKE_OTHERS: {
    severity: 'warning',
    audience: 'office',
    means: 'The whole costs far more or less than other orders of the same hull',
    remedy: 'Look for a typing mistake in the order and the price lists',
    stopsIssue: 'unless allowed',
  },
  PART_PRICE_JUMP: {
    severity: 'warning',
    audience: 'office',
    means: 'A price has moved by more than the shop expects since the row before it',
    remedy:
      'Check the row. If it is right, add a row of a later day with the same price: that confirms it',
    stopsIssue: 'unless allowed',
  },
  PART_PRICE_OLD: {
    severity: 'warning',
    audience: 'office',
    means: 'A part is priced from a list older than the shop allows',
    remedy: "Ask the supplier for today's price and date the row",
    stopsIssue: 'unless allowed',
  },
  ACCEPTED_NOT_FOUND: {
    severity: 'note',
    audience: 'office',
    means: 'The order accepts a finding of safety that is found no more',
    remedy: 'Take it out of accepted:',
  },
} as const satisfies Readonly<Record<string, CodeFacts>>;
