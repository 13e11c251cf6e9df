import fc from 'fast-check';
import type {
  CoreLayer,
  FabricLayer,
  GelcoatLayer,
  Layer,
  Panel,
} from '../../src/laminate/index.ts';
import { metres, squareMetres } from '../../src/units/index.ts';

export const gelcoat = (massPerArea: number): GelcoatLayer => ({
  kind: 'gelcoat',
  name: 'white gelcoat',
  massPerArea,
});

export const fabric = (
  fibrePerArea: number,
  fibreFraction: number,
  name = 'biaxial',
): FabricLayer => ({ kind: 'fabric', name, fibrePerArea, fibreFraction });

export const foam = (thickness: number, density = 80, uptakePerFace = 0.5): CoreLayer => ({
  kind: 'core',
  name: 'foam',
  thickness: metres(thickness),
  density,
  uptakePerFace,
  strength: { shearStrength: 1.15e6, shearModulus: 27e6, compressiveModulus: 90e6 },
});

export const panel = (name: string, area: number, layers: readonly Layer[]): Panel => ({
  name,
  area: squareMetres(area),
  layers,
});

const share = fc.double({ min: 0.2, max: 0.7, noNaN: true });
const anyFabric = fc
  .tuple(fc.double({ min: 0.1, max: 1.5, noNaN: true }), share)
  .map(([fibre, fraction]) => fabric(fibre, fraction));
const anyFoam = fc.double({ min: 0.005, max: 0.04, noNaN: true }).map((t) => foam(t));
const anyGelcoat = fc.double({ min: 0, max: 1, noNaN: true }).map(gelcoat);

/** Gelcoat, glass, perhaps a core, glass. */
export const anyLayers: fc.Arbitrary<readonly Layer[]> = fc
  .tuple(
    anyGelcoat,
    fc.array(anyFabric, { minLength: 1, maxLength: 4 }),
    fc.option(anyFoam, { nil: undefined }),
    fc.array(anyFabric, { minLength: 1, maxLength: 3 }),
  )
  .map(([coat, outer, core, inner]) => [coat, ...outer, ...(core ? [core] : []), ...inner]);

export const anyPanels: fc.Arbitrary<readonly Panel[]> = fc.array(
  fc
    .tuple(fc.double({ min: 0.1, max: 15, noNaN: true }), anyLayers)
    .map(([area, layers]) => panel('any', area, layers)),
  { maxLength: 6 },
);
