import type { Figures } from '../figures/index.ts';
import type { QuoteView } from './quote-types.ts';

export interface BoatDrawing {
  readonly pictures: QuoteView['pictures'];
  /** The number of an item in the drawing, by the item's key. */
  readonly numbers: ReadonlyMap<string, string>;
}

/** The boat from the side and from above, with a number where each item is. */
export function drawBoat(_figures: Figures, _fontCss: string): BoatDrawing {
  return { pictures: [], numbers: new Map() };
}
