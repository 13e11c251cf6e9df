import { z } from 'zod';
import { currencyOf } from '../money/index.ts';
import {
  addDecimals,
  compareDecimals,
  type Decimal,
  decimalToShortText,
  multiplyDecimals,
  ONE,
  ZERO,
} from '../units/index.ts';
import { amount, count, date, decimal, id, type IssueParams, percent, text } from './fields.ts';
import { stage, STAGES } from './shared.ts';

const HUNDRED: Decimal = { amount: 100n, scale: 0n };

export const tax = z
  .strictObject({
    name: text('What the tax is called: GST, VAT, sales tax.'),
    rate: percent('The rate.'),
    pricesInclude: z.boolean().meta({
      description:
        'true: customers are shown prices with the tax in them; false: tax is added below.',
    }),
    rounding: z.enum(['document', 'line']).meta({
      description:
        'document: the tax of the whole is rounded once; line: each line’s tax is rounded.',
    }),
    fractions: z.enum(['half-up', 'half-down', 'down']).default('half-up').meta({
      description:
        'What becomes of part of a cent of tax: half-up rounds half up; half-down drops half; down drops any part. Choose what the law named in source allows.',
    }),
    tradeIn: z.enum(['payment', 'reduces-tax']).default('payment').meta({
      description:
        'payment: the tax is on the full price; reduces-tax: on what is left of it after the trade-in. Ask an accountant.',
    }),
    zeroRated: text('The law by which an export bears no tax; left out: none does.').optional(),
    source: text('The law or ruling that the rate and rounding follow.'),
  })
  .meta({ description: 'The tax on what the shop sells.' });

export const trade = z
  .strictObject({
    name: text('What the trade is called.'),
    wage: amount('Pay of one hour.', { min: 0, max: 1000 }),
    onCosts: percent('Leave, insurance and the like, as a share of the wage.', { min: 0, max: 2 }),
    productive: percent('Share of paid hours that go into boats.', { min: 0.1, max: 1 }),
    people: count('How many people of the trade there are, for the plan.', {
      min: 0,
      max: 500,
    }).prefault(1),
  })
  .meta({ description: 'An hour costs wage x (1 + onCosts) / productive.' });

export const learning = z
  .strictObject({
    factors: z
      .array(decimal('What hours are multiplied by.', { min: 0.5, max: 5 }))
      .min(1)
      .meta({ description: 'For the first boat of a hull, the second, and so on; then 1.' }),
    stages: z
      .array(stage)
      .default([...STAGES])
      .meta({ description: 'Stages that are learnt. Left out: all.' }),
  })
  .optional()
  .meta({ description: 'How much longer the first boats of a hull take.' });

export const exchange = z
  .array(
    z.strictObject({
      currency: z
        .string()
        .refine((code) => currencyOf(code) !== undefined, 'an ISO 4217 code such as AUD')
        .meta({ description: 'ISO 4217 code of the other currency.' }),
      rate: decimal('Units of the yard’s currency for one of the other.', {
        min: 0.000001,
        max: 1_000_000,
      }),
      date: date('Day of the rate: it holds until a later row of the same currency.'),
      buffer: percent('Share added for the rate moving before the part is paid for.').prefault(
        '0%',
      ),
    }),
  )
  .default([])
  .meta({ description: 'Rates for parts that are priced in another currency.' });

export const rounding = z
  .strictObject({
    to: count('Prices are multiples of so many units of the currency.', { min: 1, max: 1000 }),
    way: z
      .enum(['nearest', 'up'])
      .default('nearest')
      .meta({ description: 'nearest: up or down, half up; up: never down.' }),
    tax: z.enum(['before', 'after']).meta({
      description: 'Whether the price is rounded before tax is added, or with the tax in it.',
    }),
    on: z.enum(['line', 'total']).meta({
      description:
        'line: every price that is worked out; total: the whole before tax, or the drive-away price after it.',
    }),
  })
  .optional()
  .meta({ description: 'How customers’ prices are rounded. Left out: to the cent.' });

const offerFacts = {
  id: id('Name that orders point at.'),
  name: text('As printed.'),
  description: text('One sentence for the customer.').optional(),
  options: z
    .array(id('An option; one of it.', 'options'))
    .min(2)
    .meta({ description: 'What is in the package.' }),
};

export const packageOffer = z
  .union([
    z.strictObject({
      ...offerFacts,
      price: amount('What the options cost together before tax.', { min: 0, max: 1_000_000 }),
    }),
    z.strictObject({ ...offerFacts, share: percent('Share off their prices.') }),
  ])
  .meta({ description: 'Options together at a price:, or with a share: off.' });

const due = {
  name: text('What the payment is called.'),
  when: text('The event that makes it due.'),
  event: z
    .enum(['order', ...STAGES])
    .optional()
    .meta({ description: 'The same as data: order, or the stage whose end makes it due.' }),
};

export const payments = z
  .array(
    z
      .union([
        z.strictObject({
          ...due,
          share: percent('Its share of the price less trade-in and fixed amounts.'),
        }),
        z.strictObject({
          ...due,
          amount: amount('A fixed amount.', { min: 0, max: 1_000_000 }),
        }),
      ])
      .meta({ description: 'A payment: a share:, or an amount:. All shares make 100 %.' }),
  )
  .min(1)
  .superRefine((stages, context) => {
    const total = stages.reduce(
      (sum, payment) => addDecimals(sum, 'share' in payment ? payment.share : ZERO),
      ZERO,
    );
    if (compareDecimals(total, ONE) === 0) return;
    context.addIssue({
      code: 'custom',
      params: {
        finding: 'WRONG_VALUE',
        expected: 'shares that make 100 % together',
        received: `shares that make ${decimalToShortText(multiplyDecimals(total, HUNDRED))} %`,
      } satisfies IssueParams,
    });
  })
  .meta({ description: 'Payment stages, first to last.' });

export const supplier = z.strictObject({
  name: text('Who they are.'),
  leadDays: count('Days from order to delivery.', { min: 0, max: 400 }),
  freight: z
    .union([
      z.strictObject({ share: percent('Share of the value bought.') }),
      z.strictObject({
        perOrder: amount('For all that an order needs.', { min: 0, max: 100_000 }),
      }),
    ])
    .optional()
    .meta({ description: 'What their freight costs: a share:, or an amount perOrder:.' }),
});

export const whatIf = z
  .strictObject({
    overruns: z
      .array(percent('Share by which the hours overrun.', { min: 0, max: 5 }))
      .prefault(['10%', '20%', '30%'])
      .meta({ description: 'Overruns of the hours to show the margin at.' }),
    materials: z
      .record(id('Class of material.', 'wastageClasses'), percent('Share by which it rises.'))
      .default({})
      .meta({ description: 'Classes of material to show the margin at a higher price of.' }),
    exchange: percent('Share by which other currencies rise.').prefault('10%'),
  })
  .prefault({})
  .meta({ description: 'What the yard’s side shows the margin at.' });
