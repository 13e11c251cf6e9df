import { computeFigures, type Figures } from '../../src/figures/index.ts';
import { OPTIONS, ORDER, YARD, withSections } from '../read/samples.ts';
import { resolveSample } from '../resolve/invented.ts';

export const DEGREE = Math.PI / 180;

/** What a test cannot go on without. */
export function present<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('not computed');
  return value;
}

/** What a test changes in the sample workspace. */
export interface Changes {
  readonly order?: string;
  readonly hull?: readonly (readonly [string | RegExp, string])[];
  readonly options?: string;
  readonly yard?: string;
}

/** A hull of the demonstration's kind in the sample workspace: a box of 4 m by 1.6 m by 0.6 m. */
const BOX = withSections(`  - { x: 0, points: [[0, 0], [0.8, 0], [0.8, 0.6]] }
  - { x: 2, points: [[0, 0], [0.8, 0], [0.8, 0.6]] }
  - { x: 4, points: [[0, 0], [0.8, 0], [0.8, 0.6]] }
`)
  .replace('beam: 1.7 m', 'beam: 1.6 m')
  .replace('depth: 650 mm', 'depth: 600 mm');

/** Figures of the sample order, in the box. */
export function figuresOf({
  order = ORDER,
  hull = [],
  options = OPTIONS,
  yard = YARD,
}: Changes): Figures {
  const text = hull.reduce((sum, [from, to]) => {
    const changed = sum.replace(from, to);
    if (changed === sum) throw new Error(`${String(from)} is not in the hull`);
    return changed;
  }, BOX);
  const { build, findings } = resolveSample({
    'catalogue/hulls/tern-400.yaml': text,
    'catalogue/options/seats.yaml': options,
    'catalogue/yard.yaml': yard,
    'orders/t-1.yaml': order,
  });
  if (!build) throw new Error(findings.map(({ code, received }) => `${code} ${received}`).join());
  return computeFigures(build, []);
}

/** Codes of what is found. */
export const codes = (changes: Changes): readonly string[] =>
  figuresOf(changes).findings.map(({ code }) => code);

/** The box with another section amidships. */
export const lines = (middle: string): readonly [RegExp, string] => [
  / {2}- \{ x: 2, .*\n/,
  `  - { x: 2, points: ${middle} }\n`,
];
/** An item of 60 kg where a test wants it. */
export const weighted = (at: string, mass = '60 kg'): string =>
  `${ORDER}extras: [{ name: Weight, class: fit-out, free: For a test., mass: ${mass}, at: ${at} }]\n`;
