import { describe, expect, it } from 'vitest';
import {
  ACCEPTABLE,
  type Acceptance,
  FINDING_CODES,
  type Finding,
  finding,
  type FindingCode,
  gateOf,
  openFindings,
  renderFinding,
  stoppingIssue,
  stopsFigures,
  withAcceptances,
} from '../../src/findings/index.ts';

const at = { file: 'orders/t-1.yaml' };
const foam = (litres: string, needed: string): Finding =>
  finding('FOAM_SHORT', at, {
    received: `${litres} L of foam`,
    expected: `${needed} L, estimated`,
  });
const accepted = (one: Finding): Acceptance => ({
  finding: one.code,
  found: one.received,
  limit: one.expected,
  by: 'A. Tester',
  date: '2026-05-04',
  reason: 'A test is to prove it.',
});
const isOpen = (now: Finding, then: Finding): boolean =>
  openFindings(withAcceptances([now], [accepted(then)]), 'offer').length > 0;

describe('a finding that was accepted', () => {
  it('keeps nothing back, and says who took it upon themselves', () => {
    const [one] = withAcceptances([foam('470', '480')], [accepted(foam('470', '480'))]);
    expect(one?.accepted?.by).toBe('A. Tester');
    expect(renderFinding(one ?? foam('0', '0'), new Map())).toContain(
      'Accepted: by A. Tester on 2026-05-04: A test is to prove it.',
    );
  });

  it('is open again when it is worse by more than one printed unit, by what is found or by what is wanted', () => {
    const then = foam('470', '480');
    expect(isOpen(foam('469', '480'), then)).toBe(false);
    expect(isOpen(foam('468', '480'), then)).toBe(true);
    expect(isOpen(foam('470', '481'), then)).toBe(false);
    expect(isOpen(foam('470', '482'), then)).toBe(true);
    expect(isOpen(foam('475', '480'), then)).toBe(false);
    expect(isOpen(foam('1,470', '1,480'), foam('1,470', '1,480'))).toBe(false);
  });

  it('is read whatever spaces it was typed with', () => {
    const printed = finding('FOAM_SHORT', at, { received: '470\u00A0L of foam' });
    const typed = { ...accepted(printed), found: '470 L of foam' };
    expect(withAcceptances([printed], [typed])[0]?.accepted).toEqual(typed);
  });

  it('without a limit is open again when it is anything else', () => {
    const few = (text: string): Finding => finding('CATEGORY_NOT_SCREENED', at, { received: text });
    expect(isOpen(few('69 mm against 75 mm'), few('69 mm against 75 mm'))).toBe(false);
    expect(isOpen(few('67 mm against 75 mm'), few('69 mm against 75 mm'))).toBe(true);
    expect(isOpen(few('71 mm against 75 mm'), few('69 mm against 75 mm'))).toBe(true);
    expect(isOpen(few('the boat takes in water'), few('69 mm against 75 mm'))).toBe(true);
  });
});

describe('what nobody may accept', () => {
  const never = finding('RATING_NOT_AFLOAT', at, { received: '5 people' });

  it('stays open whatever an order says, and stops an issue', () => {
    const stops = stoppingIssue([never, foam('470', '480')], new Set(['FOAM_SHORT']));
    expect(stops.map(({ code, severity }) => `${code} ${severity}`)).toEqual([
      'RATING_NOT_AFLOAT error',
      'FOAM_SHORT error',
    ]);
    expect(isOpen(never, never)).toBe(true);
    expect(ACCEPTABLE).not.toContain('RATING_NOT_AFLOAT');
  });

  it('is figured all the same, as an error; other errors are not', () => {
    expect(never.severity).toBe('error');
    expect(stopsFigures([never])).toBe(false);
    expect(stopsFigures([finding('UNKNOWN_ID', at, { received: 'x' })])).toBe(true);
  });

  it('is an error, each of them, and what may be accepted is not', () => {
    const codes = Object.keys(FINDING_CODES) as FindingCode[];
    const severities = (gate: string) =>
      new Set(
        codes.filter((code) => gateOf(code) === gate).map((code) => FINDING_CODES[code].severity),
      );
    expect(severities('never')).toEqual(new Set(['error']));
    expect(severities('by name')).toEqual(new Set(['warning']));
  });
});

describe('what is put right by the handover', () => {
  it('keeps back the pack, and no offer', () => {
    const ball = finding('BALL_LOAD_LOW', at, { received: '26 kg, 4.7 %' });
    expect(openFindings([ball], 'offer')).toEqual([]);
    expect(openFindings([ball], 'handover')).toEqual([ball]);
    const vehicle = finding('VEHICLE_OVERLOADED', at, { received: '900 kg' });
    expect(stoppingIssue([ball, vehicle], new Set())).toEqual([]);
  });
});
