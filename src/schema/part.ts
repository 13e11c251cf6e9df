import { z } from 'zod';
import { amount, date, id, quantity, text } from './fields.ts';

/** Columns of a supplier's price list, in the order of its header row. */
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

export const partSchema = z.strictObject({
  code: z.string().min(1).max(40).meta({ description: 'Supplier’s code.' }),
  description: text('What it is.'),
  class: id('Class of material, for wastage.', 'wastageClasses'),
  unit: z
    .enum(['each', 'set', 'm', 'm2', 'kg', 'L', 'sheet'])
    .meta({ description: 'What one of it is.' }),
  cost: amount('Cost of one unit before tax.', { min: 0, max: 1_000_000 }),
  currency: z.string().length(3).meta({ description: 'ISO 4217 code.' }),
  mass: quantity('mass', 'kg', 'Mass of one unit.', { min: 0, max: 2000 }),
  price_date: date('Day of the price.'),
});

export type Part = z.output<typeof partSchema>;
