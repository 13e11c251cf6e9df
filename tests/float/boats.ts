import path from 'node:path';
import {
  buildHull,
  type BuiltHull,
  type FloatingBody,
  type HullForm,
  type HullLines,
  type Load,
  type Opening,
} from '../../src/float/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import {
  kilograms,
  kilogramsPerCubicMetre,
  metres,
  type Point3,
  radians,
} from '../../src/units/index.ts';

export const DEGREE = Math.PI / 180;

export const at = (x: number, y: number, z: number): Point3 => ({
  x: metres(x),
  y: metres(y),
  z: metres(z),
});
export const loadAt = (mass: number, x: number, y: number, z: number): Load => ({
  mass: kilograms(mass),
  centre: at(x, y, z),
});
export const plane = (level: number, trim = 0, heel = 0) => ({
  level: metres(level),
  trim: radians(trim),
  heel: radians(heel),
});

type Rows = readonly (readonly [x: number, points: readonly (readonly [number, number])[]])[];

export const linesOf = (rows: Rows, more: Partial<HullLines> = {}): HullLines => ({
  between: 'straight',
  stations: rows.map(([x, points]) => ({
    x: metres(x),
    points: points.map(([y, z]) => [metres(y), metres(z)] as const),
  })),
  ...more,
});

export function formOf({ form, problems }: BuiltHull): HullForm {
  if (!form) throw new Error(problems.map(({ kind }) => kind).join(', '));
  return form;
}

export const afloat = (hull: HullForm, water = 1025): FloatingBody => ({
  hull,
  flooded: [],
  water: kilogramsPerCubicMetre(water),
});

export const box = (length: number, beam: number, depth: number, from = 0): FloatingBody =>
  afloat(
    formOf(
      buildHull(
        linesOf(
          [0, 0.5, 1].map((share) => [
            from + share * length,
            [
              [0, 0],
              [beam / 2, 0],
              [beam / 2, depth],
            ],
          ]),
        ),
      ),
    ),
  );

export interface DemonstrationHull {
  readonly id: string;
  readonly lines: HullLines;
  readonly body: FloatingBody;
  readonly length: number;
  readonly beam: number;
  readonly depth: number;
  readonly transom: Opening;
  readonly shell: number;
  /** As declared, from elsewhere than the lines. */
  readonly volume: number;
}

const ROOT = path.join(import.meta.dirname, '../..');

/** The hulls of the demonstration catalogue. */
export const demonstrationHulls = (): readonly DemonstrationHull[] =>
  [...(readWorkspace(ROOT, { orders: () => false }).catalogue?.hulls.values() ?? [])].map(
    ({ value: { id, dimensions, lines, shell, structure, enclosedVolume } }) => {
      const given: HullLines = { between: 'curved', stations: lines, length: dimensions.length };
      return {
        id,
        lines: given,
        body: afloat(formOf(buildHull(given))),
        length: dimensions.length,
        beam: dimensions.beam,
        depth: dimensions.depth,
        transom: { name: 'transom cut-out', at: at(0, 0, dimensions.transomHeight) },
        shell: shell.mass + structure.mass,
        volume: enclosedVolume ?? Number.NaN,
      };
    },
  );
