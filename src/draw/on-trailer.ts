import { scaleLinear } from 'd3-scale';
import { hullCurves } from './hull-curves.ts';
import { sideView, type Scale } from './hull-views.ts';
import { outboardFromSide } from './outboard.ts';
import { element, INK, sheet, stroke, words } from './svg.ts';
import type { Drawing, HullShape, OutboardShape } from './types.ts';

export interface OnTrailerInput {
  readonly hull: HullShape;
  readonly outboard?: OutboardShape;
  /** Aft of the ball, m. */
  readonly winchPost: number;
  readonly axle: number;
  readonly axles: number;
  readonly trailerLength: number;
  /** Of boat and trailer together, m aft of the ball. */
  readonly centre: number;
  /** As printed: "80 kg on the ball". */
  readonly texts: {
    readonly ball: string;
    readonly axles: string;
    readonly winchPost: string;
    readonly axle: string;
    readonly centre: string;
  };
  readonly fontCss: string;
}

const WIDTH = 180;
/** Heights above the road, m; a sketch. */
const FRAME = 0.48;
const KEEL = 0.62;
const WHEEL = 0.3;
const BEHIND = 0.7;
const TEXT = 3;

/**
 * The boat on its trailer from the side, the ball on the right, with winch post, axle and where the load stands.
 *
 * @returns a sheet 180 mm wide; distances along the trailer are to scale, the trailer itself is a sketch
 */
export function drawOnTrailer(input: OnTrailerInput): Drawing {
  const { hull, outboard, winchPost, trailerLength, texts, fontCss } = input;
  const stern = winchPost + hull.length;
  const whole = Math.max(stern + (outboard ? BEHIND : 0.1), trailerLength) + 0.1;
  const road = scaleLinear([whole, -0.4], [4, WIDTH - 4]);
  const scale = (WIDTH - 8) / (whole + 0.4);
  const top = Math.max(...hull.lines.flatMap(({ points }) => points.map(([, z]) => z)));
  const above = Math.max(top, outboard ? outboard.clampHeight + 0.5 : 0) + KEEL + 0.2;
  const ground = above * scale + 6;
  const across: Scale = (x) => road(stern - x);
  const up: Scale = (z) => ground - (z + KEEL) * scale;
  const body = [
    stroke([2, ground], [WIDTH - 2, ground], { 'stroke-width': 0.35 }),
    ...(outboard ? [outboardFromSide(outboard, across, (z) => up(z))] : []),
    sideView(hullCurves(hull), across, up),
    ...trailer(input, road, ground, scale),
    words(texts.ball, road(0) + 3, ground - (FRAME + 0.14) * scale, {
      'font-size': TEXT,
      'text-anchor': 'end',
    }),
    ...dimensions(input, road, ground),
  ];
  const alt = `${hull.name} on its trailer from the side, the tow ball on the right. ${texts.winchPost}; ${texts.axle}; ${texts.centre}. ${texts.ball}; ${texts.axles}.`;
  return sheet({ width: WIDTH, height: ground + 27, alt, fontCss, body });
}

function trailer(
  { winchPost, axle, axles, trailerLength }: OnTrailerInput,
  road: Scale,
  ground: number,
  scale: number,
): readonly string[] {
  const frame = ground - FRAME * scale;
  const wheels = Array.from(
    { length: axles },
    (_, index) => axle + (index - (axles - 1) / 2) * (2 * WHEEL + 0.1),
  );
  return [
    stroke([road(0), frame], [road(trailerLength), frame], { 'stroke-width': 0.9 }),
    stroke([road(winchPost), frame], [road(winchPost), frame - 0.75 * scale], {
      'stroke-width': 0.9,
    }),
    ...wheels.flatMap((at) => [
      wheel(road(at), ground - WHEEL * scale, WHEEL * scale, INK.paper),
      wheel(road(at), ground - WHEEL * scale, WHEEL * scale * 0.55, INK.tint),
    ]),
    wheel(road(0), frame, 0.05 * scale + 0.6, INK.line),
  ];
}

const wheel = (cx: number, cy: number, r: number, fill: string): string =>
  element('circle', { cx, cy, r, fill, stroke: INK.line, 'stroke-width': 0.4 });

function dimensions(
  { winchPost, axle, centre, texts }: OnTrailerInput,
  road: Scale,
  ground: number,
): readonly string[] {
  const rows = [
    { at: winchPost, text: texts.winchPost },
    { at: centre, text: texts.centre },
    { at: axle, text: `${texts.axle}; ${texts.axles}` },
  ];
  return rows.flatMap(({ at, text }, index) => {
    const y = ground + 7 + index * 7.5;
    const fine = { 'stroke-width': 0.2 };
    return [
      stroke([road(at), ground + 1], [road(at), y + 1], fine),
      stroke([road(0), ground + 1], [road(0), y + 1], fine),
      stroke([road(at), y], [road(0), y], fine),
      words(text, road(0) - 1.5, y - 1, { 'font-size': TEXT, 'text-anchor': 'end' }),
    ];
  });
}
