import { type Layer, type Panel, stripArea, transomArea } from '../../laminate/index.ts';
import type { Build, BuildItem } from '../../resolve/index.ts';
import type { Hull, LayUpProcess, Material, MaterialKind, MaterialOf } from '../../schema/index.ts';
import {
  decimalToNumber,
  type Metres,
  type SquareMetres,
  squareMetres,
  type Station,
} from '../../units/index.ts';

type Laminate = NonNullable<Hull['laminate']>;

/** A panel of the hull file with its area and layers; `missing` are codes without an entry in the materials. */
export interface ResolvedPanel extends Panel {
  readonly missing: readonly string[];
}

/** How a lay-up is wetted, and with what. */
interface Wetting {
  readonly process: LayUpProcess;
  readonly resin?: string;
}

/** A lay-up with its panels and the item whose list of parts it is made from. */
export interface LaidItem extends Wetting {
  readonly item: BuildItem | undefined;
  readonly panels: readonly ResolvedPanel[];
  readonly pieces: Laminate['pieces'];
  readonly overlap: Metres;
}

/** How the shell is wetted: infused when the hull says how. */
export function shellWetting({ infusion, resin }: Laminate): Wetting {
  const own = infusion?.resin ?? resin;
  return { process: infusion ? 'infusion' : 'hand', ...(own !== undefined && { resin: own }) };
}

/** The panels of the shell, their layers named by part code. */
export function panelsOf(build: Build, laminate: Laminate): readonly ResolvedPanel[] {
  const { process } = shellWetting(laminate);
  return laminate.panels.map((panel) => ({
    name: panel.name,
    area: squareMetres(areaOf(build.hull, panel) * decimalToNumber(panel.share)),
    ...layersOf(build, panel.layers, process),
  }));
}

/** Layers by part codes, and the codes of which nothing is known. */
export function layersOf(
  build: Build,
  parts: readonly string[],
  process: LayUpProcess,
): Pick<ResolvedPanel, 'layers' | 'missing'> {
  const resolved = parts.map((part) => ({ part, layer: layerOf(build, part, process) }));
  return {
    layers: resolved.flatMap(({ layer }) => layer ?? []),
    missing: resolved.filter(({ layer }) => !layer).map(({ part }) => part),
  };
}

/** The part of a resin that wets a layer; undefined for a coat and for what is bought laminated. */
export function resinOf(build: Build, layer: Layer, { process, resin }: Wetting) {
  if (layer.kind === 'gelcoat' || layer.kind === 'ready-made') return undefined;
  const own = materialOf(build, layer.name, 'fabric')?.wetWith;
  return process === 'hand' ? (resin ?? own) : (own ?? resin);
}

/**
 * Fibre by mass of a fabric: the material's for the process, its own for any, else the yard's table. What has a resin of
 * its own in an infused lay-up is laid by hand before the bag goes on.
 */
function fibreShare({ yard }: Build, facts: MaterialOf<'fabric'>, process: LayUpProcess): number {
  const by = facts.wetWith === undefined ? process : 'hand';
  const { share, shares, architecture } = facts;
  return decimalToNumber(shares?.[by] ?? share ?? yard.workshop.fibre[by][architecture]);
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
  const sections: readonly Station[] = lines;
  if (strip) return stripArea(sections, strip[0], strip[1]);
  if (transom === true) return transomArea(sections);
  return area ?? 0;
}

/** The greatest breadth of the hull at one of the points of its lines, m. */
export function breadthAt({ lines }: Hull, point: number): number {
  return 2 * Math.max(...lines.map(({ points }) => points[point]?.[0] ?? 0));
}

function layerOf(build: Build, part: string, process: LayUpProcess): Layer | undefined {
  const facts = build.materials.get(part);
  switch (facts?.kind) {
    case 'coat':
      return { kind: 'gelcoat', name: part, massPerArea: facts.mass };
    case 'fabric':
      return {
        kind: 'fabric',
        name: part,
        fibrePerArea: facts.fibre,
        fibreFraction: fibreShare(build, facts, process),
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
    case 'ready-made':
      return {
        kind: 'ready-made',
        name: part,
        thickness: facts.thickness,
        fibrePerArea: facts.fibre,
        resinPerArea: facts.resin,
        gelcoatPerArea: facts.gelcoat,
        corePerArea: facts.core,
      };
    case 'resin':
    case 'catalyst':
    case undefined:
      return undefined;
  }
}

/** Area of a sheet. */
export function sheetArea(size: { readonly width: Metres; readonly length: Metres }): SquareMetres {
  return squareMetres(size.width * size.length);
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
