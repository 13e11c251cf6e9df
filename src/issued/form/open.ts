import type { Computed } from '../../units/index.ts';
import { FIRST_FORMAT, inSecondForm } from './first-form.ts';
import { type IssuedQuote, type Pricing, pricing, quote, sealedForm } from './form.ts';
import { isRecord } from './texts.ts';

/**
 * Reads the content of a sealed file of any form.
 *
 * @param content - already held against its own digest: it is what was sealed
 * @returns undefined when this program cannot read it
 */
export function openIssued(content: unknown): IssuedQuote | undefined {
  if (!isRecord(content)) return undefined;
  if (content['format'] !== FIRST_FORMAT) return sealedForm.safeParse(content).data;
  const second = inSecondForm(content);
  const { data } = quote.safeParse(second.quote);
  return data && { ...data, pricing: olderPricing(second.pricing) };
}

function olderPricing(found: unknown): Computed<Pricing> {
  const { data, error } = pricing.safeParse(found);
  const what = error?.issues[0]?.path.join('.') ?? '';
  return data ?? { notComputed: `the quote is of an earlier program, and ${what} is not in it` };
}
