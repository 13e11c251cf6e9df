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
  type UnitKind,
} from '../units/index.ts';

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
 * @param range - limits in `bareUnit`-free SI
 */
export function quantity<Kind extends UnitKind>(
  kind: Kind,
  bareUnit: string,
  description: string,
  range: Range = {},
): z.ZodType<Quantity<Kind>, string | number> {
  return typed
    .transform((written, context): Quantity<Kind> => {
      const parsed = parseQuantity(kind, String(written), bareUnit);
      if (parsed.problem !== undefined) {
        return refuse(context, paramsOf(parsed, String(written)));
      }
      if (outside(parsed.value, range)) {
        return refuse(context, rangeParams(String(written), range, `the SI unit of ${kind}`));
      }
      return parsed.value;
    })
    .meta({ description: `${description} A bare number is in ${bareUnit}.` });
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
          received: String(written),
        });
      if (outside(decimalToNumber(value), range))
        return refuse(context, rangeParams(String(written), range, ''));
      return value;
    })
    .meta({ description });
}

/** An amount of the workspace's currency; parsed as an exact decimal. */
export const amount = (
  description: string,
  range: Range = {},
): z.ZodType<Decimal, string | number> =>
  decimal(`${description} In the workspace's currency, such as 1250.50.`, range);

/** A percentage with its sign, "12.5%"; gives the fraction. */
export function percent(
  description: string,
  range: Range = { min: 0, max: 1 },
): z.ZodType<Decimal, string> {
  return z
    .string()
    .transform((written, context): Decimal => {
      const value = parsePercent(written);
      if (!value)
        return refuse(context, {
          finding: 'WRONG_TYPE',
          expected: 'a percentage, such as 12.5%',
          received: written,
        });
      if (outside(decimalToNumber(value), range)) {
        return refuse(context, {
          finding: 'OUT_OF_RANGE',
          expected: `from ${(range.min ?? 0) * 100}% to ${(range.max ?? 1) * 100}%`,
          received: written,
        });
      }
      return value;
    })
    .meta({ description });
}

/** A whole number in a range. */
export function count(
  description: string,
  range: { min: number; max: number },
): z.ZodType<number, string | number> {
  return typed
    .transform((written, context): number => {
      const text = String(written).trim();
      if (!/^-?\d+$/.test(text))
        return refuse(context, {
          finding: 'WRONG_TYPE',
          expected: 'a whole number',
          received: text,
        });
      const value = Number(text);
      return outside(value, range) ? refuse(context, rangeParams(text, range, '')) : value;
    })
    .meta({ description: `${description} From ${range.min} to ${range.max}.` });
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
          received: written,
        })
      );
    })
    .meta({ description });
}

/** Text for people: one line, not empty. */
export const text = (description: string) =>
  z.string().trim().min(1).max(2000).meta({ description });

/** A name that files point at: small letters, digits and hyphens. */
export const id = (description: string) =>
  z
    .string()
    .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'small letters, digits and hyphens')
    .meta({ description });

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

function rangeParams(received: string, { min, max }: Range, unit: string): IssueParams {
  const bounds = [
    min === undefined ? '' : `at least ${min}`,
    max === undefined ? '' : `at most ${max}`,
  ];
  const expected = `${bounds.filter(Boolean).join(' and ')}${unit ? ` in ${unit}` : ''}`;
  return { finding: 'OUT_OF_RANGE', expected, received };
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
