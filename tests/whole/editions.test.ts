import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pageHead } from '../../src/documents/sections/head.ts';
import { EDITED_WORDS } from '../../src/words/index.ts';
import { Shop } from '../issued/shop.ts';
import { resolveSample } from '../resolve/invented.ts';
import { CHARGES, ORDER, OUTBOARDS, PARTS, TRAILERS, workspaceOf, YARD } from '../read/samples.ts';

const SOLD = `${ORDER.replace('status: enquiry', 'status: quoted')
  .replace('people: 3', 'people: 1')
  .replace(
    'enquiry: 2026-03-14',
    'enquiry: 2026-03-14\n  quoted: 2026-03-20',
  )}outboard: { model: outboard-20, shaft: long }
trailer: trailer-750
tow: { vehicle: { kerb: 1500 kg, braked: 1500 kg, unbraked: 750 kg, onBall: 100 kg } }
`;

/** The sample shop in another place: its locale, units, currency and tax. */
const shopIn = (currency: string, ...settings: readonly (readonly [string, string])[]) => ({
  'orders/t-1.yaml': SOLD,
  'catalogue/yard.yaml': settings.reduce(
    (text, [from, to]) => text.replace(from, to),
    YARD.replace('AUD', currency),
  ),
  'catalogue/trailers.yaml': `${TRAILERS.trimEnd()}\n    axle: 3 m\n    centre: 2.4 m\n    axleRating: 800 kg\n    tyreRating: 450 kg\n`,
  'catalogue/charges.yaml': CHARGES,
  'catalogue/outboards.yaml': OUTBOARDS.replace('Outboard 20 kW', 'Outboard'),
  'catalogue/parts/acme-parts.csv': PARTS.replaceAll('AUD', currency)
    .replace(', 450 g/m2', '')
    .replace(',m2,', currency === 'USD' ? ',yd2,' : ',m2,'),
});

const US = shopIn(
  'USD',
  ['en-AU', 'en-US\nunits: us'],
  ['rate: 10%\n  pricesInclude: true', 'rate: 7.25%\n  pricesInclude: false'],
  ['GST', 'Sales tax'],
);
const UK = shopIn('GBP', ['en-AU', 'en-GB'], ['rate: 10%', 'rate: 20%'], ['GST', 'VAT']);

/** What a page says: its words, and those of the drawings in it; no style, no address. */
function saidOn(html: string): string {
  const bare = (text: string): string => text.replaceAll(/<style>[^]*?<\/style>/g, '');
  const drawings = [...html.matchAll(/src="data:image\/svg\+xml;charset=utf-8,([^"]*)"/g)];
  const alts = [...html.matchAll(/alt="([^"]*)"/g)].map(([, alt = '']) => alt);
  return [bare(html), ...drawings.map(([, svg = '']) => bare(decodeURIComponent(svg)))]
    .map((text) => text.replaceAll(/<[^>]*>/g, ' '))
    .concat(alts)
    .join(' ')
    .replaceAll(/\s+/g, ' ');
}

/** The pages of a shop by name, the documents of its order and the lists of the yard. */
function pagesOf(files: ReturnType<typeof shopIn>): ReadonlyMap<string, string> {
  const pages = new Map<string, string>();
  let shop: Shop | undefined;
  beforeAll(async () => {
    shop = new Shop(workspaceOf(files));
    await shop.on('2026-03-20', 'build', '--no-pdf');
    const site = path.join(shop.folder, '_site');
    for (const name of readdirSync(site, { recursive: true, encoding: 'utf8' }))
      if (name.endsWith('.html'))
        pages.set(name, saidOn(readFileSync(path.join(site, name), 'utf8')));
    pages.set('what was said', shop.said);
  });
  afterAll(() => shop?.remove());
  return pages;
}

/** All but the pages that name fields of files, places of rules and the units of sources as they are. */
const ownPages = (pages: ReadonlyMap<string, string>): ReadonlyMap<string, string> =>
  new Map([...pages].filter(([name]) => !/^yard\/(?:checks|fields|methods)\./.test(name)));

const found = (pages: ReadonlyMap<string, string>, what: RegExp): readonly string[] =>
  [...pages].flatMap(([name, text]) =>
    [...text.matchAll(what)].map(({ 0: hit, index }) => {
      const about = text.slice(Math.max(0, index - 30), index + hit.length + 20);
      return `${name}: ${about}`;
    }),
  );

const METRIC =
  /\d[ \u00A0](?:kg|g|mm|cm|m|m²|m³|L|mL|kW|W|km\/h|L\/h|L\/min|N|kN|nmi|°C|kPa)(?![\w/²³])/g;
/** A standard's own definitions. */
const QUOTED = /people at 75 kg with 20 kg of effec|shorter than 8 m/;
const bareWords = (words: readonly string[]): RegExp =>
  new RegExp(`\\b(?:${words.join('|')})\\b`, 'gi');

describe('a shop in the United States', () => {
  const pages = pagesOf(US);

  it('has all documents of its order', () => {
    expect([...pages.keys()].filter((name) => name.includes('T-1')).toSorted()).toEqual([
      'customer/T-1/quote.html',
      'yard/T-1/build-sheet.html',
      'yard/T-1/handover.html',
      'yard/T-1/order.html',
    ]);
  });

  it('prints no metric unit', () => {
    expect(found(ownPages(pages), METRIC).filter((about) => !QUOTED.test(about))).toEqual([]);
  });

  it('prints its own words, none of the British ones and no gap for one', () => {
    const read = new Map([...pages].filter(([name]) => name !== 'yard/fields.html'));
    expect(found(read, bareWords(EDITED_WORDS))).toEqual([]);
    expect(pages.get('yard/fields.html')).toContain('Fiber by mass of the cured layer');
    expect(found(pages, /\{[A-Za-z ]+\}|%7B/g)).toEqual([]);
    const quote = pages.get('customer/T-1/quote.html') ?? '';
    expect(quote).toContain('Draft, fully loaded');
    expect(quote).toContain('Total price');
    expect(quote).toContain('Brakes in the United States');
  });
});

describe('a shop in the United Kingdom', () => {
  const pages = pagesOf(UK);

  it('shows pounds, and VAT as rate, amount and net', () => {
    const quote = pages.get('customer/T-1/quote.html') ?? '';
    expect(quote).toContain('Total price');
    expect(quote).toMatch(/Includes VAT of £[\d,.]+/);
    expect(quote).toMatch(/of which price before VAT £[\d,.]+/);
    expect(quote).toMatch(/of which VAT At 20\s?% £[\d,.]+/);
  });

  it('prints metric units and British words', () => {
    const quote = pages.get('customer/T-1/quote.html') ?? '';
    expect(quote).toContain('Draught, fully loaded');
    expect(
      found(ownPages(pages), /\b(?:gasoline|tires?|molds?|draft, fully|color|centers?)\b/gi),
    ).toEqual([]);
    expect(found(ownPages(pages), /\d[ \u00A0](?:lb|ft|US gal)\b/g)).toEqual([]);
    expect(found(pages, /\{[A-Za-z ]+\}|%7B/g)).toEqual([]);
  });
});

describe('a shop whose place has no rules here', () => {
  const pages = pagesOf(shopIn('CAD', ['en-AU', 'en-CA']));

  it('says so where it would print them, and names no other place', () => {
    const quote = pages.get('customer/T-1/quote.html') ?? '';
    expect(quote).toContain('Brakes: not computed: the road rules of CA are not known here');
    expect(found(ownPages(pages), /Australia|New Zealand|United States|United Kingdom/g)).toEqual(
      [],
    );
  });

  it('calls the final price as the shop does, where the shop says how', async () => {
    const files = shopIn('CAD', ['en-AU', 'en-CA\nfinalPrice: Price on the water']);
    const shop = new Shop(workspaceOf(files));
    await shop.on('2026-03-20', 'build', '--no-pdf');
    expect(saidOn(shop.read('_site/customer/T-1/quote.html'))).toContain('Price on the water');
    shop.remove();
  });

  it('escapes the name that the shop gives the final price', async () => {
    const files = shopIn('CAD', ['en-AU', `en-CA\nfinalPrice: 'Price "ready" <now> & here'`]);
    const shop = new Shop(workspaceOf(files));
    await shop.on('2026-03-20', 'build', '--no-pdf');
    const html = shop.read('_site/customer/T-1/quote.html');
    shop.remove();
    expect(html).toContain('<h2 id="panel">Price &quot;ready&quot; &lt;now&gt; &amp; here</h2>');
    expect(html).not.toContain('<now>');
  });
});

describe('the head of a letter, which its PDF is described by', () => {
  it.each([
    ['en-AU', 'one drive-away price'],
    ['en-GB', 'one total price'],
  ])('has its words in the edition of %s', (locale, said) => {
    const { build } = resolveSample({
      'catalogue/yard.yaml': YARD.replace('en-AU', locale),
      'orders/t-1.yaml': ORDER,
    });
    if (!build) throw new Error(`no build in ${locale}`);
    expect(pageHead(build.yard, 'Quote', 'and one {final price}').subject).toBe(`and ${said}`);
  });
});

// After a change that is meant: npm test -- tests/whole/editions --update, then read the difference.
describe.each([
  ['us', US],
  ['uk', UK],
])('the figures of a shop in the %s', (place, files) => {
  it('are what they were', async () => {
    const shop = new Shop(workspaceOf(files));
    await shop.on('2026-03-20', 'build', '--no-pdf');
    const figures: unknown = JSON.parse(shop.read('_site/yard/T-1/figures.json'));
    shop.remove();
    const lines = Object.entries(figures ?? {}).map(
      ([key, figure]) => `${JSON.stringify(key)}: ${JSON.stringify(figure)}`,
    );
    await expect(`{\n${lines.join(',\n')}\n}\n`).toMatchFileSnapshot(`golden/${place}.json`);
  });
});
