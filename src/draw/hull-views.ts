import { curveCatmullRom, line } from 'd3-shape';
import type { Curve, CurvePoint, HullCurves } from './hull-curves.ts';
import { element, INK, stroke } from './svg.ts';

/** Turns metres of the boat into millimetres of the sheet. */
export type Scale = (metres: number) => number;

const HEAVY = 0.45;
const FINE = 0.18;
/** Lines nearer together than this on the sheet would print as one thick line, mm. */
const APART = 0.6;

/** Passes through every point, without the waves that unequal steps would make. */
const THROUGH_POINTS = curveCatmullRom.alpha(0.5);

/** A smooth line through all points of a curve. */
function pathOf(curve: Curve, across: Scale, down: (point: CurvePoint) => number): string {
  const draw = line<CurvePoint>()
    .x((point) => across(point.x))
    .y(down)
    .curve(THROUGH_POINTS)
    .digits(2);
  return draw(curve) ?? '';
}

const drawn = (d: string, width: number, more: Readonly<Record<string, string>> = {}): string =>
  element('path', { d, fill: 'none', stroke: INK.line, 'stroke-width': width, ...more });

/** The hull from its starboard side, bow to the right: sheer, chines, keel and stem, transom. */
export function sideView(
  { keel, chines, sheer }: HullCurves,
  across: Scale,
  up: Scale,
  fill: string = INK.tint,
): string {
  const down = ({ height }: CurvePoint): number => up(height);
  const top = pathOf(sheer, across, down);
  const bottom = pathOf(keel.toReversed(), across, down);
  const outline = `${top}${bottom.replace('M', 'L')}Z`;
  return [
    drawn(outline, HEAVY, { fill, 'stroke-linejoin': 'round' }),
    ...apart(chines, down).map((chine) => drawn(pathOf(chine, across, down), FINE)),
  ].join('\n');
}

/** Chines that stand clear of the one before: a flat between two of them is one line from the side. */
function apart(chines: readonly Curve[], down: (point: CurvePoint) => number): readonly Curve[] {
  return chines.filter((chine, index) => {
    const inner = chines[index - 1];
    if (!inner) return true;
    const gaps = chine.map((point, at) => Math.abs(down(point) - down(inner[at] ?? point)));
    return Math.max(...gaps) >= APART;
  });
}

/** The hull from above, bow to the right and starboard below: sheer and transom, chines dashed, centreline. */
export function planView(
  { chines, sheer }: HullCurves,
  across: Scale,
  sideways: Scale,
  fill: string = INK.tint,
): string {
  const half = (curve: Curve, side: 1 | -1): string =>
    pathOf(curve, across, ({ halfBreadth }) => sideways(side * halfBreadth));
  const starboard = half(sheer, 1);
  const outline = `${starboard}${half(sheer.toReversed(), -1).replace('M', 'L')}Z`;
  const hidden = { 'stroke-dasharray': '1.6 0.9' };
  return [
    drawn(outline, HEAVY, { fill, 'stroke-linejoin': 'round' }),
    ...chines.flatMap((chine) => [
      drawn(half(chine, 1), FINE, hidden),
      drawn(half(chine, -1), FINE, hidden),
    ]),
    centreline(sheer, across, sideways),
  ].join('\n');
}

function centreline(sheer: Curve, across: Scale, sideways: Scale): string {
  const from = across(sheer[0]?.x ?? 0) - 2;
  const to = across(sheer.at(-1)?.x ?? 0) + 2;
  const at = sideways(0);
  return stroke([from, at], [to, at], {
    stroke: INK.quiet,
    'stroke-width': FINE,
    'stroke-dasharray': '5 1 1 1',
  });
}
