import type { Drawing } from './types.ts';

/** Inks of the drawings; all of them legible in black and white. */
export const INK = {
  line: '#1a1d1c',
  quiet: '#56605d',
  rule: '#b9c2bf',
  tint: '#eef2f1',
  paper: '#ffffff',
} as const;

/** Height of the smallest text, mm: about 7 pt. */
export const SMALL_TEXT = 2.6;

/** A number of a drawing: two decimals, never "-0". */
export const fixed = (value: number): string => String(Math.round(value * 100) / 100);

/** Text as XML holds it. Characters that XML cannot hold are left out. */
export function escapeXml(text: string): string {
  return text
    .replaceAll(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

type Attributes = Readonly<Record<string, string | number>>;

/** One SVG element; numbers are rounded, texts escaped, `inside` stands as it is. */
export function element(name: string, attributes: Attributes, inside = ''): string {
  const written = Object.entries(attributes)
    .map(
      ([key, value]) => ` ${key}="${typeof value === 'number' ? fixed(value) : escapeXml(value)}"`,
    )
    .join('');
  return inside === '' ? `<${name}${written}/>` : `<${name}${written}>${inside}</${name}>`;
}

/** A line of text with its baseline at a place of the sheet. */
export function words(text: string, x: number, y: number, more: Attributes = {}): string {
  const attributes = { x, y, 'font-size': SMALL_TEXT, fill: INK.line, ...more };
  return element('text', attributes, escapeXml(text));
}

/** A straight line between two places of the sheet. */
export function stroke(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  more: Attributes = {},
): string {
  return element('line', { x1, y1, x2, y2, stroke: INK.line, 'stroke-width': 0.2, ...more });
}

interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly alt: string;
  /** `@font-face` rules: an image cannot use the fonts of its page. */
  readonly fontCss: string;
  readonly body: readonly string[];
}

/** The drawing on its sheet; the height is rounded up to whole millimetres. */
export function sheet({ width, height, alt, fontCss, body }: Sheet): Drawing {
  const whole = Math.ceil(height);
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${width} ${whole}`,
    width: `${width}mm`,
    height: `${whole}mm`,
    'font-family': "'Source Sans 3', 'Helvetica Neue', Arial, sans-serif",
  };
  // The letters of a ligature are lost to whoever searches the PDF or has it read out.
  const style = element('style', {}, `${escapeXml(fontCss)}text{font-variant-ligatures:none}`);
  const paper = element('rect', { width, height: whole, fill: INK.paper });
  const svg = element('svg', attributes, [style, paper, ...body].join('\n'));
  return { svg, width, height: whole, alt };
}

/** The drawing as a `data:` URI for an `<img>`. */
export function toDataUri({ svg }: Drawing): string {
  return `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
}
