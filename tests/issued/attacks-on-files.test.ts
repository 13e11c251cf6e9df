import {
  appendFileSync,
  copyFileSync,
  cpSync,
  mkdirSync,
  renameSync,
  rmSync,
  symlinkSync,
  truncateSync,
} from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type Attack,
  attacked,
  gone,
  KINDS,
  LEDGER,
  price,
  reseal,
  shopToAttack,
} from './forge.ts';

const BYTES: readonly Attack[] = [
  {
    name: 'one letter of the data changed',
    attack: (shop) => shop.change('orders/issued/T-1-r2.json', 'Ladder', 'Lader'),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'one letter of the page changed',
    attack: (shop) => shop.change('orders/issued/T-1-r2.html', 'Ladder', 'Lader'),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'one byte added to the PDF',
    attack: (shop) => appendFileSync(shop.issued('T-1-r2.pdf'), '\n'),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'the PDF cut short',
    attack: (shop) => truncateSync(shop.issued('T-1-r2.pdf'), 1000),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'the data emptied',
    attack: (shop) => truncateSync(shop.issued('T-1-r2.json'), 0),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'a byte order mark put before the data',
    attack: (shop) =>
      shop.write('orders/issued/T-1-r2.json', `\uFEFF${shop.read('orders/issued/T-1-r2.json')}`),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'the data grown beyond any quote',
    attack: (shop) => truncateSync(shop.issued('T-1-r2.json'), 40 * 1024 * 1024),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'a price of 1.00 resealed',
    attack: (shop) => reseal(shop, 'T-1-r2.json', price('1.00')),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'a list of nothing resealed',
    attack: (shop) =>
      reseal(shop, 'T-1-r2.json', (content) => {
        content['rows'] = [null];
      }),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'a text of other fields resealed',
    attack: (shop) =>
      reseal(shop, 'T-1-r2.json', (content) => {
        content['view'] = { heading: 'Quote' };
      }),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'an older revision changed',
    attack: (shop) => shop.change('orders/issued/T-1-r1.html', 'Ladder', 'Lader'),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'the page of another revision in its place',
    attack: (shop) => copyFileSync(shop.issued('T-1-r1.html'), shop.issued('T-1-r2.html')),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'the PDF of another order in its place',
    attack: (shop) => copyFileSync(shop.issued('T-3-r1.pdf'), shop.issued('T-1-r2.pdf')),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
];

const DELETIONS: readonly Attack[] = [
  ...KINDS.map((kind): Attack => ({
    name: `the ${kind} deleted`,
    attack: (shop) => gone(shop, `T-1-r2.${kind}`),
    code: 'ISSUED_MISSING',
    lost: ['T-1'],
  })),
  {
    name: 'all of the last revision deleted',
    attack: (shop) => KINDS.forEach((kind) => gone(shop, `T-1-r2.${kind}`)),
    code: 'ISSUED_MISSING',
    lost: ['T-1'],
  },
  {
    name: 'all of an older revision deleted',
    attack: (shop) => KINDS.forEach((kind) => gone(shop, `T-1-r1.${kind}`)),
    code: 'ISSUED_MISSING',
    lost: ['T-1'],
  },
  {
    name: 'the accepted quote deleted',
    attack: (shop) => KINDS.forEach((kind) => gone(shop, `T-3-r1.${kind}`)),
    code: 'ISSUED_MISSING',
    lost: ['T-3'],
  },
  {
    name: 'the ledger deleted',
    attack: (shop) => gone(shop, 'ledger.jsonl'),
    code: 'ISSUED_NOT_IN_LEDGER',
    lost: ['T-1', 'T-3'],
  },
  {
    name: 'the ledger emptied',
    attack: (shop) => shop.write(LEDGER, ''),
    code: 'ISSUED_NOT_IN_LEDGER',
    lost: ['T-1', 'T-3'],
  },
];

const LINKS: readonly Attack[] = [
  {
    name: 'a link to the same bytes beside',
    attack: (shop) => {
      renameSync(shop.issued('T-1-r2.html'), shop.at('copy.html'));
      symlinkSync(shop.at('copy.html'), shop.issued('T-1-r2.html'));
    },
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'a link that leads nowhere',
    attack: (shop) => {
      gone(shop, 'T-1-r2.pdf');
      symlinkSync('/no/such/file', shop.issued('T-1-r2.pdf'));
    },
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'a folder in the place of the PDF',
    attack: (shop) => {
      gone(shop, 'T-1-r2.pdf');
      mkdirSync(shop.issued('T-1-r2.pdf'));
    },
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'the ledger a link',
    attack: (shop) => {
      renameSync(shop.at(LEDGER), shop.at('ledger.jsonl'));
      symlinkSync(shop.at('ledger.jsonl'), shop.at(LEDGER));
    },
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-3', 'T-4'],
  },
  {
    name: 'the folder a link',
    attack: (shop) => {
      cpSync(shop.at('orders/issued'), shop.at('elsewhere'), { recursive: true });
      rmSync(shop.at('orders/issued'), { recursive: true });
      symlinkSync(shop.at('elsewhere'), shop.at('orders/issued'));
    },
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-3', 'T-4'],
  },
];

attacked([...BYTES, ...DELETIONS, ...LINKS]);

describe('a folder that is deleted whole', () => {
  const { copy } = shopToAttack();
  it('leaves accepted orders nothing and the others a draft: nobody can tell', async () => {
    const shop = copy();
    rmSync(shop.at('orders/issued'), { recursive: true });
    expect(await shop.on('2026-03-26', 'build', '--no-pdf')).toBe(1);
    expect(shop.said).toContain('[REVISION_NOT_ISSUED]');
    expect(shop.has('_site/customer/T-3/quote.html')).toBe(false);
    expect(shop.has('_site/customer/T-1/quote-T-1-r2.pdf')).toBe(false);
    expect(shop.read('_site/customer/T-1/quote.html')).toContain('A draft, not yet an offer');
  });
});
