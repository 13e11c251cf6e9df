import { describe, expect, it } from 'vitest';
import {
  buildSheetView,
  handoverView,
  type Letter,
  orderPageView,
  type YardPage,
  quoteView,
} from '../../src/documents/index.ts';
import { customerFigures, type Figures, figuresData } from '../../src/figures/index.ts';
import { overviewOrders } from '../../src/plan/index.ts';
import type { IsoDate } from '../../src/units/index.ts';
import { cellsOf, panelOf, rowOf, tablesOf, underOf, wordsOf } from './letters.ts';
import { catalogue, orders } from '../demonstration/workspace.ts';

const { quoteDays } = catalogue.yard.value;
const { orders: states } = overviewOrders(orders, quoteDays, '2026-11-26' as IsoDate);

/** The documents of one order, each made of the same figures. */
function documentsOf(figures: Figures, page: YardPage) {
  const font = { fontCss: '' };
  const [quote, pack, sheet] = [
    quoteView(customerFigures(figures), font),
    handoverView(customerFigures(figures), font),
    buildSheetView(figures, font),
  ];
  const words = (id: string): string => wordsOf(page, id).join(' ');
  const cell = (id: string, caption: RegExp, row: RegExp, column: number): string => {
    const table = tablesOf(page, id).find((one) => caption.test(one.caption ?? ''));
    return table?.rows.map(cellsOf).find(([name = '']) => row.test(name))?.[column] ?? '';
  };
  return {
    quote: figureOf(quote, 'figures'),
    driveAway: panelOf(quote).value,
    carries: figureOf(pack, 'carries'),
    mass: (condition: string) => ({
      computed: rowOf(pack, 'masses', condition)[1],
      contains: underOf(pack, 'masses', condition),
    }),
    floats: (label: string) => figureOf(pack, 'floats')(label)?.value,
    lines: wordsOf(pack, 'floats', 'list').join(' '),
    fact: (label: string) => sheet.facts.find((one) => one.label === label)?.value ?? '',
    target: (condition: string) => rowOf(sheet, 'masses', condition)[1],
    words,
    cell,
  };
}

/** A figure of a letter by its label. */
const figureOf = (letter: Letter, id: string) => (label: string) => {
  const [, value, detail] = rowOf(letter, id, label);
  return value === undefined ? undefined : { value, detail };
};

type Documents = ReturnType<typeof documentsOf>;
/** What a document prints of a figure: a text with the number in it, and where in the text it stands. */
type Printed = readonly [document: string, text: string | undefined, find?: RegExp];

const NUMBER = /(-?[\d,]+(?:\.\d+)?)/;
const people = (figures: Figures): number => figures.build.order.boat.people;

/** Every key figure: its name in figures.json, how that is turned to what is printed, and where it is printed. */
const KEY_FIGURES: readonly (readonly [
  name: string,
  value: (data: ReturnType<typeof figuresData>, figures: Figures) => unknown,
  printed: (all: Documents, figures: Figures) => readonly Printed[],
])[] = [
  [
    'drive-away price',
    (data) => data['price.drive-away']?.value,
    ({ driveAway, cell }) => [
      ['quote', driveAway],
      ['page', cell('costing', /final price/, /^\{Final price\}$/, 1)],
    ],
  ],
  [
    'mass ready to launch',
    (data) => data['mass.ready']?.value,
    ({ quote, mass, target }) => [
      ['quote', quote('Mass, ready to launch')?.value],
      ['handover', mass('Ready to launch')?.computed],
      ['build sheet', target('Ready to launch')],
    ],
  ],
  [
    'mass on the trailer, with gear',
    (data) => data['mass.on-trailer']?.value,
    ({ quote, mass, carries, words, cell }) => [
      ['quote', quote('Mass to tow')?.value],
      ['handover', mass('On its trailer')?.contains, /each: ([\d,]+)/],
      ['handover, carries', carries('Trailer with its load')?.detail, /ordered: ([\d,]+)/],
      ['page', words('towing'), /% of ([\d,]+)/],
      ['page, table', cell('towing', /limit/, /^boat and trailer together/, 1)],
    ],
  ],
  [
    'mass on the trailer, no gear',
    (data) => data['gate.trailer.expected']?.value,
    ({ mass, target }) => [
      ['handover', mass('On its trailer')?.computed],
      ['build sheet', target('On the trailer')],
    ],
  ],
  [
    'load',
    (data) => data['mass.load']?.value,
    ({ quote, carries, cell }) => [
      ['quote', quote('Load as ordered')?.value],
      ['handover', carries('Most load')?.detail, /gear each: ([\d,]+)/],
      ['page', cell('limits', /side by side/, /^As ordered, loads as the shop/, 2)],
    ],
  ],
  [
    'people rated',
    (_, { build }) => build.hull.ratings.people,
    ({ quote, carries, fact, cell }) => [
      ['quote', quote('People')?.detail, /At most (\d+)/],
      ['handover', carries('Most people')?.value],
      ['build sheet', fact('Capacity plate'), /^(\d+) people/],
      ['page', cell('limits', /side by side/, /^The shop’s rating/, 1)],
    ],
  ],
  [
    'load rated',
    (_, { build }) => build.hull.ratings.load,
    ({ quote, carries, fact, cell }) => [
      ['quote', quote('Load as ordered')?.detail, /At most ([\d,]+)/],
      ['handover', carries('Most load')?.value],
      ['build sheet', fact('Capacity plate'), /people, ([\d,]+)/],
      ['page', cell('limits', /side by side/, /^The shop’s rating/, 2)],
    ],
  ],
  [
    'draught, mm',
    (data) => thousand(data['float.fully-loaded.draught-deepest']?.value),
    ({ quote, floats }) => [
      ['quote', quote('{Draught}, fully loaded')?.value],
      ['handover', floats('{Draught}, fully loaded')],
    ],
  ],
  [
    'lowest freeboard, mm',
    (data) => thousand(data['float.fully-loaded.freeboard-lowest']?.value),
    ({ quote, floats, lines, cell }) => [
      ['quote', quote('Freeboard, fully loaded')?.value],
      ['handover', floats('Freeboard, fully loaded')],
      ['handover, sentence', lines, /Fully loaded, with [^.]*(?:\.\d[^.]*)* is ([\d,]+)/],
      ['page, table', cell('floating', /Freeboard/, /^Fully loaded$/, 4)],
    ],
  ],
  [
    'trim, degrees either way',
    (data) => magnitude(data['float.fully-loaded.trim']?.value),
    ({ quote, lines, cell }) => [
      ['quote', quote('Trim, fully loaded')?.value],
      ['handover', lines, /Fully loaded, with [^.]*trims ([\d.]+)/],
      ['page', cell('floating', /\{Draught\}/, /^Fully loaded$/, 3)],
      ['page, moves', cell('floating', /changes the trim/, /^As ordered$/, 2)],
    ],
  ],
  ...(['low', 'high'] as const).map((end, index): (typeof KEY_FIGURES)[number] => {
    const find = index === 0 ? /(\d+) to \d+/ : /\d+ to (\d+)/;
    return [
      `speed, ${end} end, kn`,
      (data) => (data['drive.loaded.slow-speed'] ?? data['drive.loaded.speed'])?.[end],
      ({ quote, fact, cell }, figures) => [
        ['quote', (quote('Speed before planing') ?? quote('Speed, estimated'))?.value, find],
        [
          'build sheet',
          new RegExp(String.raw`\d+ to \d+.kn with ${people(figures)} aboard`).exec(
            fact('Speed on trial'),
          )?.[0],
          find,
        ],
        ['page', cell('speed', /as ordered/, /^loaded$/, 2), find],
      ],
    ];
  }),
  [
    'range, nmi',
    (data) => data['drive.cruise.range']?.value,
    ({ quote, cell }) => [
      ['quote', quote('Range, estimated')?.value],
      ['page', cell('speed', /^Loaded, on/, /^cruise$/, 3)],
    ],
  ],
  [
    'mass on the ball',
    (data) => data['tow.on-ball']?.value,
    ({ quote, fact, words }) => [
      ['quote', quote('Mass on the tow ball')?.value],
      ['build sheet', fact('Winch post'), /ball: ([\d,]+)/],
      ['page', words('towing'), /On the ball: ([\d,]+)/],
    ],
  ],
  [
    'length on the road, m',
    (data) => data['tow.length']?.value,
    ({ quote, fact, words }) => [
      ['quote', quote('Overall length when towed')?.value],
      ['build sheet', fact('On the road'), /([\d.]+).m from ball to end/],
      ['page', words('towing'), /Length when towed: ([\d.]+)/],
    ],
  ],
];

const thousand = (value: unknown): unknown => (typeof value === 'number' ? value * 1000 : value);
const magnitude = (value: unknown): unknown =>
  typeof value === 'number' ? Math.abs(value) : value;

const numbers = ([document, text = '', find = NUMBER]: Printed): readonly (readonly [
  string,
  string,
])[] => {
  const found = find.exec(text)?.[1];
  return found === undefined ? [] : [[document, found]];
};

const all = states.flatMap((state) => {
  const { figures } = state.entry;
  const page = orderPageView(state, '');
  return figures && page
    ? [{ number: figures.build.order.number, figures, documents: documentsOf(figures, page) }]
    : [];
});

describe.each(KEY_FIGURES)('%s', (_, valueOf, printed) => {
  it.each(all)('is one number wherever it is printed: $number', ({ figures, documents }) => {
    const found = printed(documents, figures).flatMap(numbers);
    expect(new Set(found.map(([, text]) => text)).size, JSON.stringify(found)).toBeLessThan(2);
    const value = valueOf(figuresData(figures), figures);
    for (const [document, text] of found) {
      const decimals = /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
      // Half of the last digit printed, and the rounding of the data.
      const within = 0.5 / 10 ** decimals + 0.006;
      expect(Math.abs(Number(text.replaceAll(',', '')) - Number(value)), document).toBeLessThan(
        within,
      );
    }
  });

  it('is looked for where some order prints it', () => {
    const places = new Set(
      all.flatMap(({ figures, documents }) => printed(documents, figures).map(([place]) => place)),
    );
    const hit = new Set(
      all.flatMap(({ figures, documents }) =>
        printed(documents, figures)
          .flatMap(numbers)
          .map(([place]) => place),
      ),
    );
    expect([...hit]).toEqual([...places]);
  });
});
