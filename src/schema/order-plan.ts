import { z } from 'zod';
import { count, date, id, partCode } from './fields.ts';

/** What an order file says for the plan. */
export const orderPlan = {
  bought: z
    .array(
      z.strictObject({
        supplier: id('The supplier: the name of its price list file.'),
        date: date('The day on which the parts were ordered.'),
        arrives: date(
          'The day on which they come; left out: the supplier’s days of delivery later.',
        ).optional(),
        parts: z
          .array(partCode('Supplier’s code of a part of this order.'))
          .min(1)
          .optional()
          .meta({ description: 'Which parts; left out: all that the order takes from them.' }),
      }),
    )
    .default([])
    .meta({ description: 'Parts that are ordered for this boat already, or are here.' }),
};

/** Where a one-off item that has only a cost is bought. */
export const oneOffPurchase = {
  supplier: id('Where a one-off item is bought; left out: no supplier is named.').optional(),
  leadDays: count('From order to delivery, calendar days; left out: the supplier’s.', {
    min: 0,
    max: 400,
  }).optional(),
  ordered: date('The day on which it was ordered.').optional(),
};
