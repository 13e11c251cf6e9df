import { distance } from 'fastest-levenshtein';
import type { Severity } from './code-facts.ts';
import { FINDING_CODES, type FindingCode } from './codes.ts';

/** Where something is written: a file and, when it is known, the characters from start to before end. */
export interface Place {
  readonly file: string;
  readonly range?: readonly [start: number, end: number];
}

/** What somebody with a name looked at and takes upon themselves, as the order has it. */
export interface Acceptance {
  readonly finding: FindingCode;
  /** What was found then, as it was printed. */
  readonly found: string;
  /** What was wanted then, where it was printed. */
  readonly limit?: string | undefined;
  readonly by: string;
  readonly date: string;
  readonly reason: string;
}

/** One thing that a check wants a person to know: data; the words are made at the edge. */
export interface Finding {
  readonly code: FindingCode;
  readonly severity: Severity;
  readonly place: Place;
  /** What stands there, or what was computed. */
  readonly received: string;
  /** What was wanted. */
  readonly expected?: string;
  /** How to fix it. */
  readonly remedy: string;
  /** Who took it upon themselves. */
  readonly accepted?: Acceptance;
}

interface FindingDetails {
  readonly received: string;
  readonly expected?: string;
  readonly remedy?: string;
}

/** Makes a finding; its severity, and its mending sentence unless one is given, belong to its code. */
export function finding(code: FindingCode, place: Place, details: FindingDetails): Finding {
  const facts = FINDING_CODES[code];
  return { code, severity: facts.severity, place, remedy: facts.remedy, ...details };
}

/** True when a list holds a finding that stops a document from being made. */
export function hasErrors(findings: readonly Finding[]): boolean {
  return findings.some((one) => one.severity === 'error');
}

/**
 * The known name nearest to what was typed, or undefined when none is near enough to be meant. A short name
 * may differ by one letter, a longer one by two or by a third of its letters; else the one name that what was
 * typed begins.
 */
export function nearestName(typed: string, known: Iterable<string>): string | undefined {
  const limit = typed.length < 4 ? 1 : Math.max(2, Math.floor(typed.length / 3));
  const wanted = typed.toLowerCase();
  let best: { name: string; away: number } | undefined;
  const begun: string[] = [];
  for (const name of known) {
    const other = name.toLowerCase();
    if (wanted.length > 2 && other.startsWith(wanted)) begun.push(name);
    if (Math.abs(other.length - wanted.length) > limit) continue;
    const away = distance(wanted, other);
    if (away <= limit && (!best || away < best.away)) best = { name, away };
  }
  return best?.name ?? (begun.length === 1 ? begun[0] : undefined);
}
