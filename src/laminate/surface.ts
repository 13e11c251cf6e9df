import { areaUnder } from '../maths/index.ts';
import { type SquareMetres, squareMetres, type Station } from '../units/index.ts';

type Point = readonly [number, number, number];

/**
 * Area of one strip of the shell, both sides of the boat: between two of the points that every section has.
 *
 * @param from - number of the lower point, from 0 at the keel; @param to - of the upper one
 * @returns m2; sections that lack a point are left out
 * @validity straight lines between sections: a hull with few sections measures a little small
 * @source derived: each four-sided piece as two triangles, the mean of the two ways to halve it
 */
export function stripArea(sections: readonly Station[], from: number, to: number): SquareMetres {
  const along = sections.toSorted((a, b) => a.x - b.x);
  let area = 0;
  for (let band = from; band < to; band += 1) {
    const edges = along.flatMap((section) => {
      const low = pointOf(section, band);
      const high = pointOf(section, band + 1);
      return low && high ? [{ low, high }] : [];
    });
    for (const [index, fore] of edges.entries()) {
      const aft = edges[index - 1];
      if (aft) area += pieceArea(aft.low, fore.low, fore.high, aft.high);
    }
  }
  return squareMetres(2 * area);
}

/**
 * Area of the transom: the aftermost section, filled, both sides.
 *
 * @returns m2; 0 without sections
 * @source derived: trapezia between the heights of the points
 */
export function transomArea(sections: readonly Station[]): SquareMetres {
  const aft = sections.toSorted((a, b) => a.x - b.x)[0];
  const points = aft?.points ?? [];
  return squareMetres(2 * areaUnder(points.map(([breadth, height]) => [height, breadth])));
}

function pointOf({ x, points }: Station, index: number): Point | undefined {
  const point = points[index];
  return point && [x, point[0], point[1]];
}

function pieceArea(a: Point, b: Point, c: Point, d: Point): number {
  const oneWay = triangle(a, b, c) + triangle(a, c, d);
  const otherWay = triangle(a, b, d) + triangle(b, c, d);
  return (oneWay + otherWay) / 2;
}

function triangle(a: Point, b: Point, c: Point): number {
  const u = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
  const v = [c[0] - a[0], c[1] - a[1], c[2] - a[2]] as const;
  return (
    Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) / 2
  );
}
