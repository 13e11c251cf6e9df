import { drawArrangement, drawProfile } from '../../draw/index.ts';
import type { CustomerFigures } from '../../figures/index.ts';
import { formatterOf } from '../../units/index.ts';
import { drawnItems, drawnNumbers, hullShape, outboardShape } from './drawing-input.ts';
import { type CaptionedPicture, pictureOf } from './picture.ts';

export interface BoatDrawing {
  readonly pictures: readonly CaptionedPicture[];
  /** From the side alone, without numbers. */
  readonly profile: CaptionedPicture;
  /** The number of an item in the drawing, by the item's key. */
  readonly numbers: ReadonlyMap<string, string>;
}

/** The boat from the side and from above, with a number where each item is. */
export function drawBoat({ build }: Pick<CustomerFigures, 'build'>, fontCss: string): BoatDrawing {
  const { hull, yard } = build;
  const format = formatterOf(yard);
  const shape = {
    hull: hullShape(build),
    ...outboardShape(build),
    lengthText: format.length(hull.dimensions.length),
    fontCss,
  };
  const drawing = drawArrangement({ ...shape, items: drawnItems(build) });
  const numbers = drawnNumbers(build);
  const keys = numbers.size > 0 ? ' The numbers are those of the items below.' : '';
  const caption = `The ${hull.name} from the side and from above, ${hull.lines.length > 0 ? 'to scale' : 'a sketch of its length, beam and depth'}.${keys}`;
  return {
    pictures: [{ ...pictureOf(drawing), caption }],
    profile: { ...pictureOf(drawProfile(shape)), caption: '' },
    numbers,
  };
}
