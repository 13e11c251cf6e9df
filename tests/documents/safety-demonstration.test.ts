import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { quoteView } from '../../src/documents/index.ts';
import { customerAlternative, customerFigures, figureOrders } from '../../src/figures/index.ts';
import { readYaml, validate } from '../../src/read/index.ts';
import { type Order, orderSchema } from '../../src/schema/index.ts';
import { factsOf, wordsOf } from './letters.ts';
import { catalogue, ROOT } from '../demonstration/workspace.ts';

/** What the quote of a demonstration order says of an alternative with batteries high above the boat. */
function topHeavy(battery: string, quantity: number, height: string) {
  const text = readFileSync(path.join(ROOT, 'orders/DC-2604.yaml'), 'utf8');
  const changed = `${text}
alternatives:
  - name: Batteries on a mast
    add: [{ option: ${battery}, quantity: ${quantity}, at: { x: 40 % length, z: ${height} } }]
`;
  const { sourced } = validate<Order>(orderSchema, readYaml(changed, 'orders/DC-2604.yaml'));
  const [entry] = figureOrders(sourced ? [sourced] : [], catalogue, new Set());
  if (!entry?.quoted) throw new Error('the order has figures');
  const view = quoteView(customerFigures(entry.quoted), {
    fontCss: '',
    alternatives: entry.alternatives.map(customerAlternative),
  });
  return {
    effects: factsOf(view, 'alternatives'),
    cautions: wordsOf(view, 'alternatives', 'known').join(' '),
    codes: entry.alternatives[0]?.findings.map((f) => f.code),
  };
}

describe('an alternative of a demonstration order with its weight too high', () => {
  it('that lets few of its people to one side says so to the customer', () => {
    const { cautions, effects, codes } = topHeavy('battery-lifepo4-100', 4, '300 % depth');
    expect(codes).toContain('FEW_TO_ONE_SIDE');
    expect(effects).not.toEqual([]);
    expect(cautions).toMatch(
      /Only few of the people aboard may be on one side at once.* At most 1 of 4 people/,
    );
  });

  it('that does not stay upright says that it cannot be built so, and why', () => {
    const { cautions, codes } = topHeavy('battery-agm-100', 3, '1000 % depth');
    expect(codes).toContain('FLOAT_NOT_UPRIGHT');
    expect(cautions).toMatch(/Cannot be built like this\. .*to turn over/);
  });
});
