export {
  type Account,
  accountFacts,
  accountOf,
  agreedMargin,
  checkAcceptance,
  isAgreed,
  priceChange,
  standingQuote,
} from './account.ts';
export { type IssuedQuotes, issuedByNumber } from './by-number.ts';
export { driftOf } from './drift.ts';
export type { IssuedQuote } from './form/form.ts';
export { openIssued } from './form/open.ts';
export { freezeQuote } from './freeze.ts';
export type { Drift, DriftCause, DriftRow } from './types.ts';
