import type { FigureDatum } from './types.ts';

/** A figure as data, rounded; or why it was not computed. */
export function datumOf(
  value: number | { readonly notComputed: string },
  unit: string,
  method: string,
  decimals: number,
): FigureDatum {
  if (typeof value === 'object')
    return { value: `not computed: ${value.notComputed}`, unit, method };
  return { value: Number(value.toFixed(decimals)) + 0, unit, method };
}
