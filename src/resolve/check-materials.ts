import { type Finding, finding, type Place } from '../findings/index.ts';
import type { Catalogue, Hull, MaterialKind } from '../schema/index.ts';
import { unknownId } from './check-compatibility.ts';

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
  const { materials, parts, stock } = catalogue;
  const listed = (place: Place, code: string): readonly Finding[] =>
    parts.has(code) || broken.has(code) ? [] : [unknownId('part', code, parts.keys(), place)];
  const known = (
    place: Place,
    code: string | undefined,
    ...kinds: readonly MaterialKind[]
  ): readonly Finding[] => {
    if (code === undefined) return [];
    const kind = materials.get(code)?.value.kind;
    if (kind !== undefined && kinds.includes(kind)) return [];
    const names = [...materials.keys()].filter((name) => {
      const other = materials.get(name)?.value.kind;
      return other !== undefined && kinds.includes(other);
    });
    return [unknownId(kinds.join(' or '), code, names, place)];
  };
  return [
    ...[...materials.values()].flatMap(({ value, place }) => {
      const mixing = 'mixing' in value ? value.mixing : undefined;
      return [
        ...listed(place(['part']), value.part),
        ...known(place(['mixing', 'catalyst']), mixing?.catalyst, 'catalyst'),
        ...(value.kind === 'fabric' ? known(place(['wetWith']), value.wetWith, 'resin') : []),
      ];
    }),
    ...(stock?.value.stock ?? []).flatMap(({ part }, index) =>
      listed(stock?.place(['stock', index, 'part']) ?? { file: '' }, part),
    ),
    ...[...catalogue.hulls.values()].flatMap(({ value: { laminate, lines }, place }) => {
      if (!laminate) return [];
      const points = Math.min(...lines.map((line) => line.points.length));
      const at = (...path: readonly (string | number)[]): Place => place(['laminate', ...path]);
      return [
        ...laminate.panels.flatMap(({ layers, strip }, panel) => [
          ...layers.flatMap((code, layer) =>
            known(at('panels', panel, 'layers', layer), code, 'coat', 'fabric', 'core'),
          ),
          ...(strip && !(strip[0] < strip[1] && strip[1] < points)
            ? [
                finding('OUT_OF_RANGE', at('panels', panel, 'strip'), {
                  received: `from point ${strip[0]} to ${strip[1]}`,
                  expected: `two points from 0 to ${points - 1}, the lower first`,
                }),
              ]
            : []),
        ]),
        ...laminate.pieces.flatMap(({ of }, piece) =>
          of.flatMap((code, layer) => known(at('pieces', piece, 'of', layer), code, 'fabric')),
        ),
        ...known(at('infusion', 'resin'), laminate.infusion?.resin, 'resin'),
        ...bottomPanel(laminate, at),
      ];
    }),
  ];
}

type Laminate = NonNullable<Hull['laminate']>;

function bottomPanel(
  { bottom, panels }: Laminate,
  at: (...path: readonly (string | number)[]) => Place,
): readonly Finding[] {
  const names = panels.map(({ name }) => name);
  if (!bottom || names.includes(bottom.panel)) return [];
  return [unknownId('panel', bottom.panel, names, at('bottom', 'panel'))];
}
