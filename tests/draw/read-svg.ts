/** A circle of a drawing, mm. */
export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** The numbered keys of a drawing, in the order in which they were drawn. */
export function keysOf(svg: string): readonly Circle[] {
  const pattern = /<circle class="key" cx="([^"]+)" cy="([^"]+)" r="([^"]+)"/g;
  return Array.from(svg.matchAll(pattern), ([, x, y, r]) => ({
    x: Number(x),
    y: Number(y),
    r: Number(r),
  }));
}

/** Texts as they stand in the drawing, unescaped. */
export function textsOf(svg: string): readonly string[] {
  return Array.from(svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g), ([, text = '']) =>
    text
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&quot;', '"')
      .replaceAll('&amp;', '&'),
  );
}

const TAG = /^<(\/?)([A-Za-z][\w:-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/;
const REFERENCE = /&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[\dA-Fa-f]+);)/;

/** What is not well-formed in a text of elements, attributes and character data; empty when all of it is. */
export function malformed(xml: string): string {
  const open: string[] = [];
  let rest = xml;
  if (REFERENCE.test(xml)) return 'a stray &';
  while (rest !== '') {
    const next = rest.indexOf('<');
    if (next !== 0) {
      if (open.length === 0 && rest.slice(0, next === -1 ? undefined : next).trim() !== '') {
        return 'text outside the root';
      }
      rest = next === -1 ? '' : rest.slice(next);
      continue;
    }
    const [whole, closing, name = '', attributes = '', empty] = TAG.exec(rest) ?? [];
    if (whole === undefined) return `no tag: ${rest.slice(0, 40)}`;
    const names = Array.from(attributes.matchAll(/([\w:-]+)="/g), ([, attribute]) => attribute);
    if (new Set(names).size < names.length) return `an attribute twice in ${name}`;
    if (closing === '/') {
      if (open.pop() !== name) return `</${name}> closes another`;
    } else if (empty !== '/') {
      open.push(name);
    }
    rest = rest.slice(whole.length);
  }
  return open.length === 0 ? '' : `not closed: ${open.join(', ')}`;
}
