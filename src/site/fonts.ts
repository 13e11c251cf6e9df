import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

interface Face {
  readonly family: string;
  readonly package: string;
  readonly weight: number;
}

const SANS = { family: 'Source Sans 3', package: 'source-sans-3' };
const SERIF = { family: 'Source Serif 4', package: 'source-serif-4' };

const FACES: readonly Face[] = [
  { ...SANS, weight: 400 },
  { ...SANS, weight: 600 },
  { ...SANS, weight: 700 },
  { ...SERIF, weight: 600 },
];

/** What each subset covers, as its package says. */
const SUBSETS = {
  latin:
    'U+0000-00FF, U+0131, U+0152-0153, U+02BB-02BC, U+02C6, U+02DA, U+02DC, U+0304, U+0308, U+0329, U+2000-206F, U+20AC, U+2122, U+2191, U+2193, U+2212, U+2215, U+FEFF, U+FFFD',
  'latin-ext':
    'U+0100-02BA, U+02BD-02C5, U+02C7-02CC, U+02CE-02D7, U+02DD-02FF, U+0304, U+0308, U+0329, U+1D00-1DBF, U+1E00-1E9F, U+1EF2-1EFF, U+2020, U+20A0-20AB, U+20AD-20C0, U+2113, U+2C60-2C7F, U+A720-A7FF',
} as const;
type Subset = keyof typeof SUBSETS;

let pageFonts: string | undefined;
let drawingFont: string | undefined;

/** `@font-face` rules of every family and weight that pages use, with the fonts themselves in them. */
export function fontCss(): string {
  pageFonts ??= FACES.flatMap((face) => [
    fontFace(face, 'latin'),
    fontFace(face, 'latin-ext'),
  ]).join('\n');
  return pageFonts;
}

/** The one font of drawings: an image cannot use the fonts of the page that it stands in. */
export function drawingFontCss(): string {
  drawingFont ??= fontFace({ ...SANS, weight: 400 }, 'latin');
  return drawingFont;
}

function fontFace({ family, package: name, weight }: Face, subset: Subset): string {
  const file = `${name}-${subset}-${weight}-normal.woff2`;
  const url = import.meta.resolve(`@fontsource/${name}/files/${file}`);
  const data = readFileSync(fileURLToPath(url)).toString('base64');
  return (
    `@font-face{font-family:'${family}';font-weight:${weight};font-style:normal;font-display:block;` +
    `src:url(data:font/woff2;base64,${data}) format('woff2');unicode-range:${SUBSETS[subset]}}`
  );
}
