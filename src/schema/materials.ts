import { z } from 'zod';
import { ARCHITECTURES } from './fibre.ts';
import { date, decimal, partCode, percent, quantity, text } from './fields.ts';

const part = partCode('Code in a price list.');
const celsius = decimal('Temperature, degrees C.', { min: -20, max: 80 });
const kind = <Name extends string>(name: Name) =>
  z.literal(name).meta({ description: 'What kind of material it is.' });
const size = (description: string) =>
  quantity('length', 'm', description, { min: 0.01, max: 1000 });

const mixing = z
  .strictObject({
    catalyst: partCode('Its catalyst.'),
    share: percent('Catalyst that this shop uses, by mass of resin.', { min: 0, max: 0.1 }),
    gel: z
      .array(
        z.strictObject({
          celsius,
          minutes: decimal('Minutes to gel.', { min: 0.1, max: 2000 }),
        }),
      )
      .min(1)
      .meta({ description: 'Gel time of a cup at that share, from the maker’s data sheet.' }),
    largestBatch: quantity('mass', 'kg', 'Most in one bucket, against its heat.', {
      min: 0.01,
      max: 200,
    }),
    aMinute: quantity('mass', 'kg', 'Used up in a minute by the team.', { min: 0.001, max: 50 }),
    batches: z
      .array(quantity('mass', 'kg', 'A batch that the shop mixes.', { min: 0.01, max: 200 }))
      .min(1)
      .meta({ description: 'Batch sizes for the mixing table.' }),
  })
  .meta({ description: 'How this shop mixes it.' });

const coat = z.strictObject({
  kind: kind('coat'),
  part,
  mass: quantity('areal mass', 'kg/m2', 'What is put on.', { min: 0.01, max: 5 }),
  mixing: mixing.optional(),
});

const fraction = (description: string) => percent(description, { min: 0.1, max: 0.8 });

const fabric = z.strictObject({
  kind: kind('fabric'),
  part,
  fibre: quantity('areal mass', 'kg/m2', 'Dry {fibre}.', { min: 0.01, max: 5 }),
  architecture: z.enum(ARCHITECTURES).default('multiaxial').meta({
    description: 'How its {fibre} lies: the yard’s table of {fibre} by process goes by it.',
  }),
  share: fraction(
    '{Fibre} by mass of the cured layer, by whatever process. Left out: the yard’s table.',
  ).optional(),
  shares: z
    .strictObject({
      hand: fraction('Laid by hand.').optional(),
      infusion: fraction('Infused.').optional(),
    })
    .optional()
    .meta({ description: 'The same by process; goes before share.' }),
  wetWith: partCode(
    'Its resin in an infused lay-up: it is laid by hand first. Left out: the infused one.',
  ).optional(),
  roll: z
    .strictObject({ width: size('Width of the roll.'), length: size('Length of the roll.') })
    .optional()
    .meta({ description: 'The roll it comes on; without it no cut list is made.' }),
});

const core = z.strictObject({
  kind: kind('core'),
  part,
  thickness: quantity('length', 'm', 'Thickness.', { min: 0.001, max: 0.2 }),
  density: quantity('density', 'kg/m3', 'Density.', { min: 20, max: 1000 }),
  uptake: quantity('areal mass', 'kg/m2', 'Resin that one face drinks.', { min: 0, max: 3 }),
  sheet: z
    .strictObject({ width: size('Width of a sheet.'), length: size('Length of a sheet.') })
    .optional()
    .meta({ description: 'The sheet it comes in.' }),
  strength: z
    .strictObject({
      shear: quantity('pressure', 'MPa', 'Shear strength.', { min: 1e4, max: 1e8 }),
      shearModulus: quantity('pressure', 'MPa', 'Shear modulus.', { min: 1e5, max: 1e10 }),
      compressiveModulus: quantity('pressure', 'MPa', 'Modulus in compression.', {
        min: 1e5,
        max: 1e10,
      }),
    })
    .optional()
    .meta({ description: 'From the maker’s data sheet.' }),
});

const areal = (description: string) =>
  quantity('areal mass', 'kg/m2', description, { min: 0, max: 60 }).prefault('0 kg/m2');

const ready = z.strictObject({
  kind: kind('ready-made'),
  part,
  thickness: quantity('length', 'm', 'Thickness.', { min: 0.0005, max: 0.2 }),
  covers: quantity('area', 'm2', 'Area that one unit of its price list makes.', {
    min: 0.001,
    max: 100,
  }).prefault('1 m2'),
  fibre: areal('{Fibre} in it.'),
  resin: areal('Resin in it, with fillers.'),
  gelcoat: areal('Gelcoat on it.'),
  core: areal('Core in it.'),
});

const resin = z.strictObject({
  kind: kind('resin'),
  part,
  viscosity: z
    .array(
      z.strictObject({
        celsius,
        value: quantity('viscosity', 'Pa.s', 'Viscosity.', { min: 0.001, max: 100 }),
      }),
    )
    .default([])
    .meta({ description: 'From the maker’s data sheet; needed of a resin that is infused.' }),
  mixing: mixing.optional(),
});

const catalyst = z.strictObject({
  kind: kind('catalyst'),
  part,
  least: percent('Least that its maker allows, by mass of resin.', { min: 0, max: 0.1 }),
  most: percent('Most that its maker allows.', { min: 0, max: 0.1 }),
  density: quantity('density', 'kg/m3', 'Density.', { min: 500, max: 3000 }),
});

const material = z
  .discriminatedUnion('kind', [coat, fabric, core, ready, resin, catalyst])
  .meta({ description: 'What a laminate is made of, with its maker’s data.' });

export const materialFileSchema = z
  .strictObject({
    materials: z.array(material).min(1).meta({ description: 'One entry a part.' }),
  })
  .meta({
    title: 'Materials',
    description: 'Facts of fabrics, cores, coats, resins and catalysts beside their prices.',
  });

const stocked = z.strictObject({
  part,
  quantity: decimal('On the shelf, in the part’s unit.', { min: 0, max: 100_000 }),
  note: text('Where it is, or what is wrong with it.').optional(),
});

export const stockFileSchema = z
  .strictObject({
    counted: date('Day on which the shelf was counted.'),
    stock: z.array(stocked).meta({ description: 'One entry a part.' }),
  })
  .meta({ title: 'Stock', description: 'What the shop holds already.' });

export type Material = z.output<typeof material>;
export type MaterialKind = Material['kind'];
export type MaterialOf<Kind extends MaterialKind> = Extract<Material, { kind: Kind }>;
export type Mixing = z.output<typeof mixing>;
export type StockFile = z.output<typeof stockFileSchema>;
