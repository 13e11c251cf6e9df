import { wholeUp } from '../maths/index.ts';
import { type Kilograms, kilograms, type Metres, metres } from '../units/index.ts';
import { RESIN_DENSITY } from './layer.ts';
import type { NotComputed } from './types.ts';

/** What decides how fast resin moves through a dry stack under vacuum. */
export interface Flow {
  /** Share of the stack that resin fills, 0 to 1: one less the fibre by volume. */
  readonly porosity: number;
  /** Pa.s, at the shop's temperature. */
  readonly viscosity: number;
  /** Along the flow medium and the stack under it together, m2. */
  readonly permeability: number;
  /** Pressure that drives the resin: atmosphere less what is left in the bag, Pa. */
  readonly pressure: number;
}

/**
 * Time for resin to move a length from a straight feed line: t = porosity mu L^2 / (2 K p).
 *
 * @param length - L, m
 * @returns t, s
 * @validity constant pressure, stiff stack; a soft bag changes it by a constant factor
 * @source Darcy's law, closed form in one dimension
 */
export function fillTime(flow: Flow, length: Metres): number {
  return (flow.porosity * flow.viscosity * length ** 2) / (2 * flow.permeability * flow.pressure);
}

/**
 * Time for resin to reach a radius from a point feed: t = porosity mu / (2 K p) [R^2 ln(R/r0) - (R^2 - r0^2) / 2].
 *
 * @param radius - R, m; @param inlet - r0, radius of the inlet, m, above 0 and at most R
 * @returns t, s; `notComputed` when the inlet is not smaller
 * @source Darcy's law, closed form for radial flow
 */
export function radialFillTime(flow: Flow, radius: Metres, inlet: Metres): number | NotComputed {
  if (!(inlet > 0 && radius >= inlet)) {
    return { notComputed: 'the inlet’s radius must be above 0 and not beyond the radius to fill' };
  }
  const spread = radius ** 2 * Math.log(radius / inlet) - (radius ** 2 - inlet ** 2) / 2;
  return (flow.porosity * flow.viscosity * spread) / (2 * flow.permeability * flow.pressure);
}

/**
 * How far resin gets from a feed line in a time: the turned-round `fillTime`.
 *
 * @returns L, m
 * @source Darcy's law, closed form in one dimension
 */
export function reachIn(flow: Flow, seconds: number): Metres {
  return metres(
    Math.sqrt((2 * flow.permeability * flow.pressure * seconds) / (flow.porosity * flow.viscosity)),
  );
}

export interface InfusionInput {
  readonly flow: Flow;
  /** Distance that resin must cover in all: the girth when feed lines run along the hull. */
  readonly girth: Metres;
  /** Length of one feed line. */
  readonly feedLength: Metres;
  /** Resin that stays in the laminate and core. */
  readonly laminateResin: Kilograms;
  /** Resin lost in flow mesh, kg per m2, and the mesh's area, m2. */
  readonly mesh: { readonly area: number; readonly uptake: number };
  /** Bore of feed lines and hose, m; the length of the hose, m; feed lines that are laid, when the plan's are not. */
  readonly lines: { readonly bore: Metres; readonly hose: Metres; readonly laid?: number };
  readonly gelSeconds: number;
  /** Share of the gel time in which it must be full; 0.6 to 0.8 is common practice, no source. */
  readonly gelShare: number;
}

export interface InfusionPlan {
  /** Least that fill it in time. */
  readonly feedLines: number;
  /** From one feed line to the next. */
  readonly spacing: Metres;
  /** Farthest that resin moves from a feed line. */
  readonly reach: Metres;
  readonly fillSeconds: number;
  /** Time that may pass, gel time times its share. */
  readonly limitSeconds: number;
  readonly resin: Kilograms;
  /** What of it stays in mesh, feed lines and hose. */
  readonly lost: Kilograms;
  readonly resinPerFeed: Kilograms;
  /** Least that the catch-pot must hold. */
  readonly catchPotLitres: number;
  readonly leakDown: LeakDown;
}

/** What the bag may lose with the pump shut off before resin is let in. */
export interface LeakDown {
  readonly minutes: number;
  readonly mostPascals: number;
}

/** Five minutes, 10 mbar; common practice, no source: a yard that has its own limit uses that. */
const LEAK_DOWN: LeakDown = { minutes: 5, mostPascals: 1000 };
/** Share of the resin for which the catch-pot has room; common practice, no source. */
const CATCH_POT_SHARE = 0.15;
const MIN_CATCH_POT_LITRES = 2;

/**
 * The infusion: how many feed lines fill the laminate inside the stated share of the gel time, and with how much resin.
 *
 * @returns a plan; `notComputed` when the flow cannot be, or more than 40 feed lines would be needed
 * @validity feed lines opened together, each filling both ways; edges and core cuts change it by some tenths
 * @source Darcy's law in one dimension. Estimated; verify by an infused sample of the same stack
 */
export function planInfusion(input: InfusionInput): InfusionPlan | NotComputed {
  const { flow, girth, gelSeconds, gelShare } = input;
  const positive = [
    flow.porosity,
    flow.viscosity,
    flow.permeability,
    flow.pressure,
    girth,
    gelSeconds,
    gelShare,
  ];
  if (!positive.every((value) => Number.isFinite(value) && value > 0) || flow.porosity > 1) {
    return { notComputed: 'flow, girth and gel time must be above 0, porosity at most 1' };
  }
  const limitSeconds = gelSeconds * gelShare;
  const feedLines = wholeUp(girth / (2 * reachIn(flow, limitSeconds)));
  if (feedLines > 40)
    return { notComputed: 'the resin gels before 40 feed lines fill the {mould}' };
  const reach = metres(girth / (2 * feedLines));
  const { bore, hose, laid = feedLines } = input.lines;
  const length = hose + laid * input.feedLength;
  const inLines = Math.PI * (bore / 2) ** 2 * length * RESIN_DENSITY;
  const lost = kilograms(input.mesh.area * input.mesh.uptake + inLines);
  const resin = kilograms(input.laminateResin + lost);
  return {
    feedLines,
    spacing: metres(2 * reach),
    reach,
    fillSeconds: fillTime(flow, reach),
    limitSeconds,
    resin,
    lost,
    resinPerFeed: kilograms(resin / laid),
    catchPotLitres: Math.max(
      MIN_CATCH_POT_LITRES,
      (CATCH_POT_SHARE * resin * 1000) / RESIN_DENSITY,
    ),
    leakDown: LEAK_DOWN,
  };
}
