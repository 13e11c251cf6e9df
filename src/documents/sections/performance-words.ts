import type { CustomerBuild, SpeedBand } from '../../figures/index.ts';
import {
  createFormatter,
  type Formatter,
  LITRE_AN_HOUR,
  NAUTICAL_MILE,
  NO_BREAK,
  UNIT_KINDS,
} from '../../units/index.ts';

type Maybe<Value> = Value | { readonly notComputed: string };

/** Prints speeds, angles, flows and ranges; what is not computed prints why. */
export interface PerformancePrinter {
  readonly format: Formatter;
  /** "24.1 kn". */
  readonly knots: (speed: Maybe<number>) => string;
  /** "22 to 26 kn". */
  readonly band: (speed: SpeedBand) => string;
  /** "3.3°". */
  readonly degrees: (angle: Maybe<number>) => string;
  /** "12.7 L/h". */
  readonly flow: (flow: Maybe<number>) => string;
  /** "51 nmi". */
  readonly range: (range: Maybe<number>) => string;
}

/** The printer of a workspace. Speeds are in knots and ranges in nautical miles whatever its units. */
export function performancePrinter({
  yard,
}: {
  readonly yard: Pick<CustomerBuild['yard'], 'locale' | 'units'>;
}): PerformancePrinter {
  const format = createFormatter(yard.locale, yard.units);
  const print =
    (unit: string, factor: number, decimals: number) =>
    (value: Maybe<number>): string =>
      typeof value === 'object'
        ? notComputed(value)
        : `${format.number(value / factor, decimals)}${unit}`;
  const whole = (speed: number): string => format.number(speed / UNIT_KINDS.speed.kn, 0);
  const isMetric = yard.units === 'metric';
  const gallon = UNIT_KINDS.volume['US gal'] / UNIT_KINDS.duration.h;
  return {
    format,
    knots: print(`${NO_BREAK}kn`, UNIT_KINDS.speed.kn, 1),
    band: ({ low, high }) => `${whole(low)} to ${whole(high)}${NO_BREAK}kn`,
    degrees: print('°', UNIT_KINDS.angle.deg, 1),
    flow: isMetric
      ? print(`${NO_BREAK}L/h`, LITRE_AN_HOUR, 1)
      : print(`${NO_BREAK}US${NO_BREAK}gal/h`, gallon, 1),
    range: print(`${NO_BREAK}nmi`, NAUTICAL_MILE, 0),
  };
}

/** "not computed: why". */
export const notComputed = ({ notComputed: why }: { readonly notComputed: string }): string =>
  `not computed: ${why}`;
