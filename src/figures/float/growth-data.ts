import { datumOf } from '../datum.ts';
import type { GrowthFigures } from './types.ts';
import type { FigureDatum } from '../types.ts';

const EFFECT = 'difference of two equilibria, 10 kg of the boat apart';
const DEGREE = Math.PI / 180;

/** Growth over her life, by stable dotted names. */
export function growthData({
  allowed,
  effect,
  limits,
  first,
}: GrowthFigures): Record<string, FigureDatum> {
  const mm = (value: number): FigureDatum => datumOf(value * 1000, 'mm', EFFECT, 2);
  return {
    'float.growth.allowed': datumOf(allowed, 'kg', 'share of the completed boat', 3),
    ...(effect && {
      'float.growth.effect.draught-aft': mm(effect.draughtAft),
      'float.growth.effect.draught-fore': mm(effect.draughtFore),
      'float.growth.effect.trim': datumOf(effect.trim / DEGREE, 'deg', EFFECT, 4),
      'float.growth.effect.freeboard-lowest': mm(effect.freeboard),
      ...(effect.metacentricHeight !== undefined && {
        'float.growth.effect.gm': mm(effect.metacentricHeight),
      }),
    }),
    ...Object.fromEntries(
      limits.map(({ name, margin }, index) => [
        `float.growth.limit.${index + 1}`,
        margin.outcome === 'met'
          ? datumOf(margin.growth, 'kg', `until ${name}`, 1)
          : { value: margin.outcome, unit: 'text', method: `until ${name}` },
      ]),
    ),
    ...(first && {
      'float.growth.first': datumOf(first.growth, 'kg', `until ${first.name}`, 1),
    }),
  };
}
