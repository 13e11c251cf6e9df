import type { Aboard, MassItem } from '../../src/mass/index.ts';
import { kilograms, metres, type Point3 } from '../../src/units/index.ts';

export const at = (x: number, y: number, z: number): Point3 => ({
  x: metres(x),
  y: metres(y),
  z: metres(z),
});

export const item = (kind: MassItem['kind'], mass: number, place: Point3): MassItem => ({
  group: kind,
  kind,
  mass: kilograms(mass),
  at: place,
});

/** Invented: 140 kg fitted, an outboard and a trailer. */
export const BOAT = [
  item('shell', 80, at(2, 0, 0.3)),
  item('structure', 40, at(2, 0, 0.4)),
  item('option', 20, at(3, 0.2, 0.5)),
  item('outboard', 60, at(-0.25, 0, 0.6)),
  item('trailer', 200, at(2, 0, 0)),
];

/** Two people, one of them on the boat's one seat, and 18 kg of fuel. */
export const ABOARD: Aboard = {
  fluids: [
    {
      name: 'Fuel',
      kind: 'fuel',
      mass: kilograms(18),
      capacity: kilograms(18),
      at: at(0.8, 0, 0.2),
    },
  ],
  people: {
    count: 2,
    mass: kilograms(80),
    seats: [at(1.5, 0.3, 0.5)],
    beyond: { length: metres(4), height: metres(0.6) },
  },
  gear: { mass: kilograms(10), at: at(1.8, 0, 0.2) },
  cockpit: { from: metres(0.5), to: metres(2.5), halfBreadth: metres(0.7), height: metres(0.6) },
  rating: { people: 3, load: kilograms(400) },
  trial: { people: 1, fluidShare: 0.5 },
  growth: { share: 0, rise: metres(0) },
};
