import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fontCss } from './fonts.ts';
import { TEMPLATES } from './folders.ts';

/** The text of one of our stylesheets; `fonts` is the one that carries the fonts. */
export function stylesheet(name: string): string {
  return name === 'fonts'
    ? fontCss()
    : readFileSync(join(TEMPLATES, 'styles', `${name}.css`), 'utf8');
}

/**
 * A text as a quoted CSS string that ends neither itself nor the `<style>` that it stands in.
 *
 * @source CSS Syntax Module Level 3, 4.3.7: an escape is a backslash, hexadecimal digits and a space
 */
export function cssString(text: string): string {
  const safe = text.replaceAll(
    /["\\<>&\p{Cc}]/gu,
    (character) => `\\${character.charCodeAt(0).toString(16)} `,
  );
  return `"${safe}"`;
}
