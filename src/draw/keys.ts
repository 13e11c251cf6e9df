import { type Anchor, KEY_RADIUS, type PlacedKey } from './place-keys.ts';
import { element, INK, SMALL_TEXT, stroke, words } from './svg.ts';

/** Half of a cap's height, as a share of the text's size: it centres a number in its circle. */
const HALF_CAP = 0.33;

/** Numbers in circles; a key that had to move points to its place. */
export function drawKeys(keys: readonly PlacedKey[]): string {
  return [...keys.map(leader), ...keys.map(circle)].join('\n');
}

/** An upright cross at each place. */
export function drawMarks(anchors: readonly Anchor[]): string {
  const arm = 1;
  const heavy = { 'stroke-width': 0.3 };
  return anchors
    .map(
      ({ x, y }) =>
        stroke([x - arm, y], [x + arm, y], heavy) + stroke([x, y - arm], [x, y + arm], heavy),
    )
    .join('\n');
}

function leader({ x, y, keyX, keyY }: PlacedKey): string {
  const away = Math.hypot(keyX - x, keyY - y);
  if (away === 0) return '';
  const dot = element('circle', { cx: x, cy: y, r: 0.5, fill: INK.line });
  return `${stroke([x, y], [keyX, keyY])}${dot}`;
}

function circle({ number, keyX, keyY }: PlacedKey): string {
  const ring = element('circle', {
    class: 'key',
    cx: keyX,
    cy: keyY,
    r: KEY_RADIUS,
    fill: INK.paper,
    stroke: INK.line,
    'stroke-width': 0.25,
  });
  const middle = { 'text-anchor': 'middle' };
  return ring + words(number, keyX, keyY + SMALL_TEXT * HALF_CAP, middle);
}
