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
export { type Data } from './data.ts';
export { driftOf } from './drift.ts';
export { freezeQuote, openIssued } from './freeze.ts';
export type { Drift, DriftCause, DriftRow, InputFile, IssuedQuote } from './types.ts';
