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
import { amount, count, id, type IssueParams, percent, quantity, text } from './fields.ts';
import { STAGES, stage } from './shared.ts';

const HUNDRED: Decimal = { amount: 100n, scale: 0n };

const shop = z
  .strictObject({
    name: text('The shop’s name, as at the head of a quote.'),
    strapline: text('What the shop does, in a few words.').optional(),
    address: z
      .array(text('A line of the address.'))
      .min(1)
      .meta({ description: 'Postal address.' }),
    phone: text('Telephone.').optional(),
    email: z.email().meta({ description: 'Where customers write to.' }).optional(),
    registration: text('Business registration, with its label: “ABN 00 000 000 000”.').optional(),
  })
  .meta({ description: 'Who the documents come from.' });

const tax = z
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
    source: text('The law or ruling that the rate and rounding follow.'),
  })
  .meta({ description: 'The tax on what the shop sells.' });

const paymentStage = z.strictObject({
  name: text('What the payment is called.'),
  when: text('The event that makes it due.'),
  share: percent('Its share of the drive-away price. All shares together make 100 %.'),
});

const supplier = z.strictObject({
  name: text('Who they are.'),
  leadDays: count('Days from order to delivery.', { min: 0, max: 400 }),
});

const stageFacts = z.strictObject({
  does: text('What is done in this stage, in one line.'),
  checks: z
    .array(text('One thing to check and sign for.'))
    .default([])
    .meta({ description: 'What is checked before the stage is signed off.' }),
  measures: z
    .array(text('One value to measure and write down, with its unit.'))
    .default([])
    .meta({ description: 'What is measured and written down.' }),
});

export const yardSchema = z
  .strictObject({
    shop,
    locale: z
      .string()
      .refine((tag) => isLocale(tag), 'a BCP 47 language tag such as en-AU')
      .meta({
        description: 'Language and region of dates and numbers: en-AU, en-NZ, en-GB, en-US.',
      }),
    currency: z
      .string()
      .refine((code) => currencyOf(code) !== undefined, 'an ISO 4217 code such as AUD')
      .meta({ description: 'ISO 4217 code of the currency that everything is priced in.' }),
    units: z
      .enum(['metric', 'us'])
      .default('metric')
      .meta({ description: 'Units that documents are printed in.' }),
    tax,
    rates: z
      .record(
        stage,
        amount('Pay of one hour’s work in this stage, with on-costs.', { min: 0, max: 1000 }),
      )
      .meta({
        description: 'Labour rate of every stage.',
      }),
    overhead: amount('Rent, power, insurance and the like, spread over one productive hour.', {
      min: 0,
      max: 1000,
    }),
    margins: z
      .record(id('Class of item.'), percent('Margin on the selling price.', { min: 0, max: 0.95 }))
      .meta({ description: 'Margin on the selling price (not markup on cost) by class of item.' }),
    marginFloor: percent('Least margin on the whole order after discount, before tax.', {
      min: 0,
      max: 0.95,
    }),
    wastage: z
      .record(
        id('Class of material.'),
        percent('Share bought on top of what is used.', { min: 0, max: 2 }),
      )
      .meta({ description: 'Wastage by class of material; a class that is not named has none.' }),
    massContingency: percent(
      'Share added to computed mass for what is not counted: glue, sealant, wire.',
      { min: 0, max: 0.5 },
    ),
    personMass: quantity('mass', 'kg', 'Mass allowed for one person.', { min: 50, max: 120 }),
    gearPerPerson: quantity('mass', 'kg', 'Mass of gear allowed for one person.', {
      min: 0,
      max: 100,
    }),
    fuelDensity: quantity('density', 'kg/m3', 'Density of the fuel.', { min: 600, max: 1000 }),
    priceAge: count('Days after which a part’s price is too old to quote from.', {
      min: 1,
      max: 2000,
    }),
    quoteDays: count('Days that a quote stays valid.', { min: 1, max: 365 }),
    showPrices: z.enum(['items', 'groups', 'total']).meta({
      description: 'How far the customer’s quote breaks the price down.',
    }),
    payments: z
      .array(paymentStage)
      .min(1)
      .superRefine((payments, context) => {
        const total = payments.reduce((sum, payment) => addDecimals(sum, payment.share), ZERO);
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
      .meta({ description: 'Payment stages, first to last.' }),
    notIncluded: z
      .array(text('One thing that the price does not cover.'))
      .meta({ description: 'Printed on the quote.' }),
    terms: z.array(text('One term of sale.')).min(1).meta({ description: 'Printed on the quote.' }),
    care: z
      .array(text('One piece of advice.'))
      .meta({ description: 'Care of the boat, for the handover pack.' }),
    handoverChecks: z
      .array(text('One thing to show or check with the owner.'))
      .meta({ description: 'Handover checklist.' }),
    stages: z
      .record(z.enum(STAGES), stageFacts)
      .meta({ description: 'What every stage does and checks.' }),
    suppliers: z
      .record(id('Supplier: the name of its price list file.'), supplier)
      .meta({ description: 'Suppliers.' }),
  })
  .meta({ id: 'yard', title: 'Yard', description: 'The shop: rates, margins, tax, terms.' });

export type Yard = z.output<typeof yardSchema>;

function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}
