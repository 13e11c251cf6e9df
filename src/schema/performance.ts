import { z } from 'zod';
import { count, decimal, percent, quantity, text } from './fields.ts';

/** Methods that limits can be estimated by; src/limits has them. */
const RATING_METHODS = ['australian', 'iso', 'cfr-183'] as const;
/** Where a boat is towed: whose law is read; src/tow has them. */
const TOW_PLACES = ['AU', 'NZ', 'UK-EU', 'US'] as const;

const towPlace = z.enum(TOW_PLACES);
const mass = (description: string, max: number) =>
  quantity('mass', 'kg', description, { min: 0, max });
const length = (description: string, min: number, max: number) =>
  quantity('length', 'm', description, { min, max });
const efficiency = (description: string, usual: string) =>
  percent(description, { min: 0.2, max: 0.8 }).prefault(usual);

/** What the shop estimates speed, limits and towing with. */
export const yardPerformance = {
  drive: z
    .strictObject({
      efficiency: z
        .strictObject({
          low: efficiency('The least.', '45%'),
          likely: efficiency('What is likely.', '52%'),
          high: efficiency('The most.', '60%'),
        })
        .prefault({})
        .meta({
          description:
            'Share of an outboard’s power that moves the boat: propeller, leg and slip together.',
        }),
      slip: percent('Slip that propellers are pitched for.', { min: 0, max: 0.6 }).prefault('12%'),
      reserve: percent('Share of the fuel that is kept back. Left out: a third.').optional(),
      holding: z
        .strictObject({
          wind: quantity('speed', 'kn', 'Wind.', { min: 0, max: 25 }).prefault('15 kn'),
          current: quantity('speed', 'kn', 'Current from the same side.', {
            min: 0,
            max: 1.5,
          }).prefault('1 kn'),
        })
        .prefault({})
        .meta({ description: 'What a bow motor should hold the boat against.' }),
    })
    .prefault({})
    .meta({ description: 'What speed and fuel are estimated with.' }),
  limits: z
    .strictObject({
      methods: z.array(z.enum(RATING_METHODS)).min(1).optional().meta({
        description:
          'Methods to estimate people, load and power by, side by side. Left out: those of the region of the locale.',
      }),
      categories: z
        .array(z.enum(['C', 'D']))
        .default(['C', 'D'])
        .meta({ description: 'Design categories that boats are screened for; [] for none.' }),
    })
    .prefault({})
    .meta({ description: 'How limits are estimated, to stand beside the shop’s own ratings.' }),
  tow: z
    .strictObject({
      place: towPlace.optional().meta({
        description:
          'Whose rules for trailers are read. Left out: those of the region of the locale.',
      }),
    })
    .prefault({})
    .meta({ description: 'Where the shop’s boats are towed.' }),
};

/** Something that water or air drags on beside the bottom. */
const drag = (area: string) => ({
  area: quantity('area', 'm2', area, { min: 0, max: 20 }),
  coefficient: decimal('Its drag coefficient, on that area.', { min: 0, max: 2 }),
});

/** What a hull is taken for when speed and limits are estimated. */
export const hullPerformance = {
  performance: z
    .strictObject({
      chine: z.enum(['hard', 'round']).default('hard').meta({ description: 'Shape of the bilge.' }),
      hulls: z
        .enum(['one', 'more'])
        .default('one')
        .meta({ description: 'One hull, or a catamaran and the like.' }),
      crouch: z
        .enum(['runabout', 'fast runabout', 'race boat', 'three-point hydroplane'])
        .default('runabout')
        .meta({ description: 'Kind of hull for Crouch’s formula.' }),
      airDrag: z
        .strictObject({
          area: quantity(
            'area',
            'm2',
            'Frontal area that meets the wind of the boat’s own speed.',
            {
              min: 0,
              max: 20,
            },
          ).prefault('0.9 m2'),
          coefficient: decimal('Its drag coefficient.', { min: 0, max: 2 }).prefault('0.7'),
        })
        .prefault({})
        .meta({ description: 'Boat and people in the air, from ahead.' }),
      outboardDrag: z.strictObject(drag('What of its leg the water meets.')).optional().meta({
        description:
          'Drag of the outboard’s leg. Left out: the efficiency of the outboard has it in it.',
      }),
      appendages: z
        .array(
          z.strictObject({ name: text('What it is: a keel, a rail.'), ...drag('From ahead.') }),
        )
        .default([])
        .meta({ description: 'What else of the hull drags through the water.' }),
      leastFreeboard: length(
        'Height that the lowest opening must keep above the water when the boat is loaded. Left out: 0.25 m.',
        0.05,
        1.5,
      ).optional(),
      seats: count(
        'Places that people sit or stand at. Left out: the people the hull is rated for.',
        {
          min: 1,
          max: 40,
        },
      ).optional(),
    })
    .prefault({})
    .meta({ description: 'What speed and limits are estimated with.' }),
};

/** What propeller and fuel of an outboard are worked out from. */
export const outboardPerformance = {
  fullThrottle: z
    .tuple([count('Least.', { min: 1000, max: 9000 }), count('Most.', { min: 1000, max: 9000 })])
    .default([5000, 6000])
    .meta({ description: 'Engine speeds that its maker allows at full throttle, rev/min.' }),
  gearRatio: decimal('Turns of the engine for one of the propeller.', {
    min: 0.5,
    max: 5,
  }).prefault('2'),
  consumption: decimal('Fuel at full throttle, kg for a kilowatt-hour.', {
    min: 0.1,
    max: 1,
  }).prefault('0.32'),
};

/** What an option has to do with how the boat is steered, held and weighed down. */
export const optionPerformance = {
  helm: z
    .enum(['wheel', 'remote-control'])
    .optional()
    .meta({ description: 'What of the helm it is, if any.' }),
  bowMotor: z
    .strictObject({
      thrust: quantity('force', 'N', 'Thrust at full power, boat standing still.', {
        min: 10,
        max: 5000,
      }),
      voltage: quantity('voltage', 'V', 'Voltage that it runs on.', { min: 6, max: 96 }),
    })
    .optional()
    .meta({
      description: 'A motor that holds the bow; its current at full power stands in current:.',
    }),
  appendage: z
    .strictObject(drag('What the water meets of it at speed.'))
    .optional()
    .meta({ description: 'Its drag, if it stands in the water at speed: a scoop, a transducer.' }),
  holdingBattery: z
    .strictObject({
      energy: decimal('Energy of one battery when full, W·h.', { min: 10, max: 50_000 }),
      usable: percent('Share of it that is used.', { min: 0.05, max: 1 }),
    })
    .optional()
    .meta({ description: 'What it gives a bow motor.' }),
};

/** Where a trailer carries, and what its running gear bears. */
export const trailerPerformance = {
  axle: length('Axle, or the middle of its axles, aft of the ball.', 0.5, 12).optional(),
  centre: length('{Centre} of the empty trailer’s mass, aft of the ball.', 0.2, 12).optional(),
  winchPost: z
    .strictObject({
      from: length('Foremost, aft of the ball.', 0, 8),
      to: length('Aftmost, aft of the ball.', 0, 8),
    })
    .optional()
    .meta({ description: 'Where the winch post can stand.' }),
  axleRating: mass('What one axle may carry.', 5000).optional(),
  tyreRating: mass('What one {tyre} may carry.', 3000).optional(),
  brakedWheels: z
    .enum(['none', 'one axle', 'all wheels'])
    .optional()
    .meta({ description: 'Wheels with brakes. Left out: all of them, if it has brakes.' }),
  breakaway: z
    .boolean()
    .default(false)
    .meta({ description: 'true: its brakes come on when it breaks away.' }),
};

const vehicle = z
  .strictObject({
    name: text('The towing vehicle.').optional(),
    kerb: mass('{Kerb} mass.', 10_000).optional(),
    braked: mass('Most that it may tow with brakes.', 10_000),
    unbraked: mass('Most that it may tow without.', 10_000),
    onBall: mass('Most on its ball.', 1000),
    together: mass('Most that vehicle and trailer may weigh together.', 20_000).optional(),
    laden: mass('What the vehicle itself weighs as it tows.', 10_000).optional(),
    greatest: mass('Most that the vehicle itself may weigh (GVM).', 10_000).optional(),
  })
  .meta({ description: 'What the towing vehicle’s maker allows. Left out: not checked.' });

const roof = z
  .strictObject({
    load: mass('What the vehicle’s maker allows on the roof.', 500),
    rack: mass('Bars, cradle and straps.', 200),
    bars: mass('What the bars’ maker allows on them.', 500).optional(),
  })
  .meta({ description: 'The boat on a roof, without engine and fuel. Left out: not checked.' });

/** How the customer means to run and to tow it. */
export const orderPerformance = {
  cruise: quantity('speed', 'kn', 'Speed that range is wanted at. Left out: a usual one.', {
    min: 1,
    max: 40,
  }).optional(),
  tow: z
    .strictObject({
      longest: length(
        'Longest that boat and trailer may be, from the ball to the last thing behind it: a shed, a ferry. Left out: the road’s limit only.',
        2,
        20,
      ).optional(),
      place: towPlace
        .optional()
        .meta({ description: 'Whose rules are read. Left out: as in the yard file.' }),
      winchPost: length(
        'Where the winch post stands, aft of the ball. Left out: where the usual share is on the ball.',
        0,
        8,
      ).optional(),
      vehicle: vehicle.optional(),
      roof: roof.optional(),
    })
    .optional()
    .meta({ description: 'How the boat is towed or carried.' }),
};
