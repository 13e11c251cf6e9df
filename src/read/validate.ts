import type { z } from 'zod';
import type { Finding } from '../findings/index.ts';
import type { Sourced } from '../schema/index.ts';
import { issueFindings } from './issue-findings.ts';
import type { PlacedValue } from './placed.ts';

export interface Validated<T> {
  /** Only when there is no finding. */
  readonly sourced?: Sourced<T>;
  readonly findings: readonly Finding[];
}

/**
 * Checks a plain value against a schema.
 *
 * @returns the typed value with its places, or a finding for every mistake in it
 */
export function validate<T>(schema: z.ZodType<T>, source: PlacedValue): Validated<T> {
  const result = schema.safeParse(source.value);
  if (!result.success) {
    return { findings: issueFindings(result.error.issues, schema, source) };
  }
  return { sourced: sourcedOf(result.data, source), findings: [] };
}

/** A typed value with the places of the plain one that it was made of. */
export function sourcedOf<T>(value: T, source: PlacedValue): Sourced<T> {
  return { value, file: source.file, place: (path = []) => source.place(path) };
}
