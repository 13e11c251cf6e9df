import { z } from 'zod';
import { amount, count, id, text } from './fields.ts';
import { optionPerformance } from './performance.ts';
import { optionElectrics } from './option-electrics.ts';
import { partLaminate } from './part-laminate.ts';
import { optionFloat } from './float.ts';
import { itemFacts, quantityLimits } from './shared.ts';

const optionSchema = z
  .strictObject({
    id: id('Name that orders point at.'),
    ...itemFacts,
    ...optionElectrics,
    fits: z
      .array(id('A hull.', 'hulls'))
      .optional()
      .meta({ description: 'Hulls that it fits. Left out: all.' }),
    occupies: z.array(id('A place in the boat.')).default([]).meta({
      description: 'Places that it takes up; two items cannot share one.',
    }),
    requires: z
      .array(z.union([id('An option.', 'options'), z.array(id('An option.', 'options')).min(2)]))
      .default([])
      .meta({
        description:
          'Options that must be ordered with it; a list within the list: any one of them.',
      }),
    excludes: z
      .array(id('An option.', 'options'))
      .default([])
      .meta({ description: 'Options that cannot be ordered with it.' }),
    quantity: quantityLimits.default({ least: 1, most: 1 }),
    price: amount(
      'Fixed list price of one before tax. Left out: worked out from cost and margin.',
      { min: 0, max: 1_000_000 },
    ).optional(),
    ...optionPerformance,
    ...optionFloat,
    laminate: partLaminate.optional(),
    serial: z
      .boolean()
      .default(false)
      .meta({ description: 'true: it has a serial number to write down at handover.' }),
  })
  .meta({ description: 'Something a customer may add.' });

export const optionFileSchema = z
  .strictObject({
    group: text('Heading that these options stand under.'),
    order: count('Where the group stands among the groups: 1 is first.', { min: 1, max: 99 }),
    options: z.array(optionSchema).min(1).meta({ description: 'The options of the group.' }),
  })
  .meta({ title: 'Options', description: 'A group of options.' });

export type Option = z.output<typeof optionSchema>;
