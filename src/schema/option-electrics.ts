import { z } from 'zod';
import { count, decimal, quantity } from './fields.ts';

const current = (description: string) =>
  quantity('current', 'A', description, { min: 0.01, max: 1000 });
const hours = (description: string) => decimal(description, { min: 0, max: 24 });

const PURPOSES = [
  'feeder',
  'starting',
  'navigation-lights',
  'cabin-lights',
  'pump',
  'blower',
  'instruments',
  'accessory',
] as const;

export const circuitSchema = z
  .strictObject({
    purpose: z.enum(PURPOSES).default('accessory').meta({
      description: 'What it is for: it decides the {colour} of its wire.',
    }),
    drop: z.enum(['critical', 'general']).default('general').meta({
      description: 'critical: it may lose 3 % of the voltage; general: 10 %.',
    }),
    hoursADay: hours('Hours a day that it draws its current.').prefault('1'),
    continuous: z.boolean().default(false).meta({
      description: 'true: it may draw its current for three hours and more on end.',
    }),
    engineSpace: z.boolean().default(false).meta({
      description: 'true: some of its run passes a space that the engine heats.',
    }),
    bundled: count('Conductors that carry current in one bundle, its own two among them.', {
      min: 2,
      max: 60,
    }).default(2),
    largestFuse: current('Largest fuse that the device’s maker allows.').optional(),
    from: z.enum(['panel', 'battery']).default('panel').meta({
      description: 'battery: wired straight to it, with a fuse of its own there, and no switch.',
    }),
    volts: quantity('voltage', 'V', 'Nominal voltage, when not the boat’s.', {
      min: 1,
      max: 50,
    }).optional(),
    each: z.boolean().default(false).meta({
      description: 'true: each one of several has a wire and fuse of its own.',
    }),
  })
  .meta({ description: 'How an item that draws current is wired.' });

const batterySchema = z
  .strictObject({
    capacity: quantity('charge', 'Ah', 'Rated capacity of one.', { min: 3600, max: 7.2e6 }),
    ratingHours: decimal('Hours of the rating.', { min: 1, max: 100 }).prefault('20'),
    chemistry: z.enum(['flooded', 'agm', 'lifepo4']).meta({ description: 'Chemistry.' }),
    bank: z.enum(['house', 'start']).default('house').meta({
      description: 'start: for the engine; it feeds the house only when there is no house bank.',
    }),
  })
  .meta({ description: 'A battery.' });

const chargerSchema = z
  .strictObject({
    current: current('What it gives.'),
    source: z.enum(['shore', 'engine', 'sun']).meta({ description: 'What it lives on.' }),
    hoursADay: hours('Hours a day that it gives it, when known.').optional(),
  })
  .meta({ description: 'A charger.' });

const pumpSchema = z
  .strictObject({
    flow: quantity('flow', 'L/h', 'Flow at no head, as the label says.', { min: 1e-6, max: 0.1 }),
    highest: quantity('length', 'm', 'Head at which the flow stops.', { min: 0.1, max: 100 }),
    head: quantity('length', 'm', 'Head that it lifts to here.', { min: 0, max: 100 }),
    wanted: quantity('flow', 'L/h', 'Flow that is wanted there.', { min: 0, max: 0.1 }).optional(),
  })
  .meta({ description: 'A pump.' });

/** Fields of an option that the wiring is computed from. */
export const optionElectrics = {
  circuit: circuitSchema.optional(),
  battery: batterySchema.optional(),
  charger: chargerSchema.optional(),
  pump: pumpSchema.optional(),
  panel: z
    .strictObject({ ways: count('Circuits that it switches.', { min: 1, max: 60 }) })
    .optional()
    .meta({ description: 'A switch panel: circuits begin at it.' }),
};

/** Fields of an outboard that the wiring is computed from. */
export const outboardElectrics = {
  cranking: current('Current while the starter cranks.').optional(),
  starterCable: quantity('area', 'm2', 'Starter cable that its maker asks for at least.', {
    min: 1e-6,
    max: 2e-4,
  }).optional(),
};

export type CircuitFacts = z.output<typeof circuitSchema>;
export type BatteryFacts = z.output<typeof batterySchema>;
