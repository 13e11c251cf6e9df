import { z } from 'zod';
import { SHAFTS } from './engine-trailer-charge.ts';
import { amount, count, date, id, text } from './fields.ts';
import { circuitSchema } from './option-electrics.ts';
import { oneOffPurchase } from './order-plan.ts';
import { itemFacts, position } from './shared.ts';

/** The facts of an option as ordered, whether it was written as a name alone or with more to say. */
const orderedOption = z.strictObject({
  option: id('An option of the catalogue.', 'options'),
  quantity: count('How many.', { min: 1, max: 100 }).default(1),
  at: position
    .optional()
    .meta({ description: 'Where to put it, when not where the catalogue says.' }),
  note: text('For the workshop.').optional(),
});

export const optionLine = z
  .union([
    id('An option of the catalogue.', 'options').transform((option) => ({ option, quantity: 1 })),
    orderedOption,
  ])
  .meta({ description: 'An option’s name, or a block with option:, quantity:, at:, note:.' });

export const extra = z
  .strictObject({
    ...itemFacts,
    circuit: circuitSchema.optional(),
    quantity: count('How many.', { min: 1, max: 100 }).default(1),
    cost: amount('What one costs the shop in materials, before tax.', {
      min: 0,
      max: 1_000_000,
    }).optional(),
    ...oneOffPurchase,
    price: amount('Fixed price of one before tax; left out: worked out from cost and margin.', {
      min: 0,
      max: 1_000_000,
    }).optional(),
  })
  .meta({ description: 'A one-off item that is not in the catalogue.' });

export const orderedOutboard = z.strictObject({
  model: id('An outboard of the catalogue.', 'outboards'),
  shaft: z.enum(SHAFTS).meta({ description: 'Shaft length.' }),
  note: text('For the workshop.').optional(),
});

const none = z.literal('none');

/** What an alternative or a variation changes in an order. */
const change = {
  outboard: z
    .union([none, orderedOutboard])
    .optional()
    .meta({ description: 'Another outboard, or none.' }),
  trailer: z
    .union([none, id('A trailer of the catalogue.', 'trailers')])
    .optional()
    .meta({ description: 'Another trailer, or none.' }),
  add: z.array(optionLine).default([]).meta({ description: 'Options that come with it.' }),
  remove: z
    .array(id('An option of this order.', 'options'))
    .default([])
    .meta({ description: 'Options of this order that it does without.' }),
};

export const alternative = z
  .strictObject({ name: text('What is different, as printed: “with 29.4 kW instead”.'), ...change })
  .meta({ description: 'What is different; all else is as in the order.' });

export const variation = z
  .strictObject({
    name: text('What changes, as printed: “a live-well after all”.'),
    asked: date('When it was asked for.'),
    days: count('Days by which it moves the promised date.', { min: 0, max: 400 }).default(0),
    agreed: z
      .strictObject({
        date: date('When it was signed.'),
        by: text('Who signed it.'),
        price: amount('Change of the drive-away price as signed.', {
          min: -1_000_000,
          max: 1_000_000,
        }),
      })
      .optional()
      .meta({ description: 'There once it is signed: from then on it is built.' }),
    ...change,
  })
  .meta({ description: 'A change after acceptance, on top of those before it.' });
