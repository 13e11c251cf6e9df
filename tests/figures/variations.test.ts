import { rmSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type FiguredOrder, figureOrders, moneyChange } from '../../src/figures/index.ts';
import { addMoney, moneyToText, sumMoney } from '../../src/money/index.ts';
import { overviewOrders } from '../../src/plan/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import { parseIsoDate } from '../../src/units/index.ts';
import { OPTIONS, ORDER, workspaceOf } from '../read/samples.ts';

const RICH = `${OPTIONS}  - { id: deck, name: Deck, class: fit-out, mass: 12 kg, hours: [{ stage: fit-out, hours: 5 }], price: 900 }
  - { id: mast, name: Mast, class: fit-out, mass: 7 kg, requires: [deck], price: 400 }
`;

function figured(variations: string, more = ''): FiguredOrder {
  const folder = workspaceOf({
    'catalogue/options/seats.yaml': RICH,
    'orders/t-1.yaml': `${ORDER}${more}variations:\n${variations}`,
  });
  const { catalogue, orders, brokenIds } = readWorkspace(folder);
  rmSync(folder, { recursive: true });
  const [entry] = catalogue ? figureOrders(orders, catalogue, brokenIds) : [];
  if (!entry) throw new Error('the sample cannot be read');
  return entry;
}

const DECK =
  '  - { name: A deck, asked: 2026-04-01, days: 3, add: [deck], agreed: { date: 2026-04-02, by: Ada, price: 990.00 } }\n';
const MAST =
  '  - { name: A mast, asked: 2026-04-03, add: [mast], agreed: { date: 2026-04-04, by: Ada, price: 440.00 } }\n';
const NO_SEAT = '  - { name: No seat, asked: 2026-04-05, remove: [seat] }\n';

describe('a variation', () => {
  it('is built when it is agreed; the quote stays as it was', () => {
    const { figures, quoted, variations } = figured(DECK + NO_SEAT);
    expect(quoted?.build.items.map(({ name }) => name)).not.toContain('Deck');
    expect(figures?.build.items.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Deck', 'Seat']),
    );
    expect(variations.map(({ added, removed }) => [added, removed])).toEqual([
      [['Deck'], []],
      [[], ['Seat']],
    ]);
  });

  it('stands on those agreed before it, and their prices add up to the boat that is built', () => {
    const { figures, quoted, variations, findings } = figured(DECK + MAST);
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    if (!figures || !quoted) throw new Error('not computed');
    const changes = variations.flatMap(({ differences }) =>
      differences ? [moneyChange(differences.driveAway)] : [],
    );
    // Fixed prices of 900 and 400 before 10 % of tax.
    expect(changes.map(moneyToText)).toEqual(['990.00', '440.00']);
    expect(
      moneyToText(addMoney(quoted.price.driveAway, sumMoney(changes, quoted.build.currency))),
    ).toBe(moneyToText(figures.price.driveAway));
    const { now, was } = variations[0]?.differences?.massOnTrailer ?? {};
    expect((now?.says ?? 0) - (was?.says ?? 0)).toBeCloseTo(12 * 1.05, 9);
  });

  it('that cannot be built so says why and stops nothing while it is not agreed', () => {
    const { figures, variations } = figured(
      '  - { name: A mast, asked: 2026-04-03, add: [mast] }\n',
    );
    expect(figures).toBeDefined();
    expect(variations[0]?.differences).toBeUndefined();
    expect(variations[0]?.findings.map(({ code }) => code)).toContain('REQUIREMENT_UNMET');
  });

  it('that is agreed and cannot be built so is an error of the order', () => {
    const { figures, findings } = figured(MAST);
    expect(figures).toBeUndefined();
    expect(findings.map(({ code }) => code)).toContain('REQUIREMENT_UNMET');
  });

  it('that takes out what is not there is told at its place', () => {
    const { figures, findings } = figured(NO_SEAT.replace('[seat]', '[saet]'));
    expect(figures).toBeUndefined();
    expect(findings.map(({ code }) => code)).toContain('UNKNOWN_ID');
  });
});

describe('what was signed', () => {
  const today = parseIsoDate('2026-04-10');
  const codes = (entry: FiguredOrder) =>
    overviewOrders([entry], 30, today ?? expect.fail('a day')).orders[0]?.findings.map(
      ({ code }) => code,
    );
  const signedAt = (price: string) => DECK.replace('990.00', price);

  it('at the computed price passes, a cent off is told', () => {
    expect(codes(figured(signedAt('990.00')))).not.toContain('VARIATION_DIFFERS');
    expect(codes(figured(signedAt('990.01')))).toContain('VARIATION_DIFFERS');
  });
});
