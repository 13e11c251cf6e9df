import { sum } from '../maths/index.ts';
import { type Kilograms, kilograms, metres } from '../units/index.ts';
import { combinedFibreFraction, layerThickness, resinPerArea } from './layer.ts';
import type {
  CoreLayer,
  FabricLayer,
  GelcoatLayer,
  LaminateMass,
  Layer,
  LayUp,
  NotComputed,
  Panel,
  PanelMass,
  ReadyLayer,
} from './types.ts';

/**
 * What a square metre of a lay-up measures and weighs.
 *
 * @returns thickness in m, masses in kg/m2; `notComputed` for a layer that cannot be
 * @validity fibre by mass from 0.1 to 0.8
 * @source thickness: ISO 12215-5:2008 Annex C (from memory); masses derived
 */
export function layUpOf(layers: readonly Layer[]): LayUp | NotComputed {
  const wrong = layers.map(whatIsWrong).find((reason) => reason !== undefined);
  if (wrong !== undefined) return { notComputed: wrong };
  const glass = layers.filter((layer): layer is FabricLayer => layer.kind === 'fabric');
  const cores = layers.filter((layer): layer is CoreLayer => layer.kind === 'core');
  const coats = layers.filter((layer): layer is GelcoatLayer => layer.kind === 'gelcoat');
  const bought = layers.filter((layer): layer is ReadyLayer => layer.kind === 'ready-made');
  const fibre = sum([...glass, ...bought].map(({ fibrePerArea }) => fibrePerArea));
  const resin =
    sum(glass.map((layer) => resinPerArea(layer.fibrePerArea, layer.fibreFraction))) +
    sum(cores.map(({ uptakePerFace }) => 2 * uptakePerFace)) +
    sum(bought.map(({ resinPerArea: held }) => held));
  const gelcoat =
    sum(coats.map(({ massPerArea }) => massPerArea)) +
    sum(bought.map(({ gelcoatPerArea }) => gelcoatPerArea));
  const core =
    sum(cores.map(({ thickness, density }) => thickness * density)) +
    sum(bought.map(({ corePerArea }) => corePerArea));
  const fibreFraction = bought.length > 0 ? undefined : combinedFibreFraction(glass);
  return {
    thickness: metres(
      sum(glass.map((layer) => layerThickness(layer.fibrePerArea, layer.fibreFraction))) +
        sum([...cores, ...bought].map(({ thickness }) => thickness)),
    ),
    fibre,
    resin,
    gelcoat,
    core,
    total: fibre + resin + gelcoat + core,
    ...(fibreFraction !== undefined && { fibreFraction }),
  };
}

/**
 * What every panel weighs and what all weigh together; a panel with an impossible layer is refused with the reason.
 *
 * @returns masses, kg: what stays in the boat, without offcuts
 * @source as `layUpOf`, times the area
 */
export function weighLaminate(panels: readonly Panel[]): LaminateMass {
  const weighed = panels.map((panel) => ({ panel, outcome: weighPanel(panel) }));
  const sound = weighed.flatMap(({ outcome }) => ('notComputed' in outcome ? [] : [outcome]));
  const total = (part: 'fibre' | 'resin' | 'gelcoat' | 'core' | 'total'): Kilograms =>
    kilograms(sum(sound.map((one) => one[part])));
  return {
    panels: sound,
    fibre: total('fibre'),
    resin: total('resin'),
    gelcoat: total('gelcoat'),
    core: total('core'),
    total: total('total'),
    refused: weighed.flatMap(({ panel, outcome }) =>
      'notComputed' in outcome ? [{ panel, reason: outcome.notComputed }] : [],
    ),
  };
}

function weighPanel(panel: Panel): PanelMass | NotComputed {
  if (!(panel.area > 0 && Number.isFinite(panel.area))) {
    return { notComputed: 'the area must be above 0' };
  }
  const layUp = layUpOf(panel.layers);
  if ('notComputed' in layUp) return layUp;
  const over = (perArea: number): Kilograms => kilograms(perArea * panel.area);
  return {
    panel,
    layUp,
    fibre: over(layUp.fibre),
    resin: over(layUp.resin),
    gelcoat: over(layUp.gelcoat),
    core: over(layUp.core),
    total: over(layUp.total),
  };
}

function whatIsWrong(layer: Layer): string | undefined {
  const fail = (what: string): string => `${layer.name}: ${what}`;
  switch (layer.kind) {
    case 'gelcoat':
      return layer.massPerArea >= 0 ? undefined : fail('a coat cannot weigh less than nothing');
    case 'fabric':
      if (!(layer.fibrePerArea > 0)) return fail('the {fibre} must weigh more than 0');
      return layer.fibreFraction >= 0.1 && layer.fibreFraction <= 0.8
        ? undefined
        : fail('{fibre} by mass must be from 10 % to 80 %');
    case 'core':
      return layer.thickness > 0 && layer.density > 0 && layer.uptakePerFace >= 0
        ? undefined
        : fail('thickness and density must be above 0, uptake not below');
    case 'ready-made': {
      const { thickness, fibrePerArea, resinPerArea: resin, gelcoatPerArea, corePerArea } = layer;
      const masses = [fibrePerArea, resin, gelcoatPerArea, corePerArea];
      return thickness > 0 && masses.every((one) => one >= 0) && sum(masses) > 0
        ? undefined
        : fail('thickness and mass must be above 0, and no part of it below');
    }
  }
}
