import type { Kilograms, Metres, SquareMetres } from '../units/index.ts';

export type { NotComputed } from '../units/index.ts';

/** Sprayed or brushed onto the mould before the glass. */
export interface GelcoatLayer {
  readonly kind: 'gelcoat';
  readonly name: string;
  readonly massPerArea: number;
}

/** A layer of glass in resin. */
export interface FabricLayer {
  readonly kind: 'fabric';
  readonly name: string;
  /** Dry fibre, kg/m2. */
  readonly fibrePerArea: number;
  /** Share of the layer's mass that is fibre: by MASS, not by volume. */
  readonly fibreFraction: number;
}

export interface CoreLayer {
  readonly kind: 'core';
  readonly name: string;
  readonly thickness: Metres;
  /** kg/m3 */
  readonly density: number;
  /** Resin that one face drinks, kg/m2. */
  readonly uptakePerFace: number;
  /** From the maker's data sheet, Pa; without them the core's shear and the skins' wrinkling are not computed. */
  readonly strength?: {
    readonly shearStrength: number;
    readonly shearModulus: number;
    readonly compressiveModulus: number;
  };
}

/** Bought already laminated: a composite panel, a moulding, a kit of tape and resin; kg/m2 of what it is made of. */
export interface ReadyLayer {
  readonly kind: 'ready-made';
  readonly name: string;
  readonly thickness: Metres;
  readonly fibrePerArea: number;
  readonly resinPerArea: number;
  readonly gelcoatPerArea: number;
  readonly corePerArea: number;
}

export type Layer = GelcoatLayer | FabricLayer | CoreLayer | ReadyLayer;

/** One area of the shell or of a part, with one lay-up; layers from the mould inwards. */
export interface Panel {
  readonly name: string;
  readonly area: SquareMetres;
  readonly layers: readonly Layer[];
}

/** What a square metre of a lay-up weighs and measures, kg/m2 and m. */
export interface LayUp {
  /** Cured, without gelcoat. */
  readonly thickness: Metres;
  readonly fibre: number;
  /** Resin in the glass and in the faces of the core. */
  readonly resin: number;
  readonly gelcoat: number;
  readonly core: number;
  readonly total: number;
  /** Of all fabric layers together, by mass; undefined without glass, or where some of it was bought laminated. */
  readonly fibreFraction?: number;
}

/** What a whole panel weighs. */
export interface PanelMass {
  readonly panel: Panel;
  readonly layUp: LayUp;
  readonly fibre: Kilograms;
  readonly resin: Kilograms;
  readonly gelcoat: Kilograms;
  readonly core: Kilograms;
  readonly total: Kilograms;
}

export interface LaminateMass {
  readonly panels: readonly PanelMass[];
  readonly fibre: Kilograms;
  readonly resin: Kilograms;
  readonly gelcoat: Kilograms;
  readonly core: Kilograms;
  readonly total: Kilograms;
  readonly refused: readonly { readonly panel: Panel; readonly reason: string }[];
}
