import { z } from 'zod';
import { PART_UNITS } from '../units/index.ts';
import { amount, date, decimal, id, quantity, text } from './fields.ts';

/** Columns that every supplier's price list has, in the order of its header row. */
export const PART_COLUMNS = [
  'code',
  'description',
  'class',
  'unit',
  'cost',
  'currency',
  'mass',
  'price_date',
] as const;

/** Columns that a price list may have besides, after the others or among them. */
export const PART_EXTRA_COLUMNS = ['pack', 'buy'] as const;

export const partSchema = z
  .strictObject({
    code: z.string().min(1).max(40).meta({ description: 'Supplier’s code.' }),
    description: text('What it is.'),
    class: id('Class of material, for wastage.', 'wastageClasses'),
    unit: z.enum(PART_UNITS).meta({ description: 'What one of it is.' }),
    cost: amount('Cost of one unit before tax.', { min: 0, max: 1_000_000 }),
    currency: z.string().length(3).meta({ description: 'ISO 4217 code.' }),
    mass: quantity('mass', 'kg', 'Mass of one unit.', { min: 0, max: 2000 }),
    price_date: date(
      'First day of the price. A part may have several rows, each with its own day.',
    ),
    pack: decimal('Units in what the supplier sells at a time: a roll of 60 m2 has 60.', {
      min: 0.001,
      max: 100_000,
    }).optional(),
    buy: z.enum(['share', 'whole']).optional().meta({
      description:
        'share: an order pays for what it uses (the default); whole: it pays for whole packs.',
    }),
  })
  .meta({
    title: 'Price list',
    description: 'What one supplier sells: a row a part, a column a field.',
  });

export type Part = z.output<typeof partSchema>;
