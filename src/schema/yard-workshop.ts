import { z } from 'zod';
import { fibreByProcess } from './fibre.ts';
import { count, decimal, percent, quantity } from './fields.ts';

const weighSpread = z
  .strictObject({
    release: percent('The shell.', { min: 0, max: 0.5 }).prefault('5%'),
    'fit-out': percent('What the fit-out adds.', { min: 0, max: 0.5 }).prefault('4%'),
    wiring: percent('What the wiring adds.', { min: 0, max: 0.5 }).prefault('3%'),
    engine: percent('Outboard and fuel.', { min: 0, max: 0.5 }).prefault('2%'),
    trailer: percent('The trailer.', { min: 0, max: 0.5 }).prefault('2%'),
  })
  .prefault({})
  .meta({ description: 'Share by which what a stage adds may differ from what is computed.' });

/** Fields of the yard that the workshop's figures are computed from. */
export const yardWorkshop = {
  workshop: z
    .strictObject({
      temperature: decimal('Shop temperature, degrees C.', { min: 0, max: 45 }).prefault('20'),
      vacuum: quantity('pressure', 'kPa', 'Vacuum of the bag below the air outside.', {
        min: 20_000,
        max: 101_000,
      }).prefault('90 kPa'),
      gelShare: percent('Share of the gel time in which the part must be full.', {
        min: 0.1,
        max: 1,
      }).prefault('70%'),
      potShare: percent('Share of the gel time in which a batch must be used up.', {
        min: 0.1,
        max: 1,
      }).prefault('50%'),
      leakDown: z
        .strictObject({
          minutes: count('With the pump shut off.', { min: 1, max: 60 }).default(5),
          most: quantity('pressure', 'kPa', 'Most that the bag may lose.', {
            min: 10,
            max: 20_000,
          }).prefault('1 kPa'),
        })
        .prefault({})
        .meta({ description: 'Test of the bag before resin is let in; common practice.' }),
      offcuts: percent('Share of core sheets lost at the edges.', { min: 0, max: 1 }).prefault(
        '10%',
      ),
      scale: quantity('mass', 'kg', 'How exactly the shop’s scale weighs.', {
        min: 0.001,
        max: 20,
      }).prefault('0.5 kg'),
      weighSpread,
      fibre: fibreByProcess,
    })
    .prefault({})
    .meta({ description: 'Conditions of the shop. Left out: those of an ordinary one.' }),
  wiring: z
    .strictObject({
      volts: quantity('voltage', 'V', 'Nominal voltage.', { min: 6, max: 50 }).prefault('12 V'),
      insulation: z
        .enum(['60', '75', '80', '90', '105', '125', '200'])
        .default('105')
        .meta({ description: 'Temperature that the cable’s insulation is rated for, degrees C.' }),
      thinnest: z.enum(['18', '16']).default('16').meta({ description: 'Thinnest wire, AWG.' }),
      stockMm2: z
        .array(decimal('Area of a cable on the shelf, mm2.', { min: 0.5, max: 240 }))
        .optional()
        .meta({ description: 'Cables on the shelf. Left out: every standard size.' }),
      routing: decimal('Cable along the axes is multiplied by this for bends and loops.', {
        min: 1,
        max: 3,
      }).prefault('1.2'),
      starterDrop: percent('Share of the voltage that may be lost while cranking.', {
        min: 0.01,
        max: 0.25,
      }).prefault('10%'),
      leastFeeder: quantity('current', 'A', 'A switch panel is fed for this at least.', {
        min: 1,
        max: 400,
      }).prefault('30 A'),
      days: decimal('Days that the house bank must last without charging.', {
        min: 0.1,
        max: 30,
      }).prefault('1'),
    })
    .prefault({})
    .meta({ description: 'What the yard wires with and by.' }),
};
