import { z } from 'zod';
import { currencyOf } from '../money/index.ts';
import { amount, count, id, type IssueParams, percent, quantity, text } from './fields.ts';
import { yardPerformance } from './performance.ts';
import { yardFloat } from './float.ts';
import { STAGES, stage } from './shared.ts';
import { stagePlan, yardPlan } from './yard-plan.ts';
import {
  exchange,
  learning,
  packageOffer,
  payments,
  rounding,
  supplier,
  tax,
  trade,
  whatIf,
} from './yard-money.ts';
import { yardWorkshop } from './yard-workshop.ts';

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

const stageFacts = z.strictObject({
  does: text('What is done in this stage, in one line.'),
  trade: id(
    'Who does it: one of the trades. A rate of the stage itself goes before it.',
  ).optional(),
  ...stagePlan,
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
        description:
          'Language and region of dates, numbers and words: en-AU, en-NZ, en-GB, en-US. In en-US documents say gasoline, mold, draft, tire.',
      }),
    finalPrice: text(
      'What documents call the final price. Left out: “Drive-away price” in Australia and New Zealand, “Total price” elsewhere.',
    ).optional(),
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
      .partialRecord(
        stage,
        amount('Cost of one hour in this stage, with on-costs.', { min: 0, max: 1000 }),
      )
      .default({})
      .meta({
        description: '{Labour} rate by stage; a stage that names a trade may do without.',
      }),
    trades: z
      .record(id('Trade.'), trade)
      .default({})
      .meta({ description: 'Trades with their wages; stages name them.' }),
    ...yardPlan,
    learning,
    rework: percent('Hours allowed on top of every stage for work done twice.').optional(),
    overhead: amount('Rent, power, insurance and the like, spread over one productive hour.', {
      min: 0,
      max: 1000,
    }).prefault('0'),
    overheadShare: percent(
      'Overhead as a share of materials and {labour}, beside that by the hour.',
      {
        min: 0,
        max: 2,
      },
    ).optional(),
    exchange,
    rounding,
    packages: z
      .array(packageOffer)
      .default([])
      .meta({ description: 'Options that are sold together for less.' }),
    whatIf,
    ...yardPerformance,
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
        percent('Share on top of what is used.', { min: 0, max: 2 }),
      )
      .meta({
        description:
          'Wastage by class of material; a class that is not named has none. The price has it in it; what is counted in pieces or sets is bought as counted.',
      }),
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
    ...yardFloat,
    priceAge: count('Days after which a part’s price is too old to quote from.', {
      min: 1,
      max: 2000,
    }),
    priceJump: percent(
      'Share by which a price may move from one row to the next unasked.',
    ).prefault('40%'),
    quoteDays: count('Days that a quote stays valid.', { min: 1, max: 365 }),
    showPrices: z.enum(['items', 'groups', 'total']).meta({
      description: 'How far the customer’s quote breaks the price down.',
    }),
    payments,
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
    stages: z.partialRecord(z.enum(STAGES), stageFacts).default({}).meta({
      description: 'What a stage does and checks; a stage that no boat goes through is left out.',
    }),
    ...yardWorkshop,
    suppliers: z
      .record(id('Supplier: the name of its price list file.'), supplier)
      .meta({ description: 'Suppliers.' }),
  })
  .superRefine(({ rates, trades, stages }, context) => {
    for (const name of STAGES.filter((one) => stages[one] !== undefined)) {
      const by = stages[name]?.trade;
      if (rates[name] !== undefined || (by !== undefined && by in trades)) continue;
      context.addIssue({
        code: 'custom',
        path: by === undefined ? ['rates'] : ['stages', name, 'trade'],
        params: rateMissing(name, by, Object.keys(trades)),
      });
    }
  })
  .meta({ title: 'Yard', description: 'The shop: rates, margins, tax, terms.' });

export type Yard = z.output<typeof yardSchema>;

function rateMissing(name: string, by: string | undefined, trades: readonly string[]): IssueParams {
  return by === undefined
    ? {
        finding: 'MISSING_KEY',
        expected: `a rate for ${name}, or a trade: in that stage`,
        received: `no "${name}:"`,
      }
    : {
        finding: 'UNKNOWN_ID',
        expected: `one of the trades: ${trades.join(', ')}`,
        received: `the trade "${by}"`,
      };
}

function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}
