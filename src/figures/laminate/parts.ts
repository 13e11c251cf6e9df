import {
  flatArea,
  type LaminateMass,
  type NotComputed,
  type Section,
  sectionOf,
  stripArea,
  weighLaminate,
} from '../../laminate/index.ts';
import {
  type Build,
  type BuildItem,
  driverFactor,
  placeInHull,
  stagesOf,
} from '../../resolve/index.ts';
import type { LayUpProcess, PartLaminate, Stage } from '../../schema/index.ts';
import {
  decimalToNumber,
  type Kilograms,
  kilograms,
  metres,
  type SquareMetres,
  squareMetres,
} from '../../units/index.ts';
import { type KitFigures, kitOf } from './kit.ts';
import { type LaidItem, layersOf, type ResolvedPanel } from './input.ts';

type WrittenPanel = PartLaminate['panels'][number];

/** The lay-up of the structure or of an option, for all that are ordered. */
export interface PartLayUp {
  readonly item: BuildItem;
  readonly process: LayUpProcess;
  readonly resin?: string;
  /** In which it is laid. */
  readonly stage: Stage;
  readonly panels: readonly ResolvedPanel[];
  /** Panels without an area, and why. */
  readonly withoutArea: readonly { readonly name: string; readonly reason: string }[];
  readonly mass: LaminateMass;
  readonly sections: ReadonlyMap<string, Section | NotComputed>;
  readonly kit: Omit<KitFigures, 'bag'>;
  /** What the item's mass holds beside the lay-up. */
  readonly rest: Kilograms;
}

/** The lay-ups of what is built into the hull and of the options, in the order of the items. */
export function partLayUps(build: Build): readonly PartLayUp[] {
  return build.items.flatMap((item) => (item.layUp ? [layUpOf(build, item, item.layUp)] : []));
}

function layUpOf(
  build: Build,
  item: BuildItem,
  { laminate, rest }: NonNullable<BuildItem['layUp']>,
): PartLayUp {
  const { process, resin } = laminate;
  const areas = laminate.panels.map((panel) => ({ panel, area: areaOf(build, item, panel) }));
  const panels = areas.flatMap(({ panel, area }): readonly ResolvedPanel[] =>
    typeof area === 'number'
      ? [{ name: panel.name, area, ...layersOf(build, panel.layers, process) }]
      : [],
  );
  const laid: LaidItem = {
    item,
    process,
    ...(resin !== undefined && { resin }),
    panels,
    pieces: laminate.pieces.map((piece) => ({ ...piece, count: piece.count * item.quantity })),
    overlap: laminate.overlap,
  };
  return {
    item,
    process,
    ...(resin !== undefined && { resin }),
    stage: stageOf(item),
    panels,
    withoutArea: areas.flatMap(({ panel: { name }, area }) =>
      typeof area === 'number' ? [] : [{ name, reason: area.notComputed }],
    ),
    mass: weighLaminate(panels),
    sections: new Map(panels.map(({ name, layers }) => [name, sectionOf(layers)])),
    kit: kitOf(build, laid),
    rest: kilograms(rest),
  };
}

/** It is laid where its item is laminated, else where it is first worked on. */
function stageOf(item: BuildItem): Stage {
  const worked = stagesOf(item);
  const [first] = worked;
  return worked.find((stage) => stage === 'laminate') ?? first ?? 'fit-out';
}

function areaOf(
  { hull }: Build,
  { quantity }: BuildItem,
  { flat, strip, run, area, per, share }: WrittenPanel,
): SquareMetres | NotComputed {
  const times = decimalToNumber(driverFactor(per ?? 'count', quantity, hull.dimensions));
  const one = flat
    ? flatOf(hull, flat)
    : squareMetres(
        strip
          ? stripArea(hull.lines, strip[0], strip[1])
          : run
            ? metres(run.length) * run.width
            : (area ?? 0),
      );
  if (typeof one !== 'number') return one;
  return squareMetres(one * times * decimalToNumber(share));
}

function flatOf(
  hull: Build['hull'],
  { height, from, to }: NonNullable<WrittenPanel['flat']>,
): SquareMetres | NotComputed {
  const along = (x: typeof to, z: typeof height) =>
    placeInHull({ x, y: metres(0), z: z ?? metres(0) }, hull.dimensions);
  return flatArea(hull.lines, {
    from: along(from, height).x,
    to: along(to, height).x,
    ...(height !== undefined && { height: along(to, height).z }),
  });
}
