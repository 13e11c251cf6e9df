import { z } from 'zod';
import { PROCESSES } from './fibre.ts';
import { coordinate, count, partCode, percent, quantity, text } from './fields.ts';
import { piece } from './hull-laminate.ts';
import { driver } from './shared.ts';

const length = (description: string, min: number, max: number) =>
  quantity('length', 'm', description, { min, max });

const flat = z
  .strictObject({
    height: coordinate(
      'depth',
      'Height above the baseline. Left out: that of the sheer.',
    ).optional(),
    from: coordinate('length', 'Aft end, forward of the transom.').prefault('0 % length'),
    to: coordinate('length', 'Forward end.'),
  })
  .meta({ description: 'A level floor or deck from side to side of the hull, from its lines.' });

const run = z
  .strictObject({
    length: length('Length of all of it.', 0.05, 500),
    width: length('Width.', 0.005, 5),
  })
  .meta({ description: 'A strip: tape along a joint, a stringer, a gunwale.' });

const panel = z
  .strictObject({
    name: text('What the shop calls this area.'),
    flat: flat.optional(),
    strip: z
      .tuple([
        count('Lower point of the lines, 0 at the keel.', { min: 0, max: 20 }),
        count('Upper point of the lines.', { min: 1, max: 21 }),
      ])
      .optional()
      .meta({ description: 'Both sides of the hull between two points that all lines have.' }),
    run: run.optional(),
    area: quantity('area', 'm2', 'Area, where the lines do not tell it.', {
      min: 0.001,
      max: 100,
    }).optional(),
    per: driver.optional(),
    share: percent('Share of that area.').prefault('100%'),
    layers: z
      .array(partCode('A material of materials.yaml.'))
      .min(1)
      .meta({ description: 'Materials from the outside inwards, as they are laid.' }),
  })
  .refine(
    ({ flat: level, strip, run: along, area }) =>
      [level, strip, along, area].filter((one) => one !== undefined).length === 1,
    'one of flat:, strip:, run: and area:',
  )
  .refine(
    ({ flat: level, strip, per }) => per === undefined || (!level && !strip),
    'per: goes with run: or area:',
  )
  .meta({ description: 'One area of the part with one lay-up.' });

/** The lay-up of what is built into the hull or added to it. */
export const partLaminate = z
  .strictObject({
    process: z.enum(PROCESSES).default('hand').meta({ description: 'How it is wetted.' }),
    resin: partCode(
      'Its resin; left out: it takes none beside what is bought laminated.',
    ).optional(),
    panels: z.array(panel).min(1).meta({ description: 'Its areas, each once.' }),
    pieces: z.array(piece).default([]).meta({ description: 'What is cut off the rolls.' }),
    overlap: length('Overlap of neighbouring strips of fabric.', 0, 0.5).prefault('50 mm'),
  })
  .meta({ description: 'Its lay-up, panel by panel; left out: nothing of it is computed.' });

export type PartLaminate = z.output<typeof partLaminate>;
