import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cssString } from '../../src/site/css.ts';
import { drawingFontCss, fontCss } from '../../src/site/fonts.ts';

/** Reads a CSS string as the specification says a browser does. */
function readCssString(css: string): string {
  return css
    .slice(1, -1)
    .replaceAll(/\\([0-9a-f]{1,6}) /g, (_, hex: string) => String.fromCodePoint(parseInt(hex, 16)));
}

describe('text in a stylesheet', () => {
  it('is read back as it was, and ends neither its string nor its style element', () => {
    const anyText = fc.string({
      unit: fc.constantFrom('"', '\\', '<', '/', '\n', 'a', '1', 'é', ' '),
    });
    fc.assert(
      fc.property(anyText, (text) => {
        const css = cssString(text);
        expect(readCssString(css)).toBe(text);
        expect(css.slice(1, -1)).not.toMatch(/["<\n]/);
      }),
    );
  });
});

describe('fonts', () => {
  it('come with the page: four faces in two subsets, none fetched', () => {
    expect(fontCss().match(/@font-face/g)).toHaveLength(8);
    expect(fontCss()).not.toMatch(/url\((?!data:font\/woff2)/);
  });

  it('come with a drawing as one face', () => {
    expect(drawingFontCss().match(/@font-face/g)).toHaveLength(1);
  });
});
