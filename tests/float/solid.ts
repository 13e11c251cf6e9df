import Module, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { heightAbove, type HullForm, type Space, type WaterPlane } from '../../src/float/index.ts';
import { metres } from '../../src/units/index.ts';

type Point = readonly [x: number, y: number, z: number];

/** A general geometry library, started once: what it says of a solid, our own sums are held against. */
export async function geometry(): Promise<ManifoldToplevel> {
  const library = await Module();
  library.setup();
  return library;
}

/** A form as a closed solid, transom and stem flat, the sheer closed across, its sides carried up by so much. */
export function solidOf({ Manifold, Mesh }: ManifoldToplevel, form: HullForm, up = 0): Manifold {
  const { ring } = form;
  const half = ring / 2;
  const rows = Array.from(form.xs, (x, row): readonly Point[] => {
    const side = Array.from({ length: half }, (_, index): Point => {
      const at = row * ring + index;
      return [x, form.y[at] ?? 0, form.z[at] ?? 0];
    });
    const [, y = 0, z = 0] = side.at(-1) ?? [];
    const all: readonly Point[] = up > 0 ? [...side, [x, y, z + up]] : side;
    return [
      ...all,
      ...all.toReversed().map(([at, across, height]): Point => [at, -across, height]),
    ];
  });
  const width = rows[0]?.length ?? 0;
  const corners: Point[] = rows.flat();
  const faces: number[] = [];
  const quad = (a: number, b: number, c: number, d: number): void => {
    faces.push(a, b, c, a, c, d);
  };
  /** Four faces about its middle: a twisted one then holds what the patch through its edges does, on both sides alike. */
  const patch = (...edge: readonly [number, number, number, number]): void => {
    const mean = (axis: 0 | 1 | 2): number =>
      edge.reduce((sum, corner) => sum + (corners[corner]?.[axis] ?? 0) / 4, 0);
    const middle = corners.push([mean(0), mean(1), mean(2)]) - 1;
    edge.forEach((from, index) => faces.push(from, edge[(index + 1) % 4] ?? from, middle));
  };
  rows.slice(1).forEach((_, row) => {
    for (let index = 0; index < width; index++) {
      const next = (index + 1) % width;
      const [here, there] = [row * width, (row + 1) * width];
      patch(here + index, here + next, there + next, there + index);
    }
  });
  // The ends in strips from side to side: their sections need not be convex.
  for (let index = 0; index + 1 < width / 2; index++) {
    const [low, high] = [width - 1 - index, width - 2 - index];
    const last = (rows.length - 1) * width;
    quad(index + 1, index, low, high);
    quad(last + index, last + index + 1, last + high, last + low);
  }
  const mesh = new Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(corners.flat()),
    triVerts: Uint32Array.from(faces),
  });
  mesh.merge();
  const solid = new Manifold(mesh);
  if (!(solid.volume() > 0)) throw new Error('the solid is inside out');
  return solid;
}

/** What of a solid lies under the water. */
export function under(solid: Manifold, plane: WaterPlane): Manifold {
  const height = (x: number, y: number, z: number): number =>
    heightAbove(plane, { x: metres(x), y: metres(y), z: metres(z) });
  const origin = height(0, 0, 0);
  const down = [
    origin - height(1, 0, 0),
    origin - height(0, 1, 0),
    origin - height(0, 0, 1),
  ] as const;
  return solid.trimByPlane([...down], origin);
}

/** Volume and its centre: tetrahedra from the origin to each face. */
export function volumeAndCentre(solid: Manifold): {
  readonly volume: number;
  readonly centre: Point;
} {
  const { vertProperties, triVerts, numProp } = solid.getMesh();
  const corner = (face: number, index: number): Point => {
    const at = (triVerts[face + index] ?? 0) * numProp;
    return [vertProperties[at] ?? 0, vertProperties[at + 1] ?? 0, vertProperties[at + 2] ?? 0];
  };
  let [volume, x, y, z] = [0, 0, 0, 0];
  for (let face = 0; face < triVerts.length; face += 3) {
    const [a, b, c] = [corner(face, 0), corner(face, 1), corner(face, 2)];
    const part =
      (a[0] * (b[1] * c[2] - b[2] * c[1]) -
        a[1] * (b[0] * c[2] - b[2] * c[0]) +
        a[2] * (b[0] * c[1] - b[1] * c[0])) /
      6;
    volume += part;
    x += (part * (a[0] + b[0] + c[0])) / 4;
    y += (part * (a[1] + b[1] + c[1])) / 4;
    z += (part * (a[2] + b[2] + c[2])) / 4;
  }
  return { volume, centre: [x / volume, y / volume, z / volume] };
}

/** The share of a box that lies outside a solid, 0 to 1. */
export function shareOutside(
  { Manifold }: ManifoldToplevel,
  solid: Manifold,
  { at, size }: Space,
): number {
  const box = Manifold.cube([size.length, size.breadth, size.height], true).translate([
    at.x,
    at.y,
    at.z,
  ]);
  const left = box.subtract(solid);
  const share = left.volume() / box.volume();
  box.delete();
  left.delete();
  return share;
}
