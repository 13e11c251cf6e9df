import { z } from 'zod';
import { amount, count, id, partCode, quantity, text } from './fields.ts';
import { outboardPerformance, trailerPerformance } from './performance.ts';
import { outboardElectrics } from './option-electrics.ts';
import { hoursUse, partUse } from './shared.ts';

export const SHAFTS = ['short', 'long', 'extra-long'] as const;
export type Shaft = (typeof SHAFTS)[number];

const shaftFacts = z.strictObject({
  part: partCode('Supplier’s code of the outboard with this shaft.'),
  mass: quantity('mass', 'kg', 'Dry mass with this shaft.', { min: 5, max: 700 }),
  swampedMass: quantity(
    'mass',
    'kg',
    'What it weighs as it hangs in the water from a swamped boat. Left out: worked out from the dry mass.',
    { min: 0, max: 700 },
  ).optional(),
});

const outboard = z.strictObject({
  id: id('Name that orders point at.'),
  name: text('As printed: “Outboard 30 kW, tiller”.'),
  power: quantity('power', 'kW', 'Rated power at the propeller shaft.', { min: 500, max: 500_000 }),
  steering: z.enum(['tiller', 'remote']).meta({ description: 'How it is steered.' }),
  starting: z.enum(['hand', 'electric']).meta({ description: 'How it is started.' }),
  shafts: z
    .partialRecord(z.enum(SHAFTS), shaftFacts)
    .meta({ description: 'Shaft lengths that it comes with.' }),
  current: quantity('current', 'A', 'Current that its alternator gives.', {
    min: 0,
    max: 200,
  }).optional(),
  ...outboardElectrics,
  fuel: quantity('volume', 'L', 'Portable tank that comes with it.', {
    min: 0,
    max: 0.2,
  }).optional(),
  ...outboardPerformance,
  requires: z
    .array(z.union([id('An option.', 'options'), z.array(id('An option.', 'options')).min(2)]))
    .default([])
    .meta({ description: 'Options that must be ordered with it.' }),
  class: id('Margin class.', 'marginClasses'),
  parts: z
    .array(partUse)
    .default([])
    .meta({ description: 'Rigging parts beside the outboard itself.' }),
  hours: z.array(hoursUse).min(1).meta({ description: 'Work it takes, stage by stage.' }),
});

export const outboardFileSchema = z
  .strictObject({ outboards: z.array(outboard).min(1).meta({ description: 'One entry a model.' }) })
  .meta({ title: 'Outboards', description: 'Outboards that the shop fits.' });

const trailer = z.strictObject({
  id: id('Name that orders point at.'),
  name: text('As printed.'),
  part: partCode('Supplier’s code.'),
  tare: quantity(
    'mass',
    'kg',
    'Mass of the empty trailer with the parts beside it. Left out: the sum of them.',
    { min: 20, max: 2000 },
  ).optional(),
  rating: quantity(
    'mass',
    'kg',
    'Most that trailer and load may weigh together, ball load included (ATM).',
    { min: 100, max: 5000 },
  ),
  shortest: quantity('length', 'm', 'Shortest hull that it is made for.', { min: 1, max: 15 }),
  longest: quantity('length', 'm', 'Longest hull that it is made for.', { min: 1, max: 15 }),
  length: quantity('length', 'm', 'Length over all.', { min: 1, max: 18 }),
  width: quantity('length', 'm', 'Width over all.', { min: 0.8, max: 3 }),
  axles: count('Axles.', { min: 1, max: 3 }),
  brakes: z
    .enum(['none', 'over-run', 'electric', 'hydraulic'])
    .meta({ description: 'How it is braked.' }),
  ...trailerPerformance,
  class: id('Margin class.', 'marginClasses'),
  parts: z.array(partUse).default([]).meta({ description: 'Parts beside the trailer itself.' }),
  hours: z.array(hoursUse).min(1).meta({ description: 'Work it takes, stage by stage.' }),
});

export const trailerFileSchema = z
  .strictObject({ trailers: z.array(trailer).min(1).meta({ description: 'One entry a model.' }) })
  .meta({ title: 'Trailers', description: 'Trailers that the shop sells.' });

const charge = z.strictObject({
  id: id('Name that orders point at when they leave one out.'),
  name: text('As printed on the quote.'),
  amount: amount('What the authority or third party charges, before the shop’s own tax.', {
    min: 0,
    max: 100_000,
  }),
  taxed: z.enum(['yes', 'no']).meta({
    description:
      'yes: the shop’s tax is added, as on a thing that the shop buys and passes on; no: a fee paid in the customer’s name. Ask an accountant.',
  }),
  when: z
    .enum(['always', 'outboard', 'trailer'])
    .meta({ description: 'Which orders it belongs to.' }),
  source: text('Who sets it, and when it was looked up.'),
});

export const chargeFileSchema = z
  .strictObject({ charges: z.array(charge).meta({ description: 'One entry a charge.' }) })
  .meta({
    title: 'Charges',
    description: 'Statutory and third-party costs passed on at cost.',
  });

export type Outboard = z.output<typeof outboard>;
export type Trailer = z.output<typeof trailer>;
export type Charge = z.output<typeof charge>;
