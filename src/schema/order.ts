import { z } from 'zod';
import { ACCEPTABLE, type CodeFacts, FINDING_CODES } from '../findings/index.ts';
import { count, date, decimal, id, quantity, text } from './fields.ts';
import { orderFloat } from './float.ts';
import { alternative, extra, optionLine, orderedOutboard, variation } from './order-items.ts';
import { orderMoney } from './order-money.ts';
import { orderPerformance } from './performance.ts';
import { orderPlan } from './order-plan.ts';
import { stage, water } from './shared.ts';

/** An order's number: it names files and folders, so nothing that leads elsewhere. */
export const ORDER_NUMBER = /^[A-Za-z0-9]+(?:-[A-Za-z0-9]+)*$/;

/** Findings that stop an issue unless the order allows them. */
const ALLOWABLE = Object.entries<CodeFacts>(FINDING_CODES).flatMap(([code, { stopsIssue }]) =>
  stopsIssue === 'unless allowed' ? [code] : [],
);

/** From first enquiry to the end, in the order that an order passes through them. */
export const STATUSES = [
  'enquiry',
  'quoted',
  'accepted',
  'building',
  'ready',
  'handed-over',
  'closed',
] as const;
export type Status = (typeof STATUSES)[number];

const customer = z
  .strictObject({
    name: text('Who the quote is for.'),
    contact: text('The person to ask for.').optional(),
    address: z
      .array(text('A line of the address.'))
      .default([])
      .meta({ description: 'Postal address.' }),
    phone: text('Telephone.').optional(),
    email: z.email().meta({ description: 'Where to write to.' }).optional(),
  })
  .meta({ description: 'Who the boat is for.' });

const dates = z
  .strictObject({
    enquiry: date('First contact.'),
    quoted: date('The quote’s own date: prices are those of this day.').optional(),
    accepted: date('The customer said yes.').optional(),
    started: date('First work in the {mould}.').optional(),
    ready: date('Water trial passed.').optional(),
    handedOver: date('Handed over.').optional(),
    promised: date('When the customer was told it would be ready.').optional(),
  })
  .meta({ description: 'Dates, earliest first.' });

const record = z
  .strictObject({
    hullNumber: text('Hull identification number, as on the transom.').optional(),
    masses: z
      .array(
        z.strictObject({
          stage,
          mass: quantity('mass', 'kg', 'As weighed.', { min: 1, max: 5000 }),
          date: date('When.'),
          by: text('Who.'),
        }),
      )
      .default([])
      .meta({ description: 'Masses as weighed, stage by stage.' }),
    hours: z
      .array(
        z.strictObject({ stage, hours: decimal('Hours really worked.', { min: 0, max: 5000 }) }),
      )
      .default([])
      .meta({ description: 'Hours as worked, stage by stage.' }),
    serials: z
      .array(z.strictObject({ item: text('What.'), serial: text('Its number.') }))
      .default([])
      .meta({ description: 'Serial numbers of what is fitted.' }),
    batches: z
      .array(z.strictObject({ material: text('What.'), batch: text('Its batch.') }))
      .default([])
      .meta({ description: 'Batches of the materials used.' }),
    trials: z
      .array(
        z.strictObject({
          date: date('When.'),
          conditions: text('Wind, water, load.'),
          people: count('On board.', { min: 1, max: 40 }),
          speed: quantity('speed', 'kn', 'Fastest steady speed.', { min: 0, max: 50 }),
          rpm: count('Engine speed then.', { min: 0, max: 9000 }),
          by: text('Who.'),
        }),
      )
      .default([])
      .meta({ description: 'Runs on the water.' }),
  })
  .meta({ description: 'What was measured while building.' });

export const orderSchema = z
  .strictObject({
    number: z
      .string()
      .regex(ORDER_NUMBER, 'letters, digits and hyphens')
      .meta({ description: 'The order’s number: it names its documents. Quote it.' }),
    status: z.enum(STATUSES).meta({ description: 'How far the order has come.' }),
    dates,
    customer,
    boat: z
      .strictObject({
        name: text('The boat’s own name.').optional(),
        use: text(
          'What the customer wants the boat for, in their words; the quote prints it as theirs.',
        ),
        people: count('How many people the boat is to carry.', { min: 1, max: 40 }).optional(),
        water: water.optional().meta({
          description:
            'Where the customer uses it: fresh, sea, or both, the worse of the two for each figure. Left out: as hull or yard says.',
        }),
      })
      .meta({ description: 'The boat in the customer’s words.' }),
    hull: id('A hull of the catalogue.', 'hulls'),
    options: z
      .array(optionLine)
      .default([])
      .meta({ description: 'What is added to the hull, from the catalogue.' }),
    extras: z
      .array(extra)
      .default([])
      .meta({ description: 'One-off items that are not in the catalogue.' }),
    outboard: orderedOutboard
      .optional()
      .meta({ description: 'The outboard; left out: the customer fits their own.' }),
    fuel: quantity('volume', 'L', 'Fuel that the boat is weighed with.', {
      min: 0,
      max: 1,
    }).optional(),
    trailer: id('A trailer of the catalogue.', 'trailers').optional(),
    ...orderPerformance,
    leaveOutCharges: z
      .array(
        z.strictObject({
          charge: id('A charge.', 'charges'),
          reason: text('Why it does not apply; printed for the yard.'),
        }),
      )
      .default([])
      .meta({ description: 'Charges that do not apply to this order.' }),
    ...orderMoney,
    ...orderPlan,
    alternatives: z
      .array(alternative)
      .default([])
      .meta({ description: 'The same boat otherwise: each is figured beside this one.' }),
    ...orderFloat,
    acceptance: z
      .strictObject({
        revision: count('Revision of the issued quote that was accepted.', { min: 1, max: 999 }),
        by: text('Who said yes.'),
      })
      .optional()
      .meta({ description: 'What was accepted and by whom; the day is dates: accepted:.' }),
    variations: z
      .array(variation)
      .default([])
      .meta({ description: 'Changes after acceptance, first to last.' }),
    allow: z
      .array(
        z.strictObject({
          finding: z
            .enum(ALLOWABLE)
            .meta({ description: 'The finding that is not to stop the quote from being issued.' }),
          by: text('Who allows it.'),
          reason: text('Why.'),
        }),
      )
      .default([])
      .meta({ description: 'Findings that the owner has looked at and lets pass.' }),
    accepted: z
      .array(
        z.strictObject({
          finding: z
            .enum(ACCEPTABLE)
            .meta({ description: 'A finding of safety that somebody takes upon themselves.' }),
          found: text('What was found then, as it is printed after "Found:".'),
          limit: text('What is printed after "Expected:", where it is.').optional(),
          by: text('Who accepts it: a person’s name.'),
          date: date('When.'),
          reason: text('Why; printed for the customer.'),
        }),
      )
      .default([])
      .meta({
        description:
          'Findings of safety that were looked at and accepted. One that is then found worse is open again.',
      }),
    note: text('For the shop only; never printed for the customer.').optional(),
    record: record.optional(),
  })
  .meta({ title: 'Order', description: 'One boat for one customer.' });

export type Order = z.output<typeof orderSchema>;
