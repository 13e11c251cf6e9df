/** How a figure was found: said once, for whoever asks how far to trust it. */
export interface Method {
  /** What it finds, as a heading. */
  readonly title: string;
  readonly how: string;
  /** A standard, a book, a law of nature; "common practice, no source" is a source that may be named. */
  readonly source: string;
  /** Where it holds; empty where it holds always. */
  readonly validity: string;
  /** Who or what confirms it; empty where nothing is left to confirm. */
  readonly verify: string;
}

/** A method; what is left out is empty. */
export const method = (given: Omit<Method, 'validity' | 'verify'> & Partial<Method>): Method => ({
  validity: '',
  verify: '',
  ...given,
});

export const ARITHMETIC = 'arithmetic';
export const PRACTICE = 'common practice, no source';

/** A method of money: sums of what the files say. */
export const money = (title: string, how: string): Method =>
  method({ title, how, source: ARITHMETIC });
