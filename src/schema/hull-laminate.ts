import { z } from 'zod';
import { count, decimal, partCode, percent, quantity, text } from './fields.ts';

const length = (description: string, min: number, max: number) =>
  quantity('length', 'm', description, { min, max });

const area = quantity('area', 'm2', 'Area, where the lines do not tell it.', {
  min: 0.01,
  max: 100,
});

const panel = z
  .strictObject({
    name: text('What the shop calls this area.'),
    strip: z
      .tuple([
        count('Lower point of the lines, 0 at the keel.', { min: 0, max: 20 }),
        count('Upper point of the lines.', { min: 1, max: 21 }),
      ])
      .optional()
      .meta({ description: 'Both sides of the shell between two points that all lines have.' }),
    transom: z.literal(true).optional().meta({
      description: 'true: the transom, from the aftermost section.',
    }),
    area: area.optional(),
    share: percent('Share of that area: a strip may be cored in part.').prefault('100%'),
    layers: z
      .array(partCode('A material of materials.yaml.'))
      .min(1)
      .meta({ description: 'Materials from the {mould} inwards.' }),
  })
  .refine(
    ({ strip, transom, area: given }) =>
      [strip, transom, given].filter((one) => one !== undefined).length === 1,
    'one of strip:, transom: and area:',
  )
  .meta({ description: 'One area of the shell with one lay-up.' });

export const piece = z
  .strictObject({
    name: text('What is written on the piece.'),
    length: length('Along the roll.', 0.05, 30),
    width: length('Across the roll.', 0.05, 10),
    count: count('How many of each layer.', { min: 1, max: 100 }).default(1),
    of: z.array(partCode('A fabric; named twice, it is cut twice.')).min(1).meta({
      description: 'Fabrics that the piece is cut from.',
    }),
  })
  .meta({ description: 'A piece to cut, before it is trimmed in the {mould}.' });

const bottom = z.strictObject({
  panel: text('Name of the panel whose lay-up is held against bottom pressure.'),
  short: length('Short side between stiffeners.', 0.05, 3),
  long: length('Long side between stiffeners.', 0.05, 6),
  forward: length('Middle of it, forward of the aft end of the waterline.', 0, 15),
  waterline: length('Length of the waterline, loaded.', 1, 15),
  speed: quantity('speed', 'kn', 'Fastest speed that the lay-up is meant for.', {
    min: 1,
    max: 30,
  }),
  category: z.enum(['A', 'B', 'C', 'D']).default('C').meta({ description: 'Design category.' }),
});

const infusion = z.strictObject({
  resin: partCode('The infused resin; it wets every layer that names no other.'),
  permeability: decimal('Of flow mesh and stack together, along the mesh, in 1e-9 m2.', {
    min: 0.001,
    max: 1000,
  }),
  girth: length('Distance that resin must cover from one edge to the other.', 0.1, 20),
  feedLength: length('Length of one feed line.', 0.1, 30),
  feedLines: count('Feed lines that the shop lays; left out: as many as are needed.', {
    min: 1,
    max: 40,
  }).optional(),
  perimeter: length('Round the flange, where the bag is taped.', 0.5, 60),
  hose: length('Hose from resin to feed lines and from the bag to the pot.', 0, 100).prefault(
    '10 m',
  ),
  mesh: quantity('areal mass', 'kg/m2', 'Resin that stays in the flow mesh.', {
    min: 0,
    max: 3,
  }).prefault('0.4 kg/m2'),
});

/** Fields of a hull that the laminate is computed from. */
export const hullLaminate = {
  laminate: z
    .strictObject({
      panels: z.array(panel).min(1).meta({ description: 'Areas of the shell, each once.' }),
      pieces: z.array(piece).default([]).meta({ description: 'What is cut off the rolls.' }),
      overlap: length('Overlap of neighbouring strips of fabric.', 0, 0.5).prefault('50 mm'),
      bottom: bottom.optional().meta({
        description: 'The bottom panel that is screened against pressure; an estimate.',
      }),
      resin: partCode('Resin of a lay-up by hand.').optional(),
      infusion: infusion.optional().meta({ description: 'Left out: laid up by hand.' }),
    })
    .optional()
    .meta({ description: 'The lay-up of the shell; left out: nothing of it is computed.' }),
};
