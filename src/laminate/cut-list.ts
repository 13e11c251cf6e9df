import { wholeUp } from '../maths/index.ts';
import { type Metres, metres, type SquareMetres, squareMetres } from '../units/index.ts';

/** The most strips of one piece: beyond it somebody wrote millimetres for metres. */
const MAX_STRIPS = 1000;

/** A roll of fabric as it comes. */
export interface Roll {
  readonly width: Metres;
  readonly length: Metres;
}

/** A piece to cover: its length lies along the roll, so that the fibres run as drawn. */
export interface Piece {
  readonly name: string;
  readonly length: Metres;
  readonly width: Metres;
  readonly count: number;
}

/** One strip cut from the roll. */
export interface Strip {
  readonly name: string;
  readonly length: Metres;
  readonly width: Metres;
}

/** Strips cut side by side across the roll. */
export interface CutRow {
  /** Number of the roll, from 1, and where on it the row starts. */
  readonly roll: number;
  readonly from: Metres;
  readonly length: Metres;
  readonly strips: readonly Strip[];
}

export interface CutList {
  readonly rows: readonly CutRow[];
  readonly rolls: number;
  /** Length cut off the rolls in all. */
  readonly length: Metres;
  /** Fabric cut off the rolls, and what of it lies in the boat, overlaps counted once more. */
  readonly cutArea: SquareMetres;
  readonly stripArea: SquareMetres;
  /** Share of what is cut off that is thrown away, 0 to 1. */
  readonly waste: number;
  /** Fabric by area and wastage share alone, and what nesting saves against it; below 0 when nesting shows it too low. */
  readonly allowanceArea: SquareMetres;
  readonly saving: SquareMetres;
  readonly refused: readonly { readonly name: string; readonly reason: string }[];
}

/**
 * The cut list of one fabric: pieces wider than the roll are laid in strips with overlaps; strips are nested side by
 * side, longest first into the first row with room for their width; rows are laid onto rolls the same way.
 *
 * @param overlap - of neighbouring strips, m, at least 0 and less than the roll's width
 * @param wastage - share that an estimate by area would add, for comparison
 * @returns rows on rolls; pieces that no roll is long enough for are refused
 * @validity rectangles, never turned: the fibre's direction counts
 * @source first fit by decreasing length (Johnson, 1974; Coffman et al., SIAM J. Comput. 9, 1980): the length used is at
 * most 1.7 times the least possible and one strip
 */
export function cutList(
  pieces: readonly Piece[],
  roll: Roll,
  overlap: Metres,
  wastage: number,
): CutList {
  const usable = pieces.filter((piece) => whyRefused(piece, roll, overlap) === undefined);
  const strips = usable.flatMap((piece) => stripsOf(piece, roll.width, overlap));
  const rows = layOnRolls(nestAcross(strips, roll.width), roll.length);
  const length = rows.reduce((total, row) => total + row.length, 0);
  const stripArea = areaOf(strips);
  const cutArea = length * roll.width;
  const netArea = usable.reduce((total, one) => total + one.length * one.width * one.count, 0);
  const allowanceArea = netArea * (1 + wastage);
  return {
    rows,
    rolls: rows.reduce((most, row) => Math.max(most, row.roll), 0),
    length: metres(length),
    cutArea: squareMetres(cutArea),
    stripArea: squareMetres(stripArea),
    waste: cutArea > 0 ? 1 - stripArea / cutArea : 0,
    allowanceArea: squareMetres(allowanceArea),
    saving: squareMetres(allowanceArea - cutArea),
    refused: pieces.flatMap((piece) => {
      const reason = whyRefused(piece, roll, overlap);
      return reason === undefined ? [] : [{ name: piece.name, reason }];
    }),
  };
}

function whyRefused(piece: Piece, roll: Roll, overlap: Metres): string | undefined {
  if (!(piece.length > 0 && piece.width > 0 && piece.count > 0 && Number.isFinite(piece.width))) {
    return 'length, width and count must be above 0';
  }
  if (piece.length > roll.length) return 'longer than a roll';
  if (!(overlap >= 0 && overlap < roll.width)) return 'overlap as wide as the roll';
  return stripsAcross(piece, roll.width, overlap) * piece.count <= MAX_STRIPS
    ? undefined
    : 'more strips than a shop could cut: check its width and count';
}

function stripsAcross(piece: Piece, rollWidth: Metres, overlap: Metres): number {
  // A piece as wide as so many strips must not get a strip of no width for a rounding error.
  return Math.max(1, wholeUp((piece.width - overlap) / (rollWidth - overlap)));
}

/** Strips as wide as the roll, and a last one for the rest, each overlapping the one before. */
function stripsOf(piece: Piece, rollWidth: Metres, overlap: Metres): readonly Strip[] {
  const gain = rollWidth - overlap;
  const across = stripsAcross(piece, rollWidth, overlap);
  const last = Math.min(rollWidth, piece.width - (across - 1) * gain);
  const one = Array.from({ length: across }, (_, index) => ({
    name: across > 1 ? `${piece.name}, strip ${index + 1} of ${across}` : piece.name,
    length: piece.length,
    width: index < across - 1 ? rollWidth : metres(last),
  }));
  return Array.from({ length: piece.count }, () => one).flat();
}

interface Row {
  readonly length: Metres;
  readonly strips: Strip[];
  left: number;
}

function nestAcross(strips: readonly Strip[], rollWidth: Metres): readonly Row[] {
  const rows: Row[] = [];
  const longestFirst = strips.toSorted((a, b) => b.length - a.length || b.width - a.width);
  for (const strip of longestFirst) {
    const row = rows.find(({ left }) => strip.width <= left + 1e-9);
    if (row) {
      row.strips.push(strip);
      row.left -= strip.width;
    } else {
      rows.push({ length: strip.length, strips: [strip], left: rollWidth - strip.width });
    }
  }
  return rows;
}

function layOnRolls(rows: readonly Row[], rollLength: Metres): readonly CutRow[] {
  const used: number[] = [];
  return rows.map(({ length, strips }) => {
    const fits = used.findIndex((from) => from + length <= rollLength + 1e-9);
    const roll = fits < 0 ? used.length : fits;
    const from = used[roll] ?? 0;
    used[roll] = from + length;
    return { roll: roll + 1, from: metres(from), length, strips };
  });
}

const areaOf = (strips: readonly Strip[]): number =>
  strips.reduce((total, { length, width }) => total + length * width, 0);
