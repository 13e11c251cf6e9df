import { z } from 'zod';
import { coordinate, count, decimal, id, partCode, quantity, text } from './fields.ts';

export type { Share } from './fields.ts';

/** The steps of a build, in the order they are done. */
export const STAGES = [
  'mould-preparation',
  'gelcoat',
  'laminate',
  'infusion',
  'cure',
  'release',
  'fit-out',
  'wiring',
  'engine',
  'trailer',
  'water-trial',
  'handover',
] as const;
export type Stage = (typeof STAGES)[number];
export const stage = z.enum(STAGES).meta({ description: 'A step of the build.' });

/** What a quantity of parts or hours grows with. `once` does not grow with the count ordered. */
export const DRIVERS = ['count', 'once', 'length', 'beam', 'deck-area'] as const;
export type Driver = (typeof DRIVERS)[number];
export const driver = z.enum(DRIVERS).meta({
  description:
    'What the number is per: count (each one ordered; the default), once (however many), or a {metre} of the hull’s length or beam, or a square {metre} of its deck-area.',
});

/** Waters that a boat is used in. */
export const water = z.enum(['fresh', 'sea', 'both']);
export type WaterUse = z.output<typeof water>;

export const position = z
  .strictObject({
    x: coordinate('length', 'Forward of the transom; behind it is negative.'),
    y: coordinate('beam', 'To starboard of the {centreline}; to port is negative.').prefault(
      '0 % beam',
    ),
    z: coordinate('depth', 'Up from the baseline.'),
  })
  .meta({ description: 'Where the middle of the mass is.' });
export type Position = z.output<typeof position>;

export const partUse = z
  .strictObject({
    part: partCode('Supplier’s code, as in a price list.'),
    quantity: decimal('How many of the part’s unit.', { min: 0, max: 10_000 }),
    per: driver.optional(),
    stage: z.enum(STAGES).optional().meta({
      description:
        'The stage that it is fetched for, one that its item has hours in; left out: by the kind of part.',
    }),
  })
  .meta({ description: 'A part and how much of it is used.' });

export const hoursUse = z
  .strictObject({
    stage,
    hours: decimal('Hours of work.', { min: 0, max: 2000 }),
    per: driver.optional(),
  })
  .meta({ description: 'Hours of work in one stage.' });

/** The facts that anything a customer may add has in common. */
export const itemFacts = {
  name: text('What the customer and the workshop call it.'),
  free: text('Why it costs the customer nothing, where it does.').optional(),
  description: text('One sentence for the customer.').optional(),
  class: id('Margin class, one of those in yard.yaml.', 'marginClasses'),
  parts: z.array(partUse).default([]).meta({ description: 'Parts it takes.' }),
  hours: z.array(hoursUse).default([]).meta({ description: 'Work it takes, stage by stage.' }),
  mass: quantity('mass', 'kg', 'Mass of one, in place. Left out: the sum of its parts.', {
    min: 0,
    max: 3000,
  }).optional(),
  at: position.optional(),
  current: quantity('current', 'A', 'Direct current that one draws when it is on.', {
    min: 0,
    max: 500,
  }).optional(),
  note: text('For the workshop: how to fit it.').optional(),
};

export const quantityLimits = z
  .strictObject({
    least: count('Least that may be ordered.', { min: 1, max: 100 }).default(1),
    most: count('Most that may be ordered.', { min: 1, max: 100 }).default(1),
  })
  .meta({ description: 'How many may be ordered.' });
