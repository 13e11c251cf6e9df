import {
  atTemperature,
  combinedFibreFraction,
  fibreByVolume,
  fillTime,
  type Flow,
  type InfusionPlan,
  type NotComputed,
  type Panel,
  planInfusion,
  weighLaminate,
} from '../../laminate/index.ts';
import type { Build } from '../../resolve/index.ts';
import type { Hull } from '../../schema/index.ts';
import { decimalToNumber, kilograms, metres, ZERO } from '../../units/index.ts';
import { baggedArea, materialOf, resinOf, shellWetting } from './input.ts';
import { gelPoints } from './mixing.ts';

type Laminate = NonNullable<Hull['laminate']>;

/** Bore of feed lines and hose, m: that of the tube that this trade uses; common practice, no source. */
const BORE = metres(0.012);
/** Share of the bagged area under flow mesh: it stops short of the edge; common practice, no source. */
const MESH_SHARE = 0.9;

export interface InfusionFigures {
  readonly resin: string;
  readonly plan: InfusionPlan | NotComputed;
  /** With the feed lines that the shop lays, when the hull says how many. */
  readonly asLaid?: { readonly feedLines: number; readonly fillSeconds: number };
  readonly viscosity: number | NotComputed;
  readonly gelMinutes: number | NotComputed;
}

/** The infusion of a lay-up; undefined when the hull is laid up by hand. */
export function infusionOf(
  build: Build,
  laminate: Laminate,
  panels: readonly Panel[],
): InfusionFigures | undefined {
  const { infusion } = laminate;
  if (!infusion) return undefined;
  const { resin: part } = infusion;
  const resin = materialOf(build, part, 'resin');
  const celsius = decimalToNumber(build.yard.workshop.temperature);
  const viscosity = atTemperature(
    (resin?.viscosity ?? []).map((one) => ({
      celsius: decimalToNumber(one.celsius),
      value: one.value,
    })),
    celsius,
  );
  const gelMinutes = atTemperature(gelPoints(resin?.mixing), celsius);
  const flow = { viscosity, ...stackOf(build, laminate, panels) };
  if (typeof viscosity !== 'number') return { resin: part, plan: viscosity, viscosity, gelMinutes };
  if (typeof gelMinutes !== 'number') {
    return { resin: part, plan: gelMinutes, viscosity, gelMinutes };
  }
  const sound: Flow = { ...flow, viscosity };
  const lines = infusion.feedLines;
  const plan = planInfusion({
    flow: sound,
    girth: infusion.girth,
    feedLength: infusion.feedLength,
    laminateResin: kilograms(flow.resin),
    mesh: { area: MESH_SHARE * flow.area, uptake: infusion.mesh },
    lines: { bore: BORE, hose: infusion.hose, ...(lines !== undefined && { laid: lines }) },
    gelSeconds: gelMinutes * 60,
    gelShare: decimalToNumber(build.yard.workshop.gelShare),
  });
  return {
    resin: part,
    plan,
    viscosity,
    gelMinutes,
    ...(lines !== undefined && {
      asLaid: {
        feedLines: lines,
        fillSeconds: fillTime(sound, metres(infusion.girth / (2 * lines))),
      },
    }),
  };
}

/** What the infused resin flows through: porosity of the glass, pressure, and the resin that stays in it, kg. */
function stackOf(build: Build, laminate: Laminate, panels: readonly Panel[]) {
  const { infusion } = laminate;
  const part = infusion?.resin;
  const infused = panels.map(({ area, layers }) => ({
    area,
    layers: layers.filter((layer) => resinOf(build, layer, shellWetting(laminate)) === part),
  }));
  const glass = infused.flatMap(({ layers }) =>
    layers.flatMap((layer) => (layer.kind === 'fabric' ? [layer] : [])),
  );
  const weighed = weighLaminate(
    infused.flatMap(({ area, layers }, index) =>
      layers.length === 0 ? [] : [{ name: String(index), area, layers }],
    ),
  );
  return {
    porosity: 1 - fibreByVolume(combinedFibreFraction(glass) ?? 0),
    permeability: decimalToNumber(infusion?.permeability ?? ZERO) * 1e-9,
    pressure: build.yard.workshop.vacuum,
    resin: weighed.resin,
    area: baggedArea(laminate, panels),
  };
}
