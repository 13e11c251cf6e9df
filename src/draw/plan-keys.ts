import { element, INK, stroke, words } from './svg.ts';

/** What goes on in a stretch of time: each has a fill of its own, told apart without colour. */
export type BarKind = 'mould' | 'cure' | 'fit' | 'trial' | 'people' | 'wait';

const DARK = '#444444';
const HATCH = 'plan-hatch';
const DOTS = 'plan-dots';

/** Patterns that the fills below name: ink on paper, so that a photocopy keeps them apart. */
export const PATTERNS = element(
  'defs',
  {},
  pattern(
    HATCH,
    element('path', {
      d: 'M-0.35 0.35L0.35 -0.35M0 1.4L1.4 0M1.05 1.75L1.75 1.05',
      stroke: INK.line,
      'stroke-width': 0.25,
    }),
  ) + pattern(DOTS, element('circle', { cx: 0.7, cy: 0.7, r: 0.24, fill: INK.line })),
);

function pattern(id: string, inside: string): string {
  return element(
    'pattern',
    { id, width: 1.4, height: 1.4, patternUnits: 'userSpaceOnUse' },
    element('rect', { width: 1.4, height: 1.4, fill: INK.paper }) + inside,
  );
}

/** Fill of a bar and ink of what is written into it. */
export const BAR_FILLS: Readonly<Record<BarKind, { readonly fill: string; readonly ink: string }>> =
  {
    mould: { fill: DARK, ink: INK.paper },
    cure: { fill: `url(#${HATCH})`, ink: INK.line },
    fit: { fill: `url(#${DOTS})`, ink: INK.line },
    trial: { fill: INK.paper, ink: INK.line },
    people: { fill: INK.tint, ink: INK.line },
    wait: { fill: INK.paper, ink: INK.line },
  };

/** Height of the legend, mm. */
export const LEGEND_HEIGHT = 6;

const ENTRIES: readonly { readonly kind: BarKind; readonly text: string; readonly wide: number }[] =
  [
    { kind: 'mould', text: 'in the {mould}', wide: 27 },
    { kind: 'cure', text: 'curing', wide: 20 },
    { kind: 'fit', text: 'fitting out, wiring, engine', wide: 43 },
    { kind: 'trial', text: 'trial and handover', wide: 34 },
    { kind: 'people', text: 'somebody at work', wide: 34 },
  ];

/** What the fills and marks mean, in one line. */
export function legend(left: number, top: number): readonly string[] {
  let x = left;
  const swatches = ENTRIES.flatMap(({ kind, text, wide }) => {
    const at = x;
    x += wide;
    return [
      element('rect', {
        x: at,
        y: top,
        width: 6,
        height: 3,
        fill: BAR_FILLS[kind].fill,
        stroke: INK.line,
        'stroke-width': 0.25,
      }),
      words(text, at + 7.2, top + 2.4),
    ];
  });
  const triangle = element('path', {
    d: `M${x + 1.5} ${top + 2.8}l-1.5 -2.6h3z`,
    fill: INK.line,
  });
  const dashed = stroke([x + 21, top - 0.4], [x + 21, top + 3.4], {
    'stroke-width': 0.45,
    'stroke-dasharray': '2 1',
  });
  return [
    ...swatches,
    triangle,
    words('promised', x + 4, top + 2.4),
    dashed,
    words('today', x + 22.5, top + 2.4),
  ];
}
