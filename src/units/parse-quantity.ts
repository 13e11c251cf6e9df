import type { Quantity } from './quantity.ts';
import { factorOf, kindOfUnit, type UnitKind, unitsOf } from './unit-table.ts';

export type QuantityProblem =
  | { readonly problem: 'not-a-quantity'; readonly expected: string }
  | { readonly problem: 'unknown-unit'; readonly unit: string; readonly expected: string }
  | {
      readonly problem: 'wrong-kind';
      readonly unit: string;
      readonly kind: UnitKind;
      readonly expected: string;
    }
  | { readonly problem: 'decimal-comma'; readonly expected: string };

export type ParsedQuantity<Kind extends string> =
  | { readonly value: Quantity<Kind>; readonly problem?: never }
  | (QuantityProblem & { readonly value?: never });

/** The longest text that can be a quantity; more is refused unread. */
const LONGEST = 80;

const TERM =
  /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?)\s*([^\d\s+.,-][^\d]*?[²³23]?)?(?=\s+[\d.]|$)\s*/u;

/**
 * Reads "45 kg", "14 ft 9 in" or a bare number as a quantity of one kind.
 *
 * @param kind - what is wanted
 * @param text - as typed; a bare number is in `bareUnit`
 * @param bareUnit - the documented unit of a bare number
 * @returns the value in SI, or the problem with what was expected; it never throws
 */
export function parseQuantity<Kind extends UnitKind>(
  kind: Kind,
  text: string,
  bareUnit: string,
): ParsedQuantity<Kind> {
  const expected = `a ${kind}, such as "12 ${bareUnit}" (units: ${unitsOf(kind).join(', ')}; a bare number is ${bareUnit})`;
  const trimmed = text.trim();
  if (/^[+-]?\d+,\d+/.test(trimmed)) return { problem: 'decimal-comma', expected };
  if (trimmed.length > LONGEST) return { problem: 'not-a-quantity', expected };
  let rest = trimmed;
  let total = 0;
  let negative = false;
  let terms = 0;
  while (rest.length > 0) {
    const match = TERM.exec(rest);
    const digits = match?.[1];
    if (!match || digits === undefined) return { problem: 'not-a-quantity', expected };
    const written = match[2]?.trim();
    rest = rest.slice(match[0].length);
    if (written === undefined && (terms > 0 || rest.length > 0))
      return { problem: 'not-a-quantity', expected };
    const unit = written ?? bareUnit;
    const factor = factorOf(kind, unit);
    if (factor === undefined) return wrongUnit(unit, expected);
    const number = Number(digits);
    if (terms === 0) negative = digits.startsWith('-');
    else if (/^[+-]/.test(digits)) return { problem: 'not-a-quantity', expected };
    total += Math.abs(number) * factor;
    terms += 1;
  }
  if (terms === 0 || !Number.isFinite(total)) return { problem: 'not-a-quantity', expected };
  return { value: (negative ? -total : total) as Quantity<Kind> };
}

function wrongUnit(unit: string, expected: string): QuantityProblem {
  const kind = kindOfUnit(unit);
  if (kind) return { problem: 'wrong-kind', unit, kind, expected };
  return { problem: 'unknown-unit', unit, expected };
}
