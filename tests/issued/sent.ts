import type { Figures } from '../../src/figures/index.ts';
import { freezeQuote, type IssuedQuote, openIssued } from '../../src/issued/index.ts';

/** The content of the file that an order's quote would be sealed as. */
export function sealedOf(figures: Figures): Readonly<Record<string, unknown>> {
  const day = figures.build.pricedOn;
  const sealed = freezeQuote({ figures, revision: 1, issuedOn: day, inputs: [], view: {} });
  return JSON.parse(JSON.stringify(sealed));
}

/** The quote of an order as it is read again when it was sent: through the text of its file. */
export function sentOf(figures: Figures): IssuedQuote {
  const quote = openIssued(sealedOf(figures));
  if (!quote) throw new Error('what was sealed cannot be read');
  return quote;
}
