import { z } from 'zod';
import { amount, count, date, id, percent, text } from './fields.ts';

const onClass = {
  class: id('Margin class that it is on; left out: everything.', 'marginClasses').optional(),
  reason: text('Why.'),
};

const discount = z
  .union([
    z.strictObject({
      amount: amount('Off the price before tax.', { min: 0, max: 1_000_000 }),
      ...onClass,
    }),
    z.strictObject({ share: percent('Share off the price before tax.'), ...onClass }),
  ])
  .meta({
    description:
      'A discount on the whole or a class:, as an amount: or a share:, with its reason:.',
  });

/** What an order says of money beside its items. */
export const orderMoney = {
  discount: discount.optional(),
  packages: z
    .array(id('A package of the yard.', 'packages'))
    .default([])
    .meta({ description: 'Packages that the order has; each brings its options.' }),
  tradeIn: z
    .strictObject({
      name: text('What is traded in, as printed.'),
      value: amount('What it counts for.', { min: 0, max: 1_000_000 }),
    })
    .optional()
    .meta({ description: 'Taken in payment; the yard’s tax says whether it lowers the tax.' }),
  paid: z
    .array(
      z.strictObject({
        date: date('When.'),
        amount: amount('How much.', { min: 0, max: 1_000_000 }),
        note: text('How, or for what.').optional(),
      }),
    )
    .default([])
    .meta({ description: 'What the customer has paid so far, the deposit first.' }),
  zeroRated: z
    .strictObject({ reason: text('Why no tax is due: where the boat goes and who ships it.') })
    .optional()
    .meta({ description: 'An export that bears no tax, by the law that the yard’s tax names.' }),
  firstOfKind: z
    .boolean()
    .default(false)
    .meta({ description: 'true: the first boat of this hull, as hullCount: 1.' }),
  hullCount: count('Which boat of this hull it is: 1 is the first.', {
    min: 1,
    max: 1000,
  }).optional(),
};
