// Invented for tests: no such boat exists.
import type { DrawnItem, HullShape } from '../../src/draw/index.ts';

/** A small chined hull, closed at the stem ahead of her last station. */
export const COOT: HullShape = {
  name: 'Coot 400',
  length: 4,
  lines: [
    {
      x: 0,
      points: [
        [0, 0],
        [0.7, 0.15],
        [0.8, 0.55],
      ],
    },
    {
      x: 1,
      points: [
        [0, 0],
        [0.72, 0.17],
        [0.85, 0.57],
      ],
    },
    {
      x: 2,
      points: [
        [0, 0],
        [0.68, 0.22],
        [0.84, 0.61],
      ],
    },
    {
      x: 3,
      points: [
        [0, 0.05],
        [0.45, 0.32],
        [0.64, 0.68],
      ],
    },
    {
      x: 3.8,
      points: [
        [0, 0.45],
        [0.08, 0.52],
        [0.17, 0.77],
      ],
    },
  ],
};

/** An item of that number at a place, m. */
export const itemAt = (number: number, x: number, y: number, z: number): DrawnItem => ({
  key: `option:${number}`,
  number: String(number),
  name: `Thing ${number}`,
  at: { x, y, z },
});
