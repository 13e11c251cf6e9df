import { z } from 'zod';
import type { FindingCode } from '../findings/index.ts';
import {
  type Decimal,
  decimalToNumber,
  type IsoDate,
  parseDecimal,
  parseIsoDate,
  parsePercent,
  parseQuantity,
  type Quantity,
  type QuantityProblem,
  UNIT_KINDS,
  type UnitKind,
} from '../units/index.ts';
import { fieldFacts, type NameList } from './field-facts.ts';

/** What a custom zod issue carries for the finding that is made of it. */
export interface IssueParams {
  readonly finding: FindingCode;
  readonly expected: string;
  readonly received: string;
}

interface Range {
  readonly min?: number;
  readonly max?: number;
}

const typed = z.union([z.string(), z.number()]);

/**
 * A quantity with its unit ("45 kg"), or a bare number in the documented unit; gives SI.
 *
 * @param range - limits in SI
 */
export function quantity<Kind extends UnitKind>(
  kind: Kind,
  bareUnit: string,
  description: string,
  range: Range = {},
): z.ZodType<Quantity<Kind>, string | number> {
  const note = `A bare number is in ${bareUnit}.`;
  return typed
    .transform((written, context): Quantity<Kind> => {
      const parsed = readQuantity(kind, bareUnit, String(written), range);
      return typeof parsed === 'object' ? refuse(context, parsed) : parsed;
    })
    .meta({ description: `${description} ${note}` })
    .register(fieldFacts, { kind, note, range: rangeWords(range, kind, bareUnit) });
}

/** An exact decimal: hours, a count of sheets, a rate. Never passes through a binary fraction. */
export function decimal(
  description: string,
  range: Range = {},
): z.ZodType<Decimal, string | number> {
  return typed
    .transform((written, context): Decimal => {
      const value = parseDecimal(String(written));
      if (!value)
        return refuse(context, {
          finding: 'WRONG_TYPE',
          expected: 'a plain decimal, such as 12.5',
          received: `"${String(written)}"`,
        });
      if (outside(decimalToNumber(value), range))
        return refuse(context, rangeParams(String(written), range));
      return value;
    })
    .meta({ description })
    .register(fieldFacts, { kind: 'decimal', range: rangeWords(range) });
}

const IN_CURRENCY = "In the workspace's currency, such as 1250.50.";

/** An amount of the workspace's currency; parsed as an exact decimal. */
export const amount = (
  description: string,
  range: Range = {},
): z.ZodType<Decimal, string | number> =>
  decimal(`${description} ${IN_CURRENCY}`, range).register(fieldFacts, {
    kind: 'amount of money',
    note: IN_CURRENCY,
    range: rangeWords(range),
  });

/** A percentage with its sign, "12.5%"; gives the fraction. */
export function percent(
  description: string,
  range: Range = { min: 0, max: 1 },
): z.ZodType<Decimal, string> {
  const limits = `from ${plain((range.min ?? 0) * 100)}% to ${plain((range.max ?? 1) * 100)}%`;
  return z
    .string()
    .transform((written, context): Decimal => {
      const value = parsePercent(written);
      if (!value)
        return refuse(context, {
          finding: 'WRONG_TYPE',
          expected: 'a percentage, such as 12.5%',
          received: `"${written}"`,
        });
      if (outside(decimalToNumber(value), range)) {
        return refuse(context, {
          finding: 'OUT_OF_RANGE',
          expected: limits,
          received: `"${written}"`,
        });
      }
      return value;
    })
    .meta({ description })
    .register(fieldFacts, { kind: 'percentage', range: limits });
}

/** A whole number in a range. */
export function count(
  description: string,
  range: { min: number; max: number },
): z.ZodType<number, string | number> {
  const limits = `From ${range.min} to ${range.max}.`;
  return typed
    .transform((written, context): number => {
      const text = String(written).trim();
      if (!/^-?\d+$/.test(text))
        return refuse(context, {
          finding: 'WRONG_TYPE',
          expected: 'a whole number',
          received: `"${text}"`,
        });
      const value = Number(text);
      return outside(value, range) ? refuse(context, rangeParams(text, range)) : value;
    })
    .meta({ description: `${description} ${limits}` })
    .register(fieldFacts, { kind: 'whole number', range: limits });
}

/** A calendar date, YYYY-MM-DD. */
export function date(description: string): z.ZodType<IsoDate, string> {
  return z
    .string()
    .transform((written, context): IsoDate => {
      const value = parseIsoDate(written);
      return (
        value ??
        refuse(context, {
          finding: 'WRONG_TYPE',
          expected: 'a date that exists, written YYYY-MM-DD',
          received: `"${written}"`,
        })
      );
    })
    .meta({ description })
    .register(fieldFacts, { kind: 'date, YYYY-MM-DD' });
}

/** Text for people: one line, not empty. */
export const text = (description: string) =>
  z.string().trim().min(1).max(2000).meta({ description });

/**
 * A name that files point at: small letters, digits and hyphens.
 *
 * @param from - the list of the catalogue that it must be in, for the editor to complete
 */
export const id = (description: string, from?: NameList) =>
  z
    .string()
    .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'small letters, digits and hyphens')
    .meta({ description })
    .register(fieldFacts, { kind: 'name', ...(from && { from }) });

/** A supplier's code as in a price list, any text. */
export const partCode = (description: string) =>
  z
    .string()
    .min(1)
    .max(40)
    .meta({ description: `${description} Quote it when it looks like a number.` })
    .register(fieldFacts, { kind: 'code of a part', from: 'parts' });

/** A place along one axis that is a share of the hull's own size there: "60 % length". */
export interface Share {
  readonly share: number;
  readonly of: 'length' | 'beam' | 'depth';
}

/** A coordinate: a length from the axis, in metres, or a share of the hull's length, beam or depth. */
export function coordinate(
  of: Share['of'],
  description: string,
): z.ZodType<Share | Quantity<'length'>, string | number> {
  const example = `a share such as "60 % ${of}"`;
  const note = `A length (a bare number is in m), or ${example}.`;
  return typed
    .transform((written, context): Share | Quantity<'length'> => {
      const entry = String(written).trim();
      if (entry.includes('%')) {
        const [, share, dimension] = /^([+-]?\d{1,4}(?:\.\d{1,6})?)\s*%\s*(\S*)$/.exec(entry) ?? [];
        if (share !== undefined && dimension === of) return { share: Number(share) / 100, of };
        return refuse(context, {
          finding: 'WRONG_VALUE',
          expected: example,
          received: `"${entry}"`,
        });
      }
      const parsed = readQuantity('length', 'm', entry, { min: -15, max: 15 });
      if (typeof parsed !== 'object') return parsed;
      return refuse(context, { ...parsed, expected: `${parsed.expected}, or ${example}` });
    })
    .meta({ description: `${description} ${note}` })
    .register(fieldFacts, { kind: 'place', note });
}

function readQuantity<Kind extends UnitKind>(
  kind: Kind,
  bareUnit: string,
  written: string,
  range: Range,
): Quantity<Kind> | IssueParams {
  const parsed = parseQuantity(kind, written, bareUnit);
  if (parsed.problem !== undefined) return paramsOf(parsed, written);
  return outside(parsed.value, range) ? rangeParams(written, range, kind, bareUnit) : parsed.value;
}

function paramsOf(problem: QuantityProblem, written: string): IssueParams {
  const { expected } = problem;
  switch (problem.problem) {
    case 'wrong-kind':
      return {
        finding: 'UNIT_KIND',
        expected,
        received: `"${written}", which is a ${problem.kind}`,
      };
    case 'unknown-unit':
      return {
        finding: 'UNIT_UNKNOWN',
        expected,
        received: `the unit "${problem.unit}" in "${written}"`,
      };
    case 'decimal-comma':
      return {
        finding: 'WRONG_TYPE',
        expected: `${expected}, with a point for decimals`,
        received: `"${written}"`,
      };
    case 'not-a-quantity':
      return { finding: 'WRONG_TYPE', expected, received: `"${written}"` };
  }
}

function rangeParams(received: string, ...limits: Parameters<typeof rangeWords>): IssueParams {
  return { finding: 'OUT_OF_RANGE', expected: rangeWords(...limits), received: `"${received}"` };
}

/** The limits in the unit that a bare number has, so that they can be compared with what was typed. */
function rangeWords({ min, max }: Range, kind?: UnitKind, unit = ''): string {
  const factors: Readonly<Record<string, number>> = kind ? UNIT_KINDS[kind] : {};
  const inUnit = (value: number): string =>
    `${plain(value / (factors[unit] ?? 1))}${unit ? ` ${unit}` : ''}`;
  const bounds = [
    min === undefined ? '' : `at least ${inUnit(min)}`,
    max === undefined ? '' : `at most ${inUnit(max)}`,
  ];
  return bounds.filter(Boolean).join(' and ');
}

/** A limit without the digits that binary fractions add. */
function plain(value: number): string {
  return String(Number(value.toPrecision(6)));
}

const outside = (value: number, { min, max }: Range): boolean =>
  (min !== undefined && value < min) || (max !== undefined && value > max);

function refuse(context: z.RefinementCtx, params: IssueParams): never {
  context.addIssue({
    code: 'custom',
    message: params.expected,
    params: { ...params },
    input: params.received,
  });
  return z.NEVER;
}
