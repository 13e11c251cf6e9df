import { describe, expect, it } from 'vitest';
import {
  buildSheetView,
  handoverView,
  quoteView,
  variationsView,
} from '../../src/documents/index.ts';
import {
  customerAlternative,
  customerFigures,
  customerVariation,
  type FiguredVariation,
} from '../../src/figures/index.ts';
import {
  type CodeFacts,
  type Finding,
  finding,
  FINDING_CODES,
  type FindingCode,
} from '../../src/findings/index.ts';
import { subtractMoney } from '../../src/money/index.ts';
import { inventedFigures } from './invented-build.ts';
import { headingsIn, wordsOf } from './letters.ts';

const figures = inventedFigures();
const all = Object.entries<CodeFacts>(FINDING_CODES);
const codesOf = (wanted: (facts: CodeFacts) => boolean): readonly FindingCode[] =>
  (Object.keys(FINDING_CODES) as FindingCode[]).filter((code) => wanted(FINDING_CODES[code]));
const SAFETY = codesOf(({ safety }) => safety === true);
const FOR_THE_CUSTOMER = codesOf(({ audience }) => audience === 'customer');
const FOR_THE_WORKSHOP = codesOf(({ audience }) => audience === 'workshop');
const FOR_THE_OFFICE = codesOf(({ audience }) => audience === 'office');

const found = (code: FindingCode): Finding =>
  finding(code, { file: 'orders/secret.yaml' }, { received: 'was found', expected: 'was wanted' });

const nothing = subtractMoney(figures.price.driveAway, figures.price.driveAway);
const account = {
  revision: 1,
  quoted: figures.price.driveAway,
  payments: [],
  agreed: [],
  total: figures.price.driveAway,
  beforeTax: figures.price.taxable,
  received: nothing,
  toPay: figures.price.driveAway,
};

/** Every document that a customer gets of an order, its alternative and its variation, each with one finding. */
function customersDocuments(one: Finding) {
  const sold = customerFigures({ ...figures, findings: [one] });
  const clean = customerFigures(figures);
  const change = { findings: [one] };
  const varied: FiguredVariation = {
    ...change,
    variation: {
      name: 'A change',
      asked: figures.build.pricedOn,
      days: 0,
      add: [],
      remove: [],
    },
    number: 1,
    added: [],
    removed: [],
  };
  return {
    order: quoteView(sold, { fontCss: '' }),
    alternative: quoteView(clean, {
      fontCss: '',
      alternatives: [customerAlternative({ name: 'Otherwise', ...change })],
    }),
    handover: handoverView(sold, { fontCss: '' }),
    variation: variationsView({
      quoted: clean,
      variations: [customerVariation(varied)],
      account,
    }),
  };
}

describe('a finding of safety', () => {
  it('is one of those that a person could be hurt by', () => {
    const few: readonly FindingCode[] = [
      ...(['FEW_TO_ONE_SIDE', 'FLOAT_SWAMPED', 'FLOAT_NOT_UPRIGHT', 'CROWD_AT_END'] as const),
      ...(['FOAM_SHORT', 'FLOAT_LOLLS', 'LIST_AT_REST', 'STERN_FREEBOARD_LOW'] as const),
      ...(['PEOPLE_OVER_RATING', 'LOAD_OVER_METHOD', 'POWER_OVER_METHOD'] as const),
      ...(['BRAKES_MISSING', 'VEHICLE_OVERLOADED', 'WIRE_REFUSED', 'FUSE_ABOVE_DEVICE'] as const),
      ...(['CATALYST_OUT_OF_RANGE', 'STEERING_MISMATCH', 'GROWTH_OVER_LIMIT'] as const),
    ];
    expect(SAFETY).toEqual(expect.arrayContaining([...few]));
  });

  it.each(SAFETY)('reaches the customer in plain words: %s', (code) => {
    const words = FINDING_CODES[code as 'FOAM_SHORT'].toCustomer;
    const { order, alternative, handover, variation } = customersDocuments(found(code));
    for (const told of [
      wordsOf(order, 'should-know', 'known'),
      wordsOf(handover, 'should-know', 'known'),
      wordsOf(alternative, 'alternatives', 'known'),
      wordsOf(variation, 'variation-1', 'known'),
    ]) {
      expect(told).toHaveLength(1);
      expect(told[0]).toContain(words);
    }
    expect(wordsOf(alternative, 'should-know', 'known')).toEqual([]);
  });

  it('says of an error that the boat cannot be built so, the gravest first and each kind once', () => {
    const findings = [
      found('LIST_AT_REST'),
      found('FLOAT_SWAMPED'),
      finding('LIST_AT_REST', { file: 'a' }, { received: '3°', expected: '1°' }),
    ];
    const view = quoteView(customerFigures({ ...figures, findings }), { fontCss: '' });
    expect(wordsOf(view, 'should-know', 'known')).toEqual([
      'Cannot be built like this. Loaded as ordered and lying still, the boat is estimated to take in water.',
      'Fully loaded and lying still, the boat is estimated to lean to one side. Was found. Limit: was wanted. 3°. Limit: 1°.',
    ]);
  });
});

describe('what is not for the customer', () => {
  it.each([...FOR_THE_WORKSHOP, ...FOR_THE_OFFICE])('is in none of their documents: %s', (code) => {
    const text = JSON.stringify(customersDocuments(found(code)));
    expect(text).not.toContain('was found');
    expect(text).not.toContain(FINDING_CODES[code].means);
  });

  it.each(FOR_THE_OFFICE)('nor on the workshop’s sheet, when it is the office’s: %s', (code) => {
    const view = buildSheetView({ ...figures, findings: [found(code)] }, { fontCss: '' });
    expect(headingsIn(view, 'findings')).toEqual([]);
  });

  it.each([...FOR_THE_CUSTOMER, ...FOR_THE_WORKSHOP])('the workshop sees all else: %s', (code) => {
    const view = buildSheetView({ ...figures, findings: [found(code)] }, { fontCss: '' });
    expect(headingsIn(view, 'findings')).toEqual([
      expect.stringContaining(`. ${FINDING_CODES[code].means}.`),
    ]);
  });

  it('still says of an alternative that it cannot be built, when the reason is the shop’s own', () => {
    const { alternative } = customersDocuments(found('ORDERED_TWICE'));
    expect(wordsOf(alternative, 'alternatives', 'known')).toEqual([
      'Cannot be built like this. Ask us why.',
    ]);
  });
});

describe('the words for a customer', () => {
  it.each(
    all.flatMap(([code, { toCustomer, figures: told = '' }]) =>
      toCustomer === undefined ? [] : [[code, toCustomer, told] as const],
    ),
  )('of %s are a sentence that needs no file and no code to be read', (_, words, told) => {
    expect(words).toMatch(/^[A-Z].{20,}[^.!?\s]$/);
    expect(told.replaceAll(/\{(received|expected)\}/g, '')).not.toMatch(/[{}]/);
    for (const text of [words, told]) {
      expect(text).not.toMatch(/[A-Z]+_[A-Z]+|[a-z][A-Z]|\w:(?! )|[_`[\]]|undefined/);
      expect(text).not.toMatch(/\bfindings?\b|catalogue|\bfile|\bfield|\byaml\b|\bshe\b|\bher\b/i);
      expect(text).not.toMatch(/\bGM\b|heel|trim|downflood|metacentr|displacement|lay-up/i);
    }
  });
});
