import { INCH, QUANTITIES, UNIT_KINDS } from '../units/index.ts';
import type { HullShape } from './types.ts';

/** What distances of a drawing are written in, and what its grids and its ruler step by. */
export interface Measure {
  readonly unit: string;
  /** The word for the steps of the ruler. */
  readonly rulerUnit: string;
  /** Metres in a unit. */
  readonly factor: number;
  /** Decimals of a dimension. */
  readonly decimals: number;
  /** Steps of the grid that things are placed on, of that of the sections, and of the ruler, m. */
  readonly placingStep: number;
  readonly sectionStep: number;
  readonly rulerStep: number;
  /** Bars of the ruler in a step. */
  readonly rulerBars: number;
}

const { mm: MILLIMETRE } = UNIT_KINDS.length;

const METRIC: Measure = {
  ...QUANTITIES.dimension.metric,
  rulerUnit: '{metres}',
  placingStep: 500 * MILLIMETRE,
  sectionStep: 100 * MILLIMETRE,
  rulerStep: 1,
  rulerBars: 2,
};

const US: Measure = {
  ...QUANTITIES.dimension.us,
  rulerUnit: 'feet',
  placingStep: 24 * INCH,
  sectionStep: 4 * INCH,
  rulerStep: 12 * INCH,
  rulerBars: 1,
};

/** What the drawings of a hull are measured in: millimetres, or inches and feet. */
export const measureOf = ({ units }: HullShape): Measure => (units === 'us' ? US : METRIC);

/** A distance without its sign and unit: "1250", or "49.2". */
export function measured(metres: number, { factor, decimals }: Measure): string {
  const share = 10 ** decimals;
  return String(Math.round((Math.abs(metres) / factor) * share) / share);
}
