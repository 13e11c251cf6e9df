import fc from 'fast-check';
import { buildHull, type FloatingBody, type HullLines, type Load } from '../../src/float/index.ts';
import { kilograms, metres, SEA_WATER_DENSITY } from '../../src/units/index.ts';

/** A boat as it could be drawn, and how it is loaded. */
export interface Generated {
  readonly body: FloatingBody;
  readonly load: Load;
  /** Sheer at its lowest, m. */
  readonly depth: number;
  readonly length: number;
  readonly beam: number;
}

const SHAPE = fc.record({
  length: fc.double({ min: 2.2, max: 7.2, noNaN: true }),
  slender: fc.double({ min: 0.3, max: 0.48, noNaN: true }),
  depth: fc.double({ min: 0.28, max: 0.5, noNaN: true }),
  deadrise: fc.double({ min: 0, max: 26, noNaN: true }),
  stations: fc.integer({ min: 3, max: 40 }),
  points: fc.integer({ min: 3, max: 9 }),
  round: fc.boolean(),
  between: fc.constantFrom('curved' as const, 'straight' as const),
  stem: fc.boolean(),
  fullness: fc.double({ min: 1.2, max: 4, noNaN: true }),
  sheerRise: fc.double({ min: 0, max: 0.35, noNaN: true }),
  chine: fc.double({ min: 0.35, max: 0.7, noNaN: true }),
});
const LOADING = fc.record({
  share: fc.double({ min: 0.03, max: 0.7, noNaN: true }),
  along: fc.double({ min: 0.2, max: 0.65, noNaN: true }),
  aside: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
  up: fc.double({ min: 0.3, max: 1.3, noNaN: true }),
});
type Shape = typeof SHAPE extends fc.Arbitrary<infer Of> ? Of : never;

/** Hulls from a tender to 7 m, hard and round, coarse and fine, and loads light and heavy, high and to one side. */
export const GENERATED: fc.Arbitrary<Generated> = fc
  .record({ shape: SHAPE, loading: LOADING })
  .map(({ shape, loading }) => {
    const { form } = buildHull(linesOf(shape));
    if (!form) throw new Error('the generated lines are unsound');
    const { length, slender } = shape;
    const beam = length * slender;
    const depth = beam * shape.depth;
    const body = { hull: form, flooded: [], water: SEA_WATER_DENSITY };
    const mass = kilograms(length * beam * depth * 1025 * 0.6 * loading.share);
    const centre = {
      x: metres(loading.along * length),
      y: metres(loading.aside * beam),
      z: metres(loading.up * depth),
    };
    return { body, load: { mass, centre }, depth, length, beam };
  });

function linesOf(shape: Shape): HullLines {
  const { length, slender, stations, stem, between } = shape;
  const last = length * (stem ? 0.85 : 1);
  return {
    stations: Array.from({ length: stations }, (_, index) => {
      const x = (last * index) / (stations - 1);
      return { x: metres(x), points: sectionOf(shape, x / length, length * slender) };
    }),
    between,
    ...(stem && { length: metres(length) }),
  };
}

/** One half-section: narrower and higher towards the bow; a bottom of so much deadrise, and a side, or one bend. */
function sectionOf(
  shape: Shape,
  along: number,
  beam: number,
): HullLines['stations'][number]['points'] {
  const { deadrise, points, round, fullness, sheerRise, chine } = shape;
  const depth = beam * shape.depth;
  const half = (beam / 2) * Math.max(0, 1 - Math.max(0, (along - 0.3) / 0.7) ** fullness);
  const keel = depth * 0.5 * Math.max(0, (along - 0.6) / 0.4) ** 2;
  const sheer = depth * (1 + sheerRise * along * along);
  if (round) {
    return Array.from({ length: points }, (_, index) => {
      const turn = (Math.PI / 2) * (index / (points - 1));
      return [
        metres(half * Math.sin(turn) ** 0.8),
        metres(keel + (sheer - keel) * (1 - Math.cos(turn))),
      ] as const;
    });
  }
  const bottom = half * 0.9;
  const rise = Math.min(
    (sheer - keel) * chine,
    bottom * Math.tan(((deadrise + 25 * along) * Math.PI) / 180),
  );
  const corner = Math.max(1, Math.floor(points / 2));
  return Array.from({ length: points }, (_, index) => {
    if (index <= corner) {
      const share = index / corner;
      return [metres(bottom * share), metres(keel + rise * share)] as const;
    }
    const share = (index - corner) / (points - 1 - corner);
    return [
      metres(bottom + (half - bottom) * share),
      metres(keel + rise + (sheer - keel - rise) * share),
    ] as const;
  });
}
