import { z } from 'zod';
import { currencyCode } from '../../money/index.ts';
import { compareDecimals, type Computed, ONE, ZERO } from '../../units/index.ts';
import { currency, day, decimal, money } from './texts.ts';

/**
 * Names the form of a sealed file. What is written here is sent: a form never changes in a way that a file of it could
 * not be read any more. A later form has another number, and a reader beside this one.
 */
export const FORMAT = 'orlop issued quote 2';

const above0 = decimal.refine((value) => compareDecimals(value, ZERO) > 0, 'above 0');
const below1 = decimal.refine((value) => compareDecimals(value, ONE) < 0, 'below 1');

const item = z
  .object({
    key: z.string(),
    class: z.string().meta({ description: 'Its class of margin.' }),
    quantity: z.number().meta({ description: 'How many are ordered.' }),
    parts: z.array(
      z.object({
        code: z.string(),
        supplier: z.string(),
        class: z.string().meta({ description: 'Its class of material, for the wastage.' }),
        quantity: decimal.meta({ description: 'Used in the boat, without wastage.' }),
        cost: money.meta({ description: 'Of one unit, as the price list has it.' }),
        pack: decimal.exactOptional().meta({ description: 'Units that are sold together.' }),
        buy: z.enum(['whole', 'share']).exactOptional().meta({
          description: 'whole: the order pays for what is left of the last pack.',
        }),
      }),
    ),
    hours: z.array(z.object({ stage: z.string(), hours: decimal })),
    other: money.exactOptional().meta({ description: 'Cost beside parts and hours.' }),
    fixed: money
      .exactOptional()
      .meta({ description: 'Its price before tax; left out: worked out.' }),
  })
  .meta({ description: 'What one row of the price is made of.' });

const rules = z
  .object({
    rates: z
      .record(
        z.string(),
        z.union([decimal, z.object({ wage: decimal, onCosts: decimal, productive: above0 })]),
      )
      .meta({ description: 'Of one hour, by stage; or a wage, x (1 + onCosts) / productive.' }),
    overhead: decimal.meta({ description: 'Of one hour.' }),
    overheadShare: decimal.exactOptional().meta({ description: 'Of materials and labour.' }),
    learning: z.record(z.string(), decimal).meta({ description: 'Hours times this, by stage.' }),
    rework: decimal.exactOptional().meta({ description: 'Hours on top, a share.' }),
    margins: z.record(z.string(), below1).meta({ description: 'Of the selling price, by class.' }),
    wastage: z.record(z.string(), decimal).meta({ description: 'Bought on top, by class.' }),
    exchange: z
      .record(z.string(), z.object({ rate: decimal, buffer: decimal }))
      .meta({ description: 'The quote’s currency for one of another, by its code.' }),
    freight: z
      .record(z.string(), z.union([z.object({ share: decimal }), z.object({ perOrder: decimal })]))
      .meta({ description: 'By supplier: a share of what is bought, or so much an order.' }),
    rounding: z
      .object({
        to: z.int().min(1),
        way: z.enum(['nearest', 'up']),
        tax: z.enum(['before', 'after']),
        on: z.enum(['line', 'total']),
      })
      .exactOptional()
      .meta({ description: 'How customers’ prices were rounded; left out: to the cent.' }),
    taxRounding: z.enum(['document', 'line']),
    taxFractions: z.enum(['half-up', 'half-down', 'down']),
  })
  .meta({ description: 'What the rows were priced with.' });

const offer = { name: z.string(), keys: z.array(z.string()) };
const onClass = { class: z.string().exactOptional() };

/** What the rows of a quote were made of: only what it would cost today needs it. */
export const pricing = z.object({
  items: z.array(item),
  rules,
  packages: z.array(
    z.union([z.object({ ...offer, price: decimal }), z.object({ ...offer, share: decimal })]),
  ),
  discount: z
    .union([z.object({ ...onClass, amount: decimal }), z.object({ ...onClass, share: decimal })])
    .exactOptional()
    .meta({ description: 'Off the price before tax, of one class or of everything.' }),
  nth: z.int().exactOptional().meta({ description: 'Which boat of its hull it is, for learning.' }),
  settings: z
    .record(z.string(), z.string())
    .meta({ description: 'Rates, margins and the like by their names in the yard file.' }),
});

/** What was sent: the account of an order and all that is said of its quote stands on this. */
const quoteFields = {
  number: z.string(),
  revision: z.int().min(1).meta({ description: '1 for the first.' }),
  issuedOn: day,
  status: z.string().meta({ description: 'Of the order on that day: a draft unless quoted.' }),
  currency,
  zeroRated: z.boolean().meta({ description: 'true: an export that bears no tax.' }),
  tax: z.object({
    name: z.string(),
    rate: decimal.meta({ description: 'As charged: 0 of an export.' }),
  }),
  price: z.object({
    driveAway: money.meta({ description: 'The last figure, with nothing left to add.' }),
    taxable: money.meta({ description: 'Before tax and charges.' }),
    tax: money,
    charges: money.meta({ description: 'Passed on at cost, before tax.' }),
    chargesTax: money,
    discountWithTax: money.meta({ description: 'Taken off: zero or more.' }),
    tradeIn: money,
  }),
  payments: z.array(z.object({ name: z.string(), when: z.string(), amount: money })),
  rows: z.array(z.object({ key: z.string(), name: z.string(), withTax: money })),
  inputs: z
    .array(
      z.object({
        file: z.string().meta({ description: 'Relative to the workspace.' }),
        sha256: z.string(),
      }),
    )
    .meta({ description: 'Every file that it was made of, with the digest of its text.' }),
  view: z.unknown().meta({ description: 'The text of the quote, as its template takes it.' }),
};

/** True when all that the quote asks for is in its own currency. */
function inOneCurrency({ currency: { code }, price, payments, rows }: Quote): boolean {
  const amounts = [
    ...Object.values(price),
    ...payments.map(({ amount }) => amount),
    ...rows.map(({ withTax }) => withTax),
  ];
  return amounts.every((amount) => currencyCode(amount) === code);
}

const plainQuote = z.object(quoteFields);
type Quote = z.output<typeof plainQuote>;

/** What was sent: the account of an order and all that is said of its quote stands on this. */
export const quote = plainQuote.refine(inOneCurrency, 'amounts in the currency of the quote');

const figure = z.object({
  label: z.string(),
  value: z.union([z.string(), z.number()]),
  unit: z.string(),
  low: z.number().exactOptional(),
  high: z.number().exactOptional(),
  method: z.string(),
  source: z.string(),
});

/** The content of a sealed file. */
export const sealedForm = z
  .object({
    ...quoteFields,
    format: z.literal(FORMAT),
    pricing,
    figures: z.record(z.string(), figure).meta({
      description: 'Every figure of the boat, as in figures.json: for people and scripts.',
    }),
  })
  .refine(inOneCurrency, 'amounts in the currency of the quote');

export type Sealed = z.output<typeof sealedForm>;
export type Pricing = z.output<typeof pricing>;

/** A quote as it was sent: its numbers never change afterwards. */
export type IssuedQuote = Quote & {
  /** What its price was made of; or what of it the file of an earlier program lacks. */
  readonly pricing: Computed<Pricing>;
};
