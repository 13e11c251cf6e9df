import { rmSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Letter, variationsView } from '../../src/documents/index.ts';
import { customerFigures, customerVariation, figureOrders } from '../../src/figures/index.ts';
import { accountOf } from '../../src/issued/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import { sentOf } from '../issued/sent.ts';
import { OPTIONS, ORDER, workspaceOf } from '../read/samples.ts';
import { factsOf, rowsOf, saidIn, signersOf, wordsOf } from './letters.ts';

function view(): Letter {
  const folder = workspaceOf({
    'catalogue/options/seats.yaml': `${OPTIONS}  - { id: deck, name: Deck, class: fit-out, mass: 12 kg, price: 900, at: { x: 1 m, z: 0.3 m } }\n`,
    'orders/t-1.yaml': `${ORDER.replace('enquiry: 2026-03-14', 'enquiry: 2026-03-14\n  promised: 2026-06-30')}paid: [{ date: 2026-03-20, amount: 1000 }]
variations:
  - { name: A deck, asked: 2026-04-01, days: 3, add: [deck], agreed: { date: 2026-04-02, by: Ada, price: 950.00 } }
  - { name: No seat, asked: 2026-04-05, remove: [seat] }
`,
  });
  const { catalogue, orders, brokenIds } = readWorkspace(folder);
  rmSync(folder, { recursive: true });
  const [entry] = catalogue ? figureOrders(orders, catalogue, brokenIds) : [];
  if (!entry?.quoted) throw new Error('the sample cannot be read');
  const { quoted, variations, order } = entry;
  return variationsView({
    quoted: customerFigures(quoted),
    variations: variations.map(customerVariation),
    account: accountOf(sentOf(quoted), order.value),
  });
}

const cents = (text: string): number => Number(text.replaceAll(/[$,+.]/g, '').replace('−', '-'));

describe('the variation page', () => {
  it('says of each change what comes, what goes, price, mass and date, and who signed', () => {
    const page = view();
    expect(wordsOf(page, 'variation-1', 'plain')).toEqual(['Added: Deck.']);
    expect(wordsOf(page, 'variation-1', 'signed')).toEqual(['Signed on 2 April 2026 by Ada.']);
    const effects = factsOf(page, 'variation-1').map(({ value }) => value);
    expect(effects.map((value) => value.replaceAll('\u00A0', ' '))).toEqual([
      '1 April 2026',
      '+$950.00',
      '+13 kg',
      '3 days later',
    ]);
    expect(wordsOf(page, 'variation-2', 'plain')).toEqual(['Removed: Seat.']);
    expect(wordsOf(page, 'variation-2', 'signed')).toEqual([]);
    expect(signersOf(page)).toHaveLength(2);
  });

  it('adds up: the quote, what was signed, what was received, what is left', () => {
    const amounts = rowsOf(view(), 'account').map(({ cells }) => cents(saidIn(cells[1])));
    const [quoted = 0, deck = 0, total = 0, received = 0, left = 0] = amounts;
    expect(amounts).toHaveLength(5);
    expect([quoted + deck, total - received]).toEqual([total, left]);
    expect([deck, received]).toEqual([95_000, 100_000]);
  });

  it('moves the promised date by the days that were agreed', () => {
    expect(wordsOf(view(), 'account', 'plain')).toEqual([
      'Promised for 30 June 2026; with what was agreed, for 3 July 2026.',
    ]);
  });
});
