import type { FigureDatum, Figures } from '../types.ts';

const RULE = 'ISO 12215-5:2008 Annex C, default, not tested';

/** Figures of the lay-ups and of the weigh gates for `figures.json`. */
export function laminateData({
  laminate,
  partLayUps,
  gates,
}: Figures): Readonly<Record<string, FigureDatum>> {
  const data: Record<string, FigureDatum> = {};
  const set = (name: string, value: number, unit: string, method: string): void => {
    data[name] = { value: Number(value.toPrecision(6)), unit, method };
  };
  for (const { stage, expected, tolerance } of gates) {
    set(`gate.${stage}.expected`, expected, 'kg', 'sum of what is aboard by then');
    set(`gate.${stage}.tolerance`, tolerance, 'kg', 'root of the sum of squares of the spreads');
  }
  for (const { item, mass: laid, kit: taken } of partLayUps) {
    const name = item.key.replace(':', '.');
    for (const part of ['total', 'fibre', 'resin', 'gelcoat', 'core'] as const) {
      set(`laminate.${name}.${part}`, laid[part], 'kg', 'area times lay-up');
    }
    for (const { part, inBoat, unit } of taken.lines) {
      set(`laminate.${name}.kit.${part}`, inBoat, unit, 'area times lay-up, without offcuts');
    }
  }
  if ('notComputed' in laminate) return data;
  const { mass, kit, infusion, screening } = laminate;
  for (const part of ['total', 'fibre', 'resin', 'gelcoat', 'core'] as const) {
    set(`laminate.${part}`, mass[part], 'kg', 'area times lay-up');
  }
  for (const { part, inBoat, unit } of kit.lines) {
    set(`laminate.kit.${part}`, inBoat, unit, 'area times lay-up, without offcuts');
  }
  for (const { part, list } of kit.cuts) {
    set(`laminate.cut.${part}`, list.cutArea, 'm2', 'strips nested on the roll');
    set(`laminate.saving.${part}`, list.saving, 'm2', 'area with wastage less what is cut off');
  }
  if (infusion && 'feedLines' in infusion.plan) {
    const { plan } = infusion;
    set('infusion.feed-lines', plan.feedLines, '', 'Darcy in one dimension');
    set('infusion.fill', plan.fillSeconds / 60, 'min', 'Darcy in one dimension');
    set('infusion.limit', plan.limitSeconds / 60, 'min', 'share of the gel time');
    set('infusion.resin', plan.resin, 'kg', 'laminate, mesh and lines');
  }
  if (screening && 'rows' in screening) {
    set('bottom.pressure', screening.pressure.design / 1000, 'kPa', RULE);
    for (const { what, use } of screening.rows) {
      set(`bottom.${what.replace(' ', '-')}`, use, '', RULE);
    }
  }
  return data;
}
