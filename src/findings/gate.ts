import type { CodeFacts } from './code-facts.ts';
import { FINDING_CODES, type FindingCode } from './codes.ts';
import type { Acceptance, Finding } from './finding.ts';

/** Nobody accepts these: no paper leaves the shop while one stands. */
const NEVER = [
  'FLOAT_SWAMPED',
  'FLOAT_NOT_UPRIGHT',
  'FLOAT_GOES_DOWN',
  'FLOAT_NOT_COMPUTED',
  'RATING_NOT_AFLOAT',
  'EDGE_BEARS_LITTLE',
  'ONE_AT_EDGE',
  'LOAD_OVER_RATING',
  'LOAD_OVER_METHOD',
  'PEOPLE_OVER_RATING',
  'PEOPLE_OVER_METHOD',
  'POWER_OVER_RATING',
  'POWER_OVER_METHOD',
  'ENGINE_TOO_HEAVY',
  'FUEL_OVER_TANK',
  'BOX_OUTSIDE_HULL',
  'WIRE_REFUSED',
  'FUSE_ABOVE_DEVICE',
  'TRAILER_OVERLOADED',
  'AXLE_OR_TYRE_OVERLOADED',
  'BRAKES_MISSING',
] as const;

/** Somebody with a name may take these upon themselves. */
const BY_NAME = [
  'FEW_TO_ONE_SIDE',
  'RESTS_ON_DEFAULTS',
  'HULL_WITHOUT_LINES',
  'CROWD_AT_END',
  'FLOAT_LOLLS',
  'LIST_AT_REST',
  'TRIM_OUT_OF_BAND',
  'GROWTH_OVER_LIMIT',
  'FOAM_SHORT',
  'CATEGORY_NOT_SCREENED',
  'STERN_FREEBOARD_LOW',
  'STEERING_MISMATCH',
] as const;

/** What is measured and put right at the handover: it keeps back the pack alone, and may be accepted too. */
const AT_HANDOVER = ['BALL_LOAD_LOW', 'BALL_LOAD_HIGH', 'VEHICLE_OVERLOADED'] as const;

/** Codes that an order may accept. */
export const ACCEPTABLE = [...BY_NAME, ...AT_HANDOVER] as const;

/** How a finding of safety stands between a boat and its papers. */
export type Gate = 'never' | 'by name' | 'at handover';

const GATES: ReadonlyMap<FindingCode, Gate> = new Map([
  ...NEVER.map((code) => [code, 'never'] as const),
  ...BY_NAME.map((code) => [code, 'by name'] as const),
  ...AT_HANDOVER.map((code) => [code, 'at handover'] as const),
]);
const MAY_BE_ACCEPTED: ReadonlySet<FindingCode> = new Set(ACCEPTABLE);

/** Undefined for a finding that no paper waits for. */
export const gateOf = (code: FindingCode): Gate | undefined => GATES.get(code);

/**
 * The findings, those that were accepted marked so: where what is found is no worse than what was accepted by more
 * than one unit of its last printed digit.
 */
export function withAcceptances(
  findings: readonly Finding[],
  accepted: readonly Acceptance[],
): readonly Finding[] {
  return findings.map((one) => {
    const by = accepted.find(
      (other) =>
        MAY_BE_ACCEPTED.has(one.code) && other.finding === one.code && !isWorse(one, other),
    );
    return by ? { ...one, accepted: by } : one;
  });
}

/**
 * Findings that keep an offer or a variation from being made, or the handover pack.
 *
 * @param paper - at handover what can be put right until then counts too
 */
export const openFindings = (
  findings: readonly Finding[],
  paper: 'offer' | 'handover',
): readonly Finding[] =>
  findings.filter(({ code, accepted }) => {
    const gate = gateOf(code);
    return gate !== undefined && !accepted && (gate !== 'at handover' || paper === 'handover');
  });

/**
 * The findings that stop a quote from being issued, each as the error that it is then: errors, open findings of safety, and
 * what its kind says.
 *
 * @param allowed - codes that the order allows, where its kind may be allowed at all
 */
export function stoppingIssue(
  findings: readonly Finding[],
  allowed: ReadonlySet<string>,
): readonly Finding[] {
  const open = new Set(openFindings(findings, 'offer'));
  const stops = (one: Finding): boolean => {
    const { stopsIssue }: CodeFacts = FINDING_CODES[one.code];
    const isError = one.severity === 'error' && gateOf(one.code) === undefined;
    const isKind = stopsIssue === 'always' || (stopsIssue !== undefined && !allowed.has(one.code));
    return isError || isKind || open.has(one);
  };
  return findings.filter(stops).map((one) => ({ ...one, severity: 'error' }));
}

/** True when a list holds an error that leaves nothing to compute: one that no gate holds back. */
export const stopsFigures = (findings: readonly Finding[]): boolean =>
  findings.some(({ code, severity }) => severity === 'error' && gateOf(code) === undefined);

/** Further from its limit than what was accepted; without a limit to compare with, other than that. */
function isWorse(one: Finding, accepted: Acceptance): boolean {
  const [received = '', expected, found = '', limit] = [
    one.received,
    one.expected,
    accepted.found,
    accepted.limit,
  ].map((text) => text?.replaceAll(/\s+/g, ' '));
  if (received === found && expected === limit) return false;
  const [now, then] = [firstNumber(received), firstNumber(found)];
  if (!now || !then || received.replace(now.text, '') !== found.replace(then.text, '')) return true;
  const unit = 1.000_001 * 10 ** -now.digits;
  const [limitNow, limitThen] = [firstNumber(expected), firstNumber(limit)];
  if (!limitNow || !limitThen) return Math.abs(now.value - then.value) > unit;
  return Math.abs(now.value - limitNow.value) > Math.abs(then.value - limitThen.value) + unit;
}

/** The first number of a text, however its thousands are parted. */
function firstNumber(text: string | undefined) {
  const found = /\d[\d,]*(?:\.\d+)?/.exec(text ?? '')?.[0].replace(/,+$/, '');
  if (found === undefined) return undefined;
  const value = Number(found.replaceAll(',', ''));
  return { text: found, value, digits: found.split('.')[1]?.length ?? 0 };
}
