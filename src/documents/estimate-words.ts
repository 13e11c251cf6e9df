import type { Figures } from '../figures/index.ts';
import { createFormatter, type Formatter, UNIT_KINDS } from '../units/index.ts';
import { figureColumn, flagRow, plainRow, type SectionTable, textColumn } from './section.ts';

/** A value against a limit, as the rooms give it. */
interface Margin {
  readonly name: string;
  readonly value: number;
  readonly limit: number;
  readonly left: number;
  readonly unit: string;
  readonly holds: boolean;
}

/** What the sections of estimates print with. */
export interface EstimatePrinter {
  readonly format: Formatter;
  /** "24.3 kn". */
  readonly knots: (speed: number) => string;
  /** From radians: "4.2°". */
  readonly degrees: (angle: number) => string;
}

/** The printer of an order's yard. */
export function estimatePrinter({ yard }: Figures['build']): EstimatePrinter {
  const format = createFormatter(yard.locale, yard.units);
  return {
    format,
    knots: (speed) => `${format.number(speed / UNIT_KINDS.speed.kn, 1)}\u00A0kn`,
    degrees: (angle) => `${format.number(angle / UNIT_KINDS.angle.deg, 1)}°`,
  };
}

/** A figure in words, or why there is none. */
export function textOf<Known extends object | number>(
  figure: Known | { readonly notComputed: string },
  print: (known: Known) => string,
): string {
  return isLacking(figure) ? `not computed: ${figure.notComputed}` : print(figure);
}

const isLacking = (figure: object | number): figure is { readonly notComputed: string } =>
  typeof figure === 'object' && 'notComputed' in figure;

/** Values against their limits; what passes its limit is flagged. */
export function marginTable(
  caption: string,
  margins: readonly Margin[],
  format: Formatter,
): SectionTable {
  const decimals: Readonly<Record<string, number>> = { kg: 0, W: 0, '°': 1, '': 3 };
  return {
    caption,
    columns: [
      textColumn('What'),
      figureColumn('Value'),
      figureColumn('Limit'),
      figureColumn('Left'),
      textColumn('Unit'),
      textColumn('Holds'),
    ],
    rows: margins.map(({ name, value, limit, left, unit, holds }) => {
      const places = decimals[unit] ?? 2;
      return (holds ? plainRow : flagRow)(
        name,
        format.number(value, places),
        format.number(limit, places),
        format.number(left, places),
        unit,
        holds ? 'yes' : 'no',
      );
    }),
  };
}
