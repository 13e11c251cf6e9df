import { appendFileSync, copyFileSync, renameSync, truncateSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { digestOf } from '../../src/read/ledger.ts';
import {
  type Attack,
  attacked,
  gone,
  KINDS,
  LEDGER,
  lines,
  price,
  reseal,
  rewriteLedger,
  shopToAttack,
  writeLines,
} from './forge.ts';

const ORDER_OF_LINES: readonly Attack[] = [
  {
    name: 'the last line taken out of the ledger',
    attack: (shop) => writeLines(shop, lines(shop).slice(0, -1)),
    code: 'ISSUED_NOT_IN_LEDGER',
    lost: ['T-1'],
  },
  {
    name: 'the first line taken out of the ledger',
    attack: (shop) => writeLines(shop, lines(shop).slice(1)),
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-3', 'T-4'],
  },
  {
    name: 'a line and its files taken out of the middle',
    attack: (shop) => {
      writeLines(
        shop,
        lines(shop).filter((_, index) => index !== 1),
      );
      for (const kind of KINDS) gone(shop, `T-3-r1.${kind}`);
    },
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-3', 'T-4'],
  },
  {
    name: 'two lines changed over',
    attack: (shop) => {
      const [a = '', b = '', c = ''] = lines(shop);
      writeLines(shop, [b, a, c]);
    },
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-3', 'T-4'],
  },
  {
    name: 'a line written twice',
    attack: (shop) => writeLines(shop, [...lines(shop), lines(shop).at(-1) ?? '']),
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-4'],
  },
  {
    name: 'a day of the ledger changed',
    attack: (shop) => shop.change(LEDGER, '"day":"2026-03-21"', '"day":"2026-03-20"'),
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-3', 'T-4'],
  },
  {
    name: 'a last line without its end',
    attack: (shop) => truncateSync(shop.at(LEDGER), shop.bytes(LEDGER).length - 1),
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-4'],
  },
  {
    name: 'a last line cut in half',
    attack: (shop) => truncateSync(shop.at(LEDGER), shop.bytes(LEDGER).length - 100),
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-4'],
  },
  {
    name: 'a revision dropped in that was never sent',
    attack: (shop) => {
      for (const kind of KINDS)
        copyFileSync(shop.issued(`T-1-r2.${kind}`), shop.issued(`T-1-r3.${kind}`));
    },
    code: 'ISSUED_NOT_IN_LEDGER',
    lost: ['T-1'],
  },
  {
    name: 'a first revision dropped in for an order that was never sent',
    attack: (shop) => copyFileSync(shop.issued('T-1-r1.json'), shop.issued('T-4-r1.json')),
    code: 'ISSUED_NOT_IN_LEDGER',
    lost: ['T-4'],
  },
  {
    name: 'the first revision resealed as the second',
    attack: (shop) => {
      copyFileSync(shop.issued('T-1-r1.json'), shop.issued('T-1-r2.json'));
      reseal(shop, 'T-1-r2.json', (content) => {
        content['revision'] = 2;
      });
    },
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'the ledger rewritten with a gap in the revisions',
    attack: (shop) => {
      for (const kind of KINDS)
        renameSync(shop.issued(`T-1-r2.${kind}`), shop.issued(`T-1-r3.${kind}`));
      rewriteLedger(shop, (line, index) => {
        if (index === 2) line['revision'] = 3;
      });
    },
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-4'],
  },
  {
    name: 'the ledger rewritten with a day that goes back',
    attack: (shop) =>
      rewriteLedger(shop, (line, index) => {
        if (index === 2) line['day'] = '2026-03-20';
      }),
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-4'],
  },
  {
    name: 'data and ledger rewritten: the data says another day than its line',
    attack: (shop) =>
      rewriteLedger(shop, (line, index) => {
        if (index === 2) line['day'] = '2026-03-21';
      }),
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'the ledger rewritten with a number that leads elsewhere',
    attack: (shop) =>
      rewriteLedger(shop, (line, index) => {
        if (index === 2) line['number'] = '../../T-1';
      }),
    code: 'LEDGER_BROKEN',
    lost: ['T-1', 'T-4'],
  },
  {
    name: 'data and ledger rewritten: a list of nothing',
    attack: (shop) => {
      reseal(shop, 'T-1-r2.json', (content) => {
        content['rows'] = [null];
      });
      rewriteLedger(shop, () => undefined);
    },
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
  {
    name: 'data and ledger rewritten: not even a quote',
    attack: (shop) => {
      shop.write('orders/issued/T-1-r2.json', '{"sha256":"","content":null}');
      rewriteLedger(shop, () => undefined);
    },
    code: 'ISSUED_ALTERED',
    lost: ['T-1'],
  },
];

attacked(ORDER_OF_LINES);

const { copy } = shopToAttack();

describe('the ledger against a digest kept elsewhere', () => {
  it('stands, says how much came since, and tells a ledger that was rewritten by somebody who knows how', async () => {
    const shop = copy();
    const digest = digestOf(lines(shop)[1] ?? '');
    expect(await shop.on('2026-03-26', 'ledger', '--check', digest)).toBe(0);
    expect(shop.said).toContain('The first 2 lines');
    expect(shop.said).toContain('1 came since');
    reseal(shop, 'T-1-r1.json', price('1.00'));
    rewriteLedger(shop, () => undefined);
    expect(await shop.on('2026-03-26', 'ledger')).toBe(0);
    expect(await shop.on('2026-03-26', 'ledger', '--check', digest)).toBe(1);
    expect(await shop.on('2026-03-26', 'ledger', '--check', 'abc')).toBe(2);
  });

  it('says of each line whether it stands, and which does not', async () => {
    const shop = copy();
    expect(await shop.on('2026-03-26', 'ledger')).toBe(0);
    expect(shop.said.match(/ {2}stands/g)).toHaveLength(3);
    appendFileSync(shop.issued('T-1-r1.pdf'), 'x');
    expect(await shop.on('2026-03-26', 'ledger')).toBe(1);
    expect(shop.said).toMatch(/T-1-r1 .*DOES NOT STAND/);
    expect(shop.said).toMatch(/T-3-r1 .*stands/);
  });
});

it('a damaged ledger leaves an enquiry its draft and any other unsent order nothing: LEDGER_IN_DOUBT', async () => {
  const shop = copy();
  writeLines(shop, lines(shop).slice(1));
  expect(await shop.codes('2026-03-26')).toContain('LEDGER_IN_DOUBT');
});
