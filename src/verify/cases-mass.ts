import { centreOf, weighBoat } from '../mass/index.ts';
import { trailerLoad } from '../tow/index.ts';
import { kilograms, metres, type Point3 } from '../units/index.ts';
import { casesIn } from './case-in.ts';
import type { PublishedCase } from './types.ts';

const MOMENTS = 'derived: first moments, worked by hand';
const ISO_14946 = 'ISO 14946:2021 cl. 4 to 6, as its public preview gives them: 75 kg a person';
const at = (x: number, y: number, z: number): Point3 => ({
  x: metres(x),
  y: metres(y),
  z: metres(z),
});
const point = (mass: number, x: number, y: number, z: number) => ({
  mass: kilograms(mass),
  at: at(x, y, z),
});

const TWO = [point(300, 2, 0, 0.4), point(100, 0, 0.2, 0.8)];

const weighed = (contingency: number, people: number, fuel: number) =>
  weighBoat({
    items: [
      { group: 'Hull', kind: 'shell', ...point(80, 2, 0, 0.3) },
      { group: 'Hull', kind: 'structure', ...point(40, 2.5, 0, 0.4) },
      { group: 'Outboard', kind: 'outboard', ...point(60, -0.25, 0, 0.6) },
      { group: 'Trailer', kind: 'trailer', ...point(200, 2, 0, 0) },
    ],
    contingency,
    aboard: {
      fluids: [
        { name: 'Fuel', kind: 'fuel', capacity: kilograms(fuel), ...point(fuel, 1, 0, 0.2) },
      ],
      people: {
        count: people,
        mass: kilograms(75),
        seats: [],
        beyond: { length: metres(4), height: metres(0.6) },
      },
      gear: point(12, 1.8, 0, 0.2),
      cockpit: { from: metres(0), to: metres(3), halfBreadth: metres(0.7), height: metres(0.6) },
      rating: { people, load: kilograms(500) },
      trial: { people: 2, fluidShare: 0.5 },
      growth: { share: 0, rise: metres(0) },
    },
  });

const mass = casesIn('mass');

/** Masses and centres against hand calculations. */
export const MASS_CASES: readonly PublishedCase[] = [
  ...mass(
    MOMENTS,
    [
      '300 kg at x = 2 m with 100 kg at x = 0: {centre} forward',
      1.5,
      'm',
      () => centreOf(TWO).centre.x,
    ],
    [
      'the same: {centre} to starboard of 100 kg at y = 0.2 m',
      0.05,
      'm',
      () => centreOf(TWO).centre.y,
    ],
    ['the same: {centre} above the baseline', 0.5, 'm', () => centreOf(TWO).centre.z],
    [
      '80 kg and 40 kg fitted, with 5 % contingency',
      126,
      'kg',
      () => weighed(0.05, 2, 0).completed.mass,
    ],
    ['with a 60 kg outboard and 37 kg of fuel', 223, 'kg', () => weighed(0.05, 2, 37).ready.mass],
  ),
  ...mass(ISO_14946, [
    '5 crew at 75 kg and 12 kg of gear each',
    435,
    'kg',
    () => weighed(0, 5, 0).load,
  ]),
  ...mass('derived: aggregate mass is tare and load', [
    'trailer of 200 kg rated 750 kg under a boat of 490 kg: what is left',
    60,
    'kg',
    () => trailerLoad({ boat: kilograms(490), tare: kilograms(200), rating: kilograms(750) }).left,
  ]),
];
