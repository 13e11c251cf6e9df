import { type Finding, finding, type Place } from '../findings/index.ts';
import type {
  Catalogue,
  Hull,
  Material,
  MaterialKind,
  PartLaminate,
  Sourced,
} from '../schema/index.ts';
import { unknownId } from './check-compatibility.ts';

type Laminate = NonNullable<Hull['laminate']>;
type Path = readonly (string | number)[];

/** Kinds of material that a panel is laid up of. */
const LAYERS = ['coat', 'fabric', 'core', 'ready-made'] as const;

/** The highest point that every cross-section has. */
const lastPoint = ({ lines }: Hull): number =>
  Math.min(...lines.map(({ points }) => points.length)) - 1;

/** A code at a place that must be a material of one of some kinds. */
type Known = (
  place: Place,
  code: string | undefined,
  ...kinds: readonly MaterialKind[]
) => readonly Finding[];

/**
 * Findings of the materials, the stock and the lay-ups of hulls: codes that no price list or no entry of the materials
 * has, and strips that the lines of a hull do not have.
 *
 * @param broken - part codes of rows that could not be read: they are known to exist
 */
export function checkMaterials(
  catalogue: Catalogue,
  broken: ReadonlySet<string>,
): readonly Finding[] {
  const { materials, parts, stock, hulls, options } = catalogue;
  const listed = (place: Place, code: string): readonly Finding[] =>
    parts.has(code) || broken.has(code) ? [] : [unknownId('part', code, parts.keys(), place)];
  const known = knownIn(materials);
  return [
    ...[...materials.values()].flatMap((one) => [
      ...listed(one.place(['part']), one.value.part),
      ...checkMaterial(one, known),
    ]),
    ...(stock?.value.stock.flatMap(({ part }, index) =>
      listed(stock.place(['stock', index, 'part']), part),
    ) ?? []),
    ...[...hulls.values()].flatMap((hull) => checkLaminate(hull, known)),
    ...[...hulls.values()].flatMap((hull) => checkStructure(hull, known)),
    ...[...options.values()].flatMap((option) =>
      checkPart(option.value.laminate, (path) => option.place(['laminate', ...path]), known),
    ),
  ];
}

function knownIn(materials: Catalogue['materials']): Known {
  return (place, code, ...kinds) => {
    const names = [...materials.values()]
      .filter(({ value }) => kinds.includes(value.kind))
      .map(({ value }) => value.part);
    return code === undefined || names.includes(code)
      ? []
      : [unknownId(kinds.join(' or '), code, names, place)];
  };
}

function checkMaterial(one: Sourced<Material>, known: Known): readonly Finding[] {
  const { value } = one;
  const catalyst = 'mixing' in value ? value.mixing?.catalyst : undefined;
  const wetWith = value.kind === 'fabric' ? value.wetWith : undefined;
  return [
    ...known(one.place(['mixing', 'catalyst']), catalyst, 'catalyst'),
    ...known(one.place(['wetWith']), wetWith, 'resin'),
  ];
}

function checkLaminate(hull: Sourced<Hull>, known: Known): readonly Finding[] {
  const { laminate } = hull.value;
  if (!laminate) return [];
  const at = (...path: readonly (string | number)[]): Place => hull.place(['laminate', ...path]);
  const last = lastPoint(hull.value);
  return [
    ...laminate.panels.flatMap(({ layers, strip }, panel) => [
      ...layers.flatMap((code, layer) =>
        known(at('panels', panel, 'layers', layer), code, ...LAYERS),
      ),
      ...checkStrip(strip, last, at('panels', panel, 'strip')),
    ]),
    ...laminate.pieces.flatMap(({ of }, piece) =>
      of.flatMap((code, layer) => known(at('pieces', piece, 'of', layer), code, 'fabric')),
    ),
    ...known(at('infusion', 'resin'), laminate.infusion?.resin, 'resin'),
    ...known(at('resin'), laminate.resin, 'resin'),
    ...checkBottom(laminate, at('bottom', 'panel')),
  ];
}

function checkStructure(hull: Sourced<Hull>, known: Known): readonly Finding[] {
  const { laminate } = hull.value.structure;
  const at = (path: Path): Place => hull.place(['structure', 'laminate', ...path]);
  const last = lastPoint(hull.value);
  return [
    ...checkPart(laminate, at, known),
    ...(laminate?.panels ?? []).flatMap(({ strip }, panel) =>
      checkStrip(strip, last, at(['panels', panel, 'strip'])),
    ),
  ];
}

/** Codes that the lay-up of a part names. */
function checkPart(
  laminate: PartLaminate | undefined,
  at: (path: Path) => Place,
  known: Known,
): readonly Finding[] {
  if (!laminate) return [];
  return [
    ...known(at(['resin']), laminate.resin, 'resin'),
    ...laminate.panels.flatMap(({ layers }, panel) =>
      layers.flatMap((code, layer) =>
        known(at(['panels', panel, 'layers', layer]), code, ...LAYERS),
      ),
    ),
    ...laminate.pieces.flatMap(({ of }, piece) =>
      of.flatMap((code, layer) => known(at(['pieces', piece, 'of', layer]), code, 'fabric')),
    ),
  ];
}

function checkStrip(
  strip: readonly [number, number] | undefined,
  last: number,
  place: Place,
): readonly Finding[] {
  if (!strip || (strip[0] < strip[1] && strip[1] <= last)) return [];
  return [
    finding('OUT_OF_RANGE', place, {
      received: `from point ${strip[0]} to ${strip[1]}`,
      expected: `two points of the lines from 0 to ${last}, the lower first`,
    }),
  ];
}

function checkBottom({ bottom, panels }: Laminate, place: Place): readonly Finding[] {
  const names = panels.map(({ name }) => name);
  return !bottom || names.includes(bottom.panel)
    ? []
    : [unknownId('panel', bottom.panel, names, place)];
}
