import { type Drawing, toDataUri } from '../../draw/index.ts';

/** A drawing as an image with its words: an `<img>` keeps them in the tagged PDF, an `<svg>` does not. */
export interface Picture {
  /** A data: URI. */
  readonly src: string;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
}

/** A drawing with the words that stand under it. */
export interface CaptionedPicture extends Picture {
  readonly caption: string;
}

/** A drawing as an image for a page. */
export function pictureOf(drawing: Drawing): Picture {
  const { alt, width, height } = drawing;
  return { src: toDataUri(drawing), alt, width, height };
}
