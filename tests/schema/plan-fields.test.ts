import { rmSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { describePlace } from '../../src/findings/index.ts';
import { readWorkspace } from '../../src/read/index.ts';
import { decimalToNumber } from '../../src/units/index.ts';
import { HULL, ORDER, workspaceOf, YARD } from '../read/samples.ts';
import { resolveSample } from '../resolve/invented.ts';

function readYard(more: string) {
  const folder = workspaceOf({ 'catalogue/yard.yaml': YARD + more });
  const { catalogue, findings, sources } = readWorkspace(folder);
  rmSync(folder, { recursive: true });
  const spots = findings.map(
    ({ code, place }) => `${code} ${describePlace(place, sources.get(place.file))}`,
  );
  return { yard: catalogue?.yard.value, spots };
}

describe('what a yard file says for the plan', () => {
  it('may be left out: five days of eight hours from seven, one person of each stage', () => {
    const { yard } = readYard('');
    expect(yard?.hours).toMatchObject({ workdays: [1, 2, 3, 4, 5], holidays: [] });
    expect(yard && decimalToNumber(yard.hours.startsAt)).toBe(7);
    expect(yard && decimalToNumber(yard.hours.perDay)).toBe(8);
    expect(yard).toMatchObject({ daysInHand: 5, planTries: 200 });
    expect(yard?.stages.gelcoat).toMatchObject({ people: 1, oneSitting: false });
  });

  it.each([
    ['perDay: 17, startsAt: 7', true],
    ['perDay: 17.1, startsAt: 7', false],
    ['workdays: [6, 7]', true],
    ['workdays: []', false],
    ['workdays: [0]', false],
    ['workdays: [8]', false],
    ['holidays: [2026-12-25]', true],
    ['holidays: [2026-02-30]', false],
  ])('has hours of work within one day and week: %s', (hours, sound) => {
    const { spots } = readYard(`hours: { ${hours} }\n`);
    expect(spots.length === 0, spots.join()).toBe(sound);
  });
});

describe('what a hull file says for the plan', () => {
  it('may be left out: 48 hours in the mould after infusion (common practice, no source)', () => {
    expect(resolveSample().build?.hull.cureHours).toBe(48);
  });
});

describe('what an order says is bought', () => {
  const spots = (line: string): readonly string[] =>
    resolveSample({ 'orders/t-1.yaml': `${ORDER}bought:\n  - { ${line} }\n` }).spots;

  it.each([
    ['supplier: acme-parts, date: 2026-03-15', []],
    ['supplier: acme-parts, date: 2026-03-15, parts: [AC-1], arrives: 2026-03-15', []],
    ['supplier: acme-prats, date: 2026-03-15', ['UNKNOWN_ID orders/t-1.yaml:17:17']],
    [
      'supplier: acme-parts, date: 2026-03-15, parts: [AC-1, AC-99]',
      ['UNKNOWN_ID orders/t-1.yaml:17:61'],
    ],
    [
      'supplier: acme-parts, date: 2026-03-15, arrives: 2026-03-14',
      ['DATES_OUT_OF_ORDER orders/t-1.yaml:17:56'],
    ],
  ])(
    'names suppliers and parts that there are, and comes after it is ordered: %s',
    (line, found) => {
      expect(spots(line)).toEqual(found);
    },
  );
});

it('a hull shares the mould of a hull that there is', () => {
  const mouldOf = (id: string): readonly string[] =>
    resolveSample({ 'catalogue/hulls/tern-400.yaml': `${HULL}mouldOf: ${id}\n` }).spots;
  expect(mouldOf('tern-400')).toEqual([]);
  expect(mouldOf('tern-40')).toEqual([expect.stringMatching(/^UNKNOWN_ID .*tern-400\.yaml/)]);
});
