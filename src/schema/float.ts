import { z } from 'zod';
import { coordinate, count, date, id, percent, quantity, text } from './fields.ts';
import { position, water } from './shared.ts';

const length = (description: string, min: number, max: number) =>
  quantity('length', 'm', description, { min, max });
const angle = (description: string, min: number, max: number) =>
  quantity('angle', 'deg', description, { min, max });
const density = (description: string) =>
  quantity('density', 'kg/m3', description, { min: 5, max: 12_000 });

const surface = z
  .strictObject({
    length: length('Along the boat.', 0, 5),
    breadth: length('Across the boat.', 0, 4),
    compartments: count('Equal compartments side by side.', { min: 1, max: 9 }).default(1),
  })
  .meta({ description: 'Surface of what is in a tank, as a box seen from above.' });

const namedPlace = z
  .strictObject({ name: text('What the place is called: “under the console”.'), at: position })
  .meta({ description: 'A place with a name.' });

/** A test on the water, of what its result says. */
const test = <Result extends z.ZodType>(result: Result) =>
  z
    .strictObject({
      result,
      how: text('What was done: “level trim, calm water, six people of 82 kg”.'),
      by: text('Who did it.'),
      date: date('When.'),
    })
    .optional()
    .meta({ description: 'A test on the water.' });

/** How a hull floats: what beside its lines the figures afloat need. */
export const hullFloat = {
  water: water.optional().meta({
    description: 'Water that the hull is built for. Left out: as the yard file says.',
  }),
  linesBetween: z.enum(['curved', 'straight']).default('curved').meta({
    description: 'How the lines run from one cross-section to the next.',
  }),
  bow: z
    .array(z.tuple([length('Forward of the transom.', 0, 15), length('Height.', -1, 4)]))
    .min(2)
    .optional()
    .meta({
      description:
        'The stem from the keel up, as pairs of distance and height. Left out: straight from the last section to the length.',
    }),
  enclosedVolume: quantity(
    'volume',
    'm3',
    'Volume that the {moulding} encloses up to the sheer, transom and stem among it, from elsewhere than the lines here: the designer’s, or measured. Left out: the lines are not held against one.',
    { min: 0.05, max: 60 },
  ).optional(),
  openings: z.array(namedPlace).default([]).meta({
    description:
      'Where water comes aboard first, beside the sheer. Left out: the middle of the transom where the outboard clamps on.',
  }),
  seats: z.array(position).default([]).meta({
    description:
      'Where people sit, the helm first: the middle of each one’s mass. Those beyond the list sit on the {centreline} between 30 and 60 % of the length, at the height of the sheer.',
  }),
  tillerSeat: position.prefault({ x: '14 % length', y: '14 % beam', z: '90 % depth' }).meta({
    description: 'Where whoever steers by tiller sits, instead of the first of the seats.',
  }),
  cockpit: z
    .strictObject({
      from: coordinate('length', 'Its aft end, forward of the transom.'),
      to: coordinate('length', 'Its forward end.'),
      halfBreadth: coordinate('beam', 'From the {centreline} to the edge that people can get to.'),
      seatHeight: coordinate('depth', 'The middle of who sits there, up from the baseline.'),
    })
    .optional()
    .meta({
      description:
        'Where people may be. Left out: all the room that the sheer leaves, from the transom to where it has narrowed by a quarter.',
    }),
  tested: z
    .strictObject({
      people: test(count('People that it carried, seated.', { min: 1, max: 40 })),
      load: test(
        quantity('mass', 'kg', 'Load that it carried, in the sense of the ratings.', {
          min: 0,
          max: 5000,
        }),
      ),
      side: test(count('People at one side, the others seated.', { min: 0, max: 40 })),
    })
    .prefault({})
    .meta({
      description: 'What was tried on the water: it stands instead of what would be computed.',
    }),
  gearAt: position.prefault({ x: '45 % length', z: '40 % depth' }).meta({
    description: 'The middle of the loose gear.',
  }),
  trimBand: z
    .strictObject({
      least: angle('Least; above zero is by the stern.', -0.3, 0.3).prefault('0 deg'),
      most: angle('Most.', -0.3, 0.3).prefault('2 deg'),
    })
    .prefault({})
    .meta({ description: 'Trim at rest, fully loaded, that the hull likes.' }),
  tankSurface: surface.optional().meta({
    description: 'Surface of the fuel; it moves when the tank is not full. Left out: none counted.',
  }),
  foam: z
    .strictObject({
      volume: quantity('volume', 'L', 'Closed-cell foam that stays under water when swamped.', {
        min: 0,
        max: 10,
      }),
      density: density('Of the foam.').prefault('32 kg/m3'),
    })
    .optional()
    .meta({ description: 'Buoyancy foam. Left out: flotation when swamped is not computed.' }),
};

/** What an option does to how it floats. */
export const optionFloat = {
  tank: z
    .strictObject({
      from: length('Aft end, forward of the transom.', 0, 15),
      to: length('Forward end.', 0, 15),
      top: length('Height of its flat top above the baseline.', 0, 2),
      halfBreadth: length(
        'Half its breadth, where it does not reach the sides.',
        0.02,
        3,
      ).optional(),
      permeability: percent('Share of it that water can fill.', { min: 0.1, max: 1 }).prefault(
        '95%',
      ),
      outlet: z
        .strictObject({
          area: quantity('area', 'cm2', 'Open area.', { min: 0, max: 1 }),
          height: length('Height of its middle above the baseline.', -1, 2),
        })
        .meta({ description: 'Where it fills and drains.' }),
      vent: quantity('area', 'cm2', 'Open area of the air vent. Left out: open above.', {
        min: 0,
        max: 1,
      }).optional(),
      runningTrim: angle('Trim under way with which it drains.', 0, 0.2).prefault('4 deg'),
    })
    .optional()
    .meta({
      description:
        'A ballast tank on the bottom of the hull, open to the sea at rest and drained under way.',
    }),
  fuelTank: quantity(
    'volume',
    'L',
    'Fuel that it holds when full: the fuel of an order lies at its place, and not where the hull file says. Left out: no fuel tank.',
    { min: 0.001, max: 5 },
  ).optional(),
  liveWell: z
    .strictObject({
      mass: quantity('mass', 'kg', 'Mass of the water in it when full.', { min: 0, max: 1000 }),
      surface: surface.optional(),
    })
    .optional()
    .meta({ description: 'Water that it holds, at the option’s own place.' }),
  places: z.array(namedPlace).default([]).meta({
    description:
      'Other places that it may go to; the figures say which brings the trim nearest to what the hull likes.',
  }),
  size: z
    .strictObject({
      length: length('Along the boat.', 0.01, 8),
      breadth: length('Across the boat.', 0.01, 4),
      height: length('Up.', 0.01, 3),
    })
    .optional()
    .meta({
      description:
        'Room that one takes up, with its middle at the item’s place; several stand side by side across the boat. Nothing is proposed for a place where something of known size stands. Left out: it stands in nobody’s way.',
    }),
  within: z.array(id('An option.', 'options')).default([]).meta({
    description:
      'Options that it may stand in, as an anchor in its locker. Where two things of known size stand in one another otherwise, the order is told.',
  }),
  density: density(
    'Of the material, for when the boat is swamped; lighter than water is a credit.',
  ).prefault('1500 kg/m3'),
  submerged: z.boolean().default(true).meta({
    description: 'false: it stays above the water when the boat is swamped.',
  }),
};

/** The water and the screens of a yard. */
export const yardFloat = {
  water: water.default('both').meta({
    description:
      'Water that the boats are used in, where neither order nor hull says: fresh, sea, or both, the worse of the two for each figure. Left out: both.',
  }),
  gearDensity: density(
    'Of loose gear, for when the boat is swamped. Left out: such that it weighs a quarter under water, as the US Coast Guard Boatbuilder’s Handbook counts it.',
  ).prefault('1333 kg/m3'),
  massGrowth: z
    .strictObject({
      share: percent('Share of the completed boat’s mass, without engine, fuel and people.', {
        min: 0,
        max: 0.5,
      }).prefault('0%'),
      rise: length('How far the boat’s {centre} of mass rises with it.', 0, 0.5).prefault('0 mm'),
    })
    .prefault({})
    .meta({
      description:
        'What boats put on over their lives beyond the contingency: paint, repairs, water in fittings, gear that stays aboard. Left out: none.',
    }),
  offsetLoad: z
    .strictObject({
      basis: text('Where the limits come from: a method and its edition, or the shop’s own.'),
      heel: angle('Most heel.', 0.01, 0.8).optional(),
      freeboard: length('Least freeboard that is left.', 0, 1).optional(),
    })
    .optional()
    .meta({
      description:
        'Limits that people to one side are held against. Left out: heel and freeboard are only said.',
    }),
  performanceTest: z
    .strictObject({
      people: count('People aboard.', { min: 1, max: 10 }).default(2),
      fluidShare: percent('How full the tanks are.').prefault('50%'),
    })
    .prefault({})
    .meta({ description: 'How the boat is loaded for a trial.' }),
};

/** What an order says of how it floats. */
export const orderFloat = {
  condition: z
    .strictObject({
      name: text('What it is, as printed: “six crates and two people”.'),
      masses: z
        .array(
          z.strictObject({
            name: text('What.'),
            mass: quantity('mass', 'kg', 'Of all of it.', { min: 0, max: 3000 }),
            at: position,
          }),
        )
        .meta({ description: 'Everything on top of boat, outboard and tanks: people too.' }),
      fluidShare: percent('How full the tanks are.').prefault('50%'),
      ballastFlooded: z.boolean().default(false).meta({
        description: 'true: the ballast tank is open to the sea.',
      }),
    })
    .optional()
    .meta({ description: 'One more condition that this order is figured in.' }),
};
