import { type Change, type Fact, isNotComputed, type MethodId } from '../../figures/index.ts';
import { formatMoney, isMoney, isZero, subtractMoney } from '../../money/index.ts';
import {
  decimalToNumber,
  type Formatter,
  isQuantity,
  type QuantityName,
  whyNot,
} from '../../units/index.ts';
import { found, type FoundFigure } from './method-notes.ts';
import { signedMoney, signedSize } from './words.ts';

/** A figure of a customer's document: a fact, what it depends on, and the other methods that found it. */
export const figureOf = (
  fact: Fact<'customer'>,
  format: Formatter,
  detail: string,
  ...methods: readonly MethodId[]
): FoundFigure => found(fact.label, sayFact(fact, format), detail, fact.method, ...methods);

/** A fact as it is printed: "412 kg", "22 to 26 kn", "not computed: why". */
export function sayFact({ says, as, low, high }: Fact, format: Formatter): string {
  if (typeof says === 'string') return says;
  if (isNotComputed(says)) return whyNot(says);
  if (isMoney(says)) return formatMoney(says, format.locale);
  const isBand = low !== undefined && high !== undefined && isQuantity(as);
  if (isBand) return format.band(roughly(as), low, high);
  return sizeText(as, typeof says === 'number' ? says : decimalToNumber(says), format);
}

/** How a fact changes: "+12 kg", "no change"; the fact itself where it was not known before. */
export function changeText(change: Change | undefined, format: Formatter): string {
  if (!change) return 'not computed';
  const { as, says } = change.now;
  const was = change.was?.says;
  if (isMoney(says) && isMoney(was)) {
    const by = subtractMoney(says, was);
    return isZero(by) ? NO_CHANGE : signedMoney(by, format.locale);
  }
  if (typeof says !== 'number') return 'not computed';
  if (typeof was !== 'number')
    return `about ${isQuantity(as) ? format.quantity(roughly(as), says) : sizeText(as, says, format)}`;
  const size = sizeText(as, Math.abs(says - was), format);
  return size === sizeText(as, 0, format) ? NO_CHANGE : signedSize(says - was, size);
}

/** What is said of a change too small to print. */
const NO_CHANGE = 'no change';

/** A value as a fact of its kind is printed. */
export const sizeText = (as: Fact['as'], value: number, format: Formatter): string =>
  isQuantity(as) ? format.quantity(as, value) : format.number(value, 0);

/** What is estimated within a band is said no finer than that. */
const roughly = (as: QuantityName): QuantityName => (as === 'speed' ? 'roundSpeed' : as);
