import { buildHull, type FloatingBody, type HullLines, type Load } from '../float/index.ts';
import { kilograms, metres, radians, SEA_WATER_DENSITY } from '../units/index.ts';

/** Half of a section as pairs of half-breadth and height, at a share from 0 to 1 of the length. */
type Section = (share: number) => readonly (readonly [number, number])[];

/** A body in sea water whose sections are given along its length, from x = `from`. */
export function shapeOf(
  length: number,
  stations: number,
  section: Section,
  between: HullLines['between'] = 'straight',
  from = 0,
): FloatingBody {
  const { form } = buildHull({
    between,
    stations: Array.from({ length: stations }, (_, index) => {
      const share = index / (stations - 1);
      const points = section(share).map(([y, z]) => [metres(y), metres(z)] as const);
      return { x: metres(from + share * length), points };
    }),
  });
  const none = { xs: new Float64Array(0), ring: 0, y: new Float64Array(0), z: new Float64Array(0) };
  return { hull: form ?? none, flooded: [], water: SEA_WATER_DENSITY };
}

/** The barge of the textbooks: 5 m long, 2 m wide, 0.8 m deep. */
export const BARGE = shapeOf(5, 3, () => [
  [0, 0],
  [1, 0],
  [1, 0.8],
]);

/** A wedge of constant deadrise, to a half-breadth. */
export const wedge = (length: number, halfBreadth: number, height: number): FloatingBody =>
  shapeOf(length, 3, () => [
    [0, 0],
    [halfBreadth, height],
  ]);

/** A circular cylinder lying along x, its section a polygon with corners on the circle. */
export const cylinder = (length: number, radius: number, corners: number): FloatingBody =>
  shapeOf(length, 3, () =>
    Array.from({ length: corners + 1 }, (_, index) => {
      const angle = (Math.PI * index) / corners;
      return [radius * Math.sin(angle), radius * (1 - Math.cos(angle))] as const;
    }),
  );

/** Wigley's parabolic hull, 5 m by 0.5 m by 0.3125 m, with as many stations as points below the water. */
export const wigley = (count: number, between: HullLines['between'] = 'straight'): FloatingBody =>
  shapeOf(
    5,
    count,
    (share) => {
      const breadth = 0.25 * (1 - (2 * share - 1) ** 2);
      const below = Array.from({ length: count }, (_, index) => {
        const depth = 1 - index / (count - 1);
        return [breadth * (1 - depth * depth), 0.3125 * (1 - depth)] as const;
      });
      return [...below, [breadth, 0.4]];
    },
    between,
    -2.5,
  );

/** A mass and the place of its centre. */
export const loadAt = (mass: number, x: number, y: number, z: number): Load => ({
  mass: kilograms(mass),
  centre: { x: metres(x), y: metres(y), z: metres(z) },
});

/** Water at a level on an upright boat. */
export const upright = (level: number) => ({
  level: metres(level),
  trim: radians(0),
  heel: radians(0),
});
