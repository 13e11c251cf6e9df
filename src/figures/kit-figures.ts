import {
  bagConsumables,
  coreSheets,
  type CutList,
  cutList,
  type KitNeed,
  type Layer,
  materialsOf,
  type Panel,
  type Piece,
  resinPerArea,
  toOrder,
} from '../laminate/index.ts';
import type { Build, BuildPart } from '../resolve/index.ts';
import type { Hull } from '../schema/index.ts';
import { addDecimals, decimalToNumber, metres, squareMetres, ZERO } from '../units/index.ts';
import { baggedArea, materialOf, resinOf, sheetArea } from './laminate-input.ts';

type Laminate = NonNullable<Hull['laminate']>;

/** A material of the lay-up: as it lies in the boat, as the hull's list has it, and what must be bought. */
export interface KitLine {
  readonly part: string;
  readonly description: string;
  readonly unit: string;
  /** In the boat, without offcuts. */
  readonly inBoat: number;
  /** Infused resin that stays in mesh and lines, kg; 0 of everything else. */
  readonly lost: number;
  /** As the hull's list of parts has it; undefined when it does not. */
  readonly listed?: number;
  /** With the yard's wastage. */
  readonly needed: number;
  readonly fromStock: number;
  readonly ordered: number;
  /** Whole sheets, of a core that comes in sheets. */
  readonly sheets?: number;
}

export interface KitFigures {
  readonly lines: readonly KitLine[];
  readonly cuts: readonly { readonly part: string; readonly list: CutList }[];
  readonly bag: readonly KitNeed[];
}

/** The kit of the lay-up: what lies in the boat by part, what is cut off which roll, what the bag takes. */
export function kitFigures(
  build: Build,
  laminate: Laminate,
  panels: readonly Panel[],
  { feedLines, lost }: { readonly feedLines: number; readonly lost: number },
): KitFigures {
  const { infusion } = laminate;
  return {
    lines: kitLines(build, laminate, panels, lost),
    cuts: cutsOf(build, laminate),
    bag: infusion
      ? bagConsumables({
          area: baggedArea(laminate, panels),
          perimeter: infusion.perimeter,
          feedLength: metres(feedLines * infusion.feedLength),
          hoseLength: infusion.hose,
        })
      : [],
  };
}

function kitLines(
  build: Build,
  laminate: Laminate,
  panels: readonly Panel[],
  lostResin: number,
): readonly KitLine[] {
  const parts = partsOf(build);
  const needs = byPart(build, laminate, panels);
  return [...needs].map(([part, quantity]) => {
    const found = parts.get(part);
    const inBoat = inUnit(build, part, found?.unit, quantity);
    const share = build.yard.wastage[found?.materialClass ?? ''];
    const lost = part === laminate.infusion?.resin ? lostResin : 0;
    const needed = (inBoat + lost) * (1 + (share ? decimalToNumber(share) : 0));
    const supply = {
      name: part,
      inStock: decimalToNumber(build.stock?.held.get(part) ?? ZERO),
      pack: found?.pack ? decimalToNumber(found.pack) : 0,
    };
    const [order] = toOrder([{ name: part, quantity: needed, unit: 'each' }], [supply]);
    const core = materialOf(build, part, 'core');
    const sheet = sheetArea(core?.sheet);
    return {
      part,
      description: found?.description ?? part,
      unit: found?.unit ?? 'm2',
      inBoat,
      lost,
      ...(found && { listed: decimalToNumber(found.quantity) }),
      needed,
      fromStock: order?.fromStock ?? 0,
      ordered: order?.ordered ?? needed,
      ...(sheet !== undefined && {
        sheets: coreSheets(
          squareMetres(inBoat),
          sheet,
          decimalToNumber(build.yard.workshop.offcuts),
        ),
      }),
    };
  });
}

/** Quantities by part code, in m2 and kg: resin by the resin that wets each layer. */
function byPart(
  build: Build,
  laminate: Laminate,
  panels: readonly Panel[],
): ReadonlyMap<string, number> {
  const needs = new Map<string, number>();
  const add = (part: string, quantity: number): void => {
    needs.set(part, (needs.get(part) ?? 0) + quantity);
  };
  for (const { name, quantity } of materialsOf(panels)) if (name !== 'resin') add(name, quantity);
  for (const { area, layers } of panels) {
    for (const layer of layers) {
      const resin = resinOf(build, layer, laminate.infusion?.resin);
      if (resin !== undefined) add(resin, area * resinIn(layer));
    }
  }
  return needs;
}

function resinIn(layer: Layer): number {
  if (layer.kind === 'fabric') return resinPerArea(layer.fibrePerArea, layer.fibreFraction);
  return layer.kind === 'core' ? 2 * layer.uptakePerFace : 0;
}

/** Tape and the like are sold by the metre: their area over their width. */
function inUnit(build: Build, part: string, unit: string | undefined, quantity: number): number {
  const width = materialOf(build, part, 'fabric')?.roll?.width;
  return unit === 'm' && width !== undefined ? quantity / width : quantity;
}

/** The parts of the shell, one entry a code. */
function partsOf({ items }: Build): ReadonlyMap<string, BuildPart> {
  const shell = items.find(({ kind }) => kind === 'shell');
  const parts = new Map<string, BuildPart>();
  for (const part of shell?.parts ?? []) {
    const before = parts.get(part.code)?.quantity ?? ZERO;
    parts.set(part.code, { ...part, quantity: addDecimals(before, part.quantity) });
  }
  return parts;
}

function cutsOf(build: Build, { pieces, overlap }: Laminate): KitFigures['cuts'] {
  const fabrics = [...new Set(pieces.flatMap(({ of }) => of))];
  const wastage = build.yard.wastage['fabric'];
  return fabrics.flatMap((part) => {
    const roll = materialOf(build, part, 'fabric')?.roll;
    if (!roll) return [];
    const wanted = pieces.flatMap(({ name, length, width, count, of }): readonly Piece[] => {
      const layers = of.filter((one) => one === part).length;
      return layers === 0 ? [] : [{ name, length, width, count: count * layers }];
    });
    const list = cutList(wanted, roll, overlap, wastage ? decimalToNumber(wastage) : 0);
    return [{ part, list }];
  });
}
