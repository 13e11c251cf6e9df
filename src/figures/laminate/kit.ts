import {
  bagConsumables,
  coreSheets,
  type CutList,
  cutList,
  type KitNeed,
  type Layer,
  materialsOf,
  type Piece,
  resinPerArea,
} from '../../laminate/index.ts';
import { allowanceOf, type Build, type BuildItem, type BuildPart } from '../../resolve/index.ts';
import type { Hull } from '../../schema/index.ts';
import {
  addDecimals,
  decimalToNumber,
  type Metres,
  metres,
  partUnitSize,
  squareMetres,
  ZERO,
} from '../../units/index.ts';
import { baggedArea, type LaidItem, materialOf, resinOf, sheetArea } from './input.ts';

type Laminate = NonNullable<Hull['laminate']>;

/** A material of a lay-up: as it lies in the boat, and as the list of its item has it. */
export interface KitLine {
  readonly part: string;
  readonly description: string;
  readonly unit: string;
  /** What one of that unit is, m2 or kg. */
  readonly one: number;
  /** In the boat, without offcuts. */
  readonly inBoat: number;
  /** Infused resin that stays in mesh and lines; 0 of everything else. */
  readonly lost: number;
  /** As the item's list of parts has it; undefined when it does not. */
  readonly listed?: number;
  /** With the yard's wastage. */
  readonly needed: number;
  /** What its supplier sells at a time; 0 when by any quantity. */
  readonly pack: number;
  /** Whole sheets, of a core that comes in sheets, and what a sheet measures. */
  readonly sheets?: number;
  readonly sheet?: { readonly width: Metres; readonly length: Metres };
}

export interface KitFigures {
  readonly lines: readonly KitLine[];
  readonly cuts: readonly { readonly part: string; readonly list: CutList }[];
  readonly bag: readonly KitNeed[];
}

/** The kit of the shell: what lies in the boat by part, what is cut off which roll, what the bag takes. */
export function kitFigures(
  build: Build,
  laminate: Laminate,
  laid: LaidItem,
  { feedLines, lost }: { readonly feedLines: number; readonly lost: number },
): KitFigures {
  const { infusion } = laminate;
  return {
    ...kitOf(build, laid, lost),
    bag: infusion
      ? bagConsumables({
          area: baggedArea(laminate, laid.panels),
          perimeter: infusion.perimeter,
          feedLength: metres(feedLines * infusion.feedLength),
          hoseLength: infusion.hose,
        })
      : [],
  };
}

/** The kit of any lay-up, its bag left aside. @param lost - infused resin that stays in mesh and lines, kg */
export function kitOf(build: Build, laid: LaidItem, lost = 0): Omit<KitFigures, 'bag'> {
  return { lines: kitLines(build, laid, lost), cuts: cutsOf(build, laid) };
}

function kitLines(build: Build, laid: LaidItem, lostResin: number): readonly KitLine[] {
  const parts = partsOf(laid.item);
  return [...byPart(build, laid)].map(([part, quantity]) => {
    const found = parts.get(part);
    const one = sizeOfUnit(build, part, found);
    const inBoat = quantity / one;
    const share = found ? decimalToNumber(allowanceOf(found, build.yard)) : 0;
    const lost = part === laid.resin ? lostResin / one : 0;
    const needed = (inBoat + lost) * (1 + share);
    const core = materialOf(build, part, 'core');
    return {
      part,
      description: found?.description ?? part,
      unit: found?.unit ?? 'm2',
      one,
      inBoat,
      lost,
      ...(found && { listed: decimalToNumber(found.quantity) }),
      needed,
      pack: found?.pack ? decimalToNumber(found.pack) : 0,
      ...(core?.sheet && {
        sheet: core.sheet,
        sheets: coreSheets(
          squareMetres(quantity),
          sheetArea(core.sheet),
          decimalToNumber(build.yard.workshop.offcuts),
        ),
      }),
    };
  });
}

/** Quantities by part code, in m2 and kg: resin by the resin that wets each layer. */
function byPart(build: Build, laid: LaidItem): ReadonlyMap<string, number> {
  const { panels } = laid;
  const needs = new Map<string, number>();
  const add = (part: string, quantity: number): void => {
    needs.set(part, (needs.get(part) ?? 0) + quantity);
  };
  for (const { name, quantity } of materialsOf(panels)) if (name !== 'resin') add(name, quantity);
  for (const { area, layers } of panels) {
    for (const layer of layers) {
      const resin = resinOf(build, layer, laid);
      if (resin !== undefined) add(resin, area * resinIn(layer));
    }
  }
  return needs;
}

function resinIn(layer: Layer): number {
  if (layer.kind === 'fabric') return resinPerArea(layer.fibrePerArea, layer.fibreFraction);
  return layer.kind === 'core' ? 2 * layer.uptakePerFace : 0;
}

/**
 * How much of a material, in m2 or kg, one unit of its price list is. Tape and strips are sold by the metre, mouldings
 * and kits by the piece, resin by volume or by the drum: width, what one covers, and what one weighs tell.
 */
function sizeOfUnit(build: Build, part: string, found: BuildPart | undefined): number {
  const covers = materialOf(build, part, 'ready-made')?.covers;
  if (covers !== undefined) return covers;
  const unit = found?.unit ?? '';
  const fabric = materialOf(build, part, 'fabric');
  const core = materialOf(build, part, 'core');
  if (!fabric && !core) return partUnitSize('mass', unit) ?? (found?.unitMass || 1);
  const width = (fabric?.roll ?? core?.sheet)?.width;
  const length = partUnitSize('length', unit);
  return length !== undefined && width !== undefined
    ? length * width
    : (partUnitSize('area', unit) ?? 1);
}

/** The parts of an item, one entry a code. */
function partsOf(item: BuildItem | undefined): ReadonlyMap<string, BuildPart> {
  const parts = new Map<string, BuildPart>();
  for (const part of item?.parts ?? []) {
    const before = parts.get(part.code)?.quantity ?? ZERO;
    parts.set(part.code, { ...part, quantity: addDecimals(before, part.quantity) });
  }
  return parts;
}

function cutsOf(build: Build, { pieces, overlap }: LaidItem): KitFigures['cuts'] {
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
