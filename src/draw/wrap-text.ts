/** Widths of characters in a text face, as shares of its size; wide ones first, then narrow ones. */
const WIDE = /[MWmw@%—]/;
const NARROW = /[iIljtfr.,;:!'|()[\]\s]/;
const UPPER = /[A-Z0-9&]/;

/**
 * How wide a text is about, as a multiple of its size.
 *
 * @source an estimate on the safe side: for a humanist sans face as measured by eye, no source
 */
export function widthOf(text: string): number {
  return Array.from(text).reduce((width, character) => width + widthOfOne(character), 0);
}

function widthOfOne(character: string): number {
  if (WIDE.test(character)) return 0.9;
  if (NARROW.test(character)) return 0.34;
  if (UPPER.test(character)) return 0.62;
  return character < '\u0250' ? 0.56 : 1;
}

/** Between a number as typed and its unit, or a count and "×". */
const INSIDE_QUANTITY =
  /(?<=(?:^|\s)\d[\d.,]*) (?=(?:[A-Za-z%°×][A-Za-z0-9/²³]{0,3})(?:[\s,.;)]|$))/g;

/**
 * A text over as many lines as it takes; a word wider than a line is broken. A no-break space holds words together,
 * and a number keeps its unit.
 *
 * @param width - of a line, as a multiple of the text's size
 * @returns one line at least
 */
export function wrapText(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text
    .replace(INSIDE_QUANTITY, '\u00A0')
    .split(/[ \t\r\n]+/)
    .flatMap((one) => pieces(one, width))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(longer) > width) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  return [...lines, line];
}

function pieces(word: string, width: number): readonly string[] {
  const found: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && widthOf(piece + character) > width) {
      found.push(piece);
      piece = '';
    }
    piece += character;
  }
  return piece === '' ? found : [...found, piece];
}
