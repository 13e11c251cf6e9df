import {
  type HullSection,
  type Layer,
  type Panel,
  stripArea,
  transomArea,
} from '../laminate/index.ts';
import type { Build } from '../resolve/index.ts';
import type { Hull, Material, MaterialKind, MaterialOf } from '../schema/index.ts';
import { decimalToNumber, metres, type SquareMetres, squareMetres } from '../units/index.ts';

type Laminate = NonNullable<Hull['laminate']>;

/** A panel of the hull file with its area and layers; `missing` are codes without an entry in the materials. */
export interface ResolvedPanel extends Panel {
  readonly missing: readonly string[];
}

/** The panels of a hull's lay-up, their layers named by part code. */
export function panelsOf(build: Build, laminate: Laminate): readonly ResolvedPanel[] {
  return laminate.panels.map((panel) => {
    const resolved = panel.layers.map((part) => ({ part, layer: layerOf(build, part) }));
    return {
      name: panel.name,
      area: squareMetres(areaOf(build.hull, panel) * decimalToNumber(panel.share)),
      layers: resolved.flatMap(({ layer }) => layer ?? []),
      missing: resolved.filter(({ layer }) => !layer).map(({ part }) => part),
    };
  });
}

/** The part of a resin that wets a layer; undefined for a coat. */
export function resinOf(build: Build, layer: Layer, infused: string | undefined) {
  if (layer.kind === 'gelcoat') return undefined;
  return materialOf(build, layer.name, 'fabric')?.wetWith ?? infused;
}

/** The facts of a part when it is of a kind. */
export function materialOf<Kind extends MaterialKind>(
  { materials }: Pick<Build, 'materials'>,
  part: string,
  kind: Kind,
): MaterialOf<Kind> | undefined {
  const found = materials.get(part);
  return found && isOf(found, kind) ? found : undefined;
}

const isOf = <Kind extends MaterialKind>(
  material: Material,
  kind: Kind,
): material is MaterialOf<Kind> => material.kind === kind;

function areaOf({ lines }: Hull, { strip, transom, area }: Laminate['panels'][number]): number {
  const sections: readonly HullSection[] = lines;
  if (strip) return stripArea(sections, strip[0], strip[1]);
  if (transom === true) return transomArea(sections);
  return area ?? 0;
}

/** The greatest breadth of the hull at one of the points of its lines, m. */
export function breadthAt({ lines }: Hull, point: number): number {
  return 2 * Math.max(...lines.map(({ points }) => points[point]?.[0] ?? 0));
}

function layerOf({ materials }: Build, part: string): Layer | undefined {
  const facts = materials.get(part);
  switch (facts?.kind) {
    case 'coat':
      return { kind: 'gelcoat', name: part, massPerArea: facts.mass };
    case 'fabric':
      return {
        kind: 'fabric',
        name: part,
        fibrePerArea: facts.fibre,
        fibreFraction: decimalToNumber(facts.share),
      };
    case 'core':
      return {
        kind: 'core',
        name: part,
        thickness: facts.thickness,
        density: facts.density,
        uptakePerFace: facts.uptake,
        ...(facts.strength && {
          strength: {
            shearStrength: facts.strength.shear,
            shearModulus: facts.strength.shearModulus,
            compressiveModulus: facts.strength.compressiveModulus,
          },
        }),
      };
    case 'resin':
    case 'catalyst':
    case undefined:
      return undefined;
  }
}

/** Area of a piece of goods, or undefined when its sides are not known. */
export function sheetArea(
  size: { readonly width: number; readonly length: number } | undefined,
): SquareMetres | undefined {
  return size && squareMetres(metres(size.width) * size.length);
}

/** Area of the shell under the bag: its panels without laps, bands and tapes, which lie over others. */
export function baggedArea({ panels: written }: Laminate, panels: readonly Panel[]): SquareMetres {
  return squareMetres(
    panels.reduce(
      (sum, { area }, index) => sum + (written[index]?.area === undefined ? area : 0),
      0,
    ),
  );
}
