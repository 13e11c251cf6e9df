import { z } from 'zod';
import { amount, count, id, quantity, text } from './fields.ts';
import { hullPerformance } from './performance.ts';
import { hullLaminate } from './hull-laminate.ts';
import { partLaminate } from './part-laminate.ts';
import { hullFloat } from './float.ts';
import { hoursUse, partUse, position } from './shared.ts';

const length = (description: string, min: number, max: number) =>
  quantity('length', 'm', description, { min, max });

const station = z
  .strictObject({
    x: length('Distance forward of the transom.', -1, 15),
    points: z
      .array(z.tuple([length('Half-breadth.', 0, 4), length('Height above the baseline.', -1, 4)]))
      .min(2)
      .meta({ description: 'Pairs of half-breadth and height, from the keel to the sheer.' }),
  })
  .meta({ description: 'One cross-section of the hull.' });

/** What a hull file says for the plan. */
const hullPlan = {
  mouldOf: id(
    'The hull in whose {mould} this one is made; left out: its own. One boat at a time is in a {mould}.',
    'hulls',
  ).optional(),
  cureHours: count('Hours of the clock in the {mould} from the end of infusion to release.', {
    min: 0,
    max: 2000,
  }).prefault(48),
};

export const hullSchema = z
  .strictObject({
    id: id('Name that orders point at.'),
    name: text('The model, as printed.'),
    sentence: text('What the boat is, in one line for the customer.'),
    dimensions: z
      .strictObject({
        length: length('Length of the hull, without brackets and fittings.', 1, 15),
        beam: length('Greatest beam.', 0.5, 5),
        depth: length('Depth amidships, keel to sheer.', 0.2, 3),
        transomBeam: length('Greatest width of the transom.', 0.3, 5),
        transomHeight: length(
          'Height of the transom where the outboard clamps on, above the keel there.',
          0.2,
          1.2,
        ),
        deadrise: quantity('angle', 'deg', 'Deadrise at the transom.', { min: 0, max: 0.7 }),
        deckArea: quantity('area', 'm2', 'Area of floor and decks that options cover.', {
          min: 0.5,
          max: 60,
        }),
      })
      .meta({ description: 'Principal dimensions.' }),
    lines: z.array(station).min(3).default([]).meta({
      description:
        'Cross-sections, from the transom forward: at least three. Left out: nothing is computed of how it floats, and somebody has to accept that.',
    }),
    ratings: z
      .strictObject({
        power: quantity('power', 'kW', 'Greatest power that the shop rates the hull for.', {
          min: 0,
          max: 500_000,
        }),
        engineMass: quantity('mass', 'kg', 'Heaviest outboard that the transom is built for.', {
          min: 0,
          max: 1000,
        }),
        people: count('Most people that the shop rates the hull for.', { min: 1, max: 40 }),
        load: quantity(
          'mass',
          'kg',
          'Greatest load: people, gear, fuel, options; not the outboard.',
          { min: 0, max: 5000 },
        ),
        basis: text('How the shop came to these ratings.'),
        draft: z.boolean().default(false).meta({
          description: 'true: they are not confirmed yet, and no quote of this hull is issued.',
        }),
      })
      .meta({ description: 'What the shop rates the hull for, to be confirmed by test.' }),
    tank: position.prefault({ x: '20 % length', y: '0 % beam', z: '35 % depth' }).meta({
      description: 'Where the fuel is. Left out: a fifth of the length forward of the transom.',
    }),
    tankVolume: quantity('volume', 'L', 'What a tank that every boat of this hull has holds.', {
      min: 0.001,
      max: 2,
    }).optional(),
    ...hullPerformance,
    shaft: z
      .enum(['short', 'long', 'extra-long'])
      .meta({ description: 'Outboard shaft that the transom suits.' }),
    class: id('Margin class.', 'marginClasses'),
    shell: z
      .strictObject({
        mass: quantity('mass', 'kg', 'Mass of the hull out of the {mould}.', { min: 5, max: 3000 }),
        at: position,
        parts: z.array(partUse).min(1).meta({ description: 'Materials of the laminate.' }),
        hours: z.array(hoursUse).min(1).meta({ description: 'Work it takes, stage by stage.' }),
      })
      .meta({ description: 'The {moulded} shell: materials and work.' }),
    structure: z
      .strictObject({
        mass: quantity('mass', 'kg', 'Mass of what every boat of this hull is fitted with.', {
          min: 0,
          max: 3000,
        }),
        at: position,
        parts: z.array(partUse).meta({ description: 'Parts it takes.' }),
        hours: z.array(hoursUse).meta({ description: 'Work it takes, stage by stage.' }),
        laminate: partLaminate.optional(),
      })
      .meta({
        description: 'Gunwales, floor, frames and fittings that every boat of this hull has.',
      }),
    ...hullLaminate,
    moulds: amount('Charged to each boat for the wear of the {moulds}.', { min: 0, max: 100_000 }),
    mould: z
      .strictObject({
        cost: amount('What the {moulds} cost to make.', { min: 0, max: 1_000_000 }),
        boats: count('Boats expected of them.', { min: 1, max: 1000 }),
      })
      .optional()
      .meta({
        description: 'Paid back by each boat: cost over boats, beside what is charged for wear.',
      }),
    ...hullFloat,
    ...hullPlan,
    includes: z
      .array(text('One thing that every boat of this hull has.'))
      .min(1)
      .meta({ description: 'Printed on the quote.' }),
  })
  .meta({
    title: 'Hull',
    description: 'A {moulded} shape that the shop owns a {mould} for.',
  });

export type Hull = z.output<typeof hullSchema>;
