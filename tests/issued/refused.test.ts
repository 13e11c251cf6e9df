import { rmSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { type Attack, attacked, LEDGER, lines, shopToAttack } from './forge.ts';
import { accepted, quoted, type Shop } from './shop.ts';

const STATES: readonly Attack[] = [
  {
    name: 'accepted, and no revision named',
    attack: (shop) => shop.change('orders/t-3.yaml', 'acceptance: { revision: 1, by: Ada }\n', ''),
    code: 'REVISION_NOT_ISSUED',
    lost: ['T-3'],
  },
  {
    name: 'a revision accepted that was never sent',
    attack: (shop) => shop.change('orders/t-3.yaml', 'revision: 1', 'revision: 9'),
    code: 'REVISION_NOT_ISSUED',
    lost: ['T-3'],
  },
  {
    name: 'accepted on a day before it was sent',
    attack: (shop) =>
      shop.change('orders/t-3.yaml', 'accepted: 2026-03-25', 'accepted: 2026-03-20'),
    code: 'REVISION_NOT_ISSUED',
    lost: ['T-3'],
  },
  {
    name: 'accepted without ever being sent',
    attack: (shop) => shop.write('orders/t-4.yaml', accepted(quoted('T-4', '290.00'))),
    code: 'REVISION_NOT_ISSUED',
    lost: ['T-4'],
  },
  {
    name: 'the order of a quote that was sent deleted',
    attack: (shop) => rmSync(shop.at('orders/t-1.yaml')),
    code: 'ISSUED_OF_OTHER_ORDER',
    lost: ['T-1'],
  },
  {
    name: 'the order of a quote that was sent renumbered',
    attack: (shop) => shop.change('orders/t-1.yaml', 'number: T-1', 'number: T-9'),
    code: 'ISSUED_OF_OTHER_ORDER',
    lost: ['T-1'],
  },
];

attacked(STATES);

const { copy } = shopToAttack();

describe('the clock', () => {
  const dearer = (shop: Shop): void => shop.write('orders/t-1.yaml', quoted('T-1', '330.00'));
  it.each([
    ['in the future', '2026-03-27', ['--on', '2026-03-28'], 'still to come'],
    ['before the last line of the ledger', '2026-03-27', ['--on', '2026-03-21'], 'an earlier day'],
    ['on a day that is none', '2026-03-27', ['--on', '2026-02-30'], 'YYYY-MM-DD'],
    ['with a clock that was set back', '2026-03-20', [], 'set the clock'],
  ])('nothing is issued %s', async (_, day, words, why) => {
    const shop = copy();
    dearer(shop);
    const before = shop.read(LEDGER);
    expect(await shop.on(day, 'issue', 'T-1', ...words)).not.toBe(0);
    expect(shop.said).toContain(why);
    expect(shop.read(LEDGER)).toBe(before);
  });

  it('another day is kept beside the true one; ORLOP_TODAY dates nothing', async () => {
    const shop = copy();
    dearer(shop);
    expect(await shop.on('2026-03-27', 'issue', 'T-1', '--on', '2026-03-25')).toBe(0);
    expect(lines(shop).at(-1)).toContain('"day":"2026-03-25"');
    expect(lines(shop).at(-1)).toContain('"written":"2026-03-27"');
    await shop.on('2026-03-27', 'ledger');
    expect(shop.said).toContain('written on 2026-03-27');
    vi.stubEnv('ORLOP_TODAY', '2026-01-10');
    expect(await shop.on('2026-03-28', 'issue', 'T-4')).toBe(0);
    expect(lines(shop).at(-1)).toContain('"day":"2026-03-28"');
  });
});

describe('states that are not issued', () => {
  it.each([
    ['accepted', 'T-3', (text: string) => text, 'a variation, not a revision'],
    [
      'closed',
      'T-1',
      (text: string) => text.replace('status: quoted', 'status: closed'),
      'is closed',
    ],
    [
      'quoted, with an acceptance',
      'T-1',
      (text: string) => `${text}acceptance: { revision: 2, by: Ada }\n`,
      'a variation, not a revision',
    ],
  ])('%s', async (_, number, change, why) => {
    const shop = copy();
    const order = `orders/${number.toLowerCase()}.yaml`;
    shop.write(order, change(shop.read(order).replace(/cost: 3\d0/, 'cost: 350')));
    expect(await shop.on('2026-03-27', 'issue', number)).toBe(1);
    expect(shop.said).toContain(why);
  });

  it('an enquiry is issued as a draft, which nobody can accept', async () => {
    const shop = copy();
    expect(await shop.on('2026-03-27', 'issue', 'T-2')).toBe(0);
    expect(shop.read('orders/issued/T-2-r1.html')).toContain('A draft, not yet an offer');
    shop.write('orders/t-2.yaml', accepted(quoted('T-2')).replace('2026-03-25', '2026-03-28'));
    expect(await shop.codes('2026-03-28')).toContain('REVISION_NOT_ISSUED');
  });
});
