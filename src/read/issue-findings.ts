import { z } from 'zod';
import {
  type Finding,
  finding,
  FINDING_CODES,
  type FindingCode,
  nearestName,
} from '../findings/index.ts';
import {
  descriptionOf,
  innerSchema,
  type IssueParams,
  mayBeLeftOut,
  type Schema,
} from '../schema/index.ts';
import { type Path, type PlacedValue, valueAt } from './placed.ts';
import { kindInWords, knownKeys, schemaAt, takesKindOf } from './schema-walk.ts';
import { clip, describeValue, listed } from './words.ts';

type Issue = z.core.$ZodIssue;

/** Where an issue stands: the value, its schema, and both of their roots for what lies around it. */
interface Spot {
  readonly source: PlacedValue;
  readonly path: Path;
  readonly schema: Schema | undefined;
  readonly value: unknown;
}

/** A finding with the key that it is about, so that an echo of another one can be told. */
interface Told {
  readonly finding: Finding;
  readonly missing?: string;
  readonly meant?: string;
}

/**
 * Turns the issues of a failed parse into findings, each at its place in the file.
 *
 * @returns one finding a mistake: of a union, those of the branch that was meant; a missing field whose
 * misspelling is found already is left out
 */
export function issueFindings(
  issues: readonly Issue[],
  schema: Schema,
  source: PlacedValue,
): readonly Finding[] {
  const told = issues.flatMap((issue) => tell(issue, schema, source, []));
  const meant = new Set(told.map((one) => one.meant).filter((name) => name !== undefined));
  return told
    .filter(({ missing }) => missing === undefined || !meant.has(missing))
    .map((one) => one.finding);
}

function tell(issue: Issue, schema: Schema, source: PlacedValue, base: Path): readonly Told[] {
  const steps = issue.path.filter((step) => typeof step !== 'symbol');
  const path = [...base, ...steps];
  const here = schemaAt(schema, steps);
  const spot: Spot = { source, path, schema: here, value: valueAt(source.value, path) };
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(spot, key));
  if (issue.code === 'invalid_key') return [badKey(spot, issue)];
  if (spot.value === undefined) return [missingKey(spot)];
  if (spot.value === null) return [emptyValue(spot)];
  if (issue.code === 'invalid_union') return tellBranch(issue, spot);
  return [{ finding: findingOf(issue, spot) }];
}

/** Of a union, the branch that takes this kind of value with the fewest keys astray. */
function tellBranch(issue: z.core.$ZodIssueInvalidUnion, spot: Spot): readonly Told[] {
  const inner = spot.schema && innerSchema(spot.schema);
  const options = inner instanceof z.core.$ZodUnion ? inner._zod.def.options : [];
  const branches = issue.errors.flatMap((issues, index) => {
    const schema = options[index];
    return schema && takesKindOf(schema, spot.value) ? [{ issues, schema }] : [];
  });
  const [best] = branches.toSorted((a, b) => astray(a.issues) - astray(b.issues));
  if (!best) return [{ finding: findingOf(issue, spot) }];
  return best.issues.flatMap((one) => tell(one, best.schema, spot.source, spot.path));
}

const astray = (issues: readonly Issue[]): number =>
  issues.reduce((sum, one) => sum + (one.code === 'unrecognized_keys' ? one.keys.length : 1), 0);

/** What became of fields that files once had, by their names with those they stood in. */
const MOVED: ReadonlyMap<string, string> = new Map([
  ['crowd', 'Say where people may be: "cockpit: { from, to, halfBreadth, seatHeight }"'],
  ['gyration', 'Take it out: no period of roll is told'],
  ['drive.water', 'Write it once, beside "drive:" and not in it: "water: fresh", "sea" or "both"'],
]);

function unknownKey({ source, path, schema }: Spot, key: string): Told {
  const known = knownKeys(schema);
  const nearest = nearestName(key, known);
  const moved = MOVED.get([...path, key].join('.'));
  const instead = moved ?? (nearest === undefined ? undefined : `Did you mean "${nearest}:"?`);
  const details = {
    received: `"${key}:"`,
    expected: `one of ${listed(known)}`,
    ...(instead !== undefined && { remedy: instead }),
  };
  const place = source.placeOfKey([...path, key]);
  const told = { finding: finding('UNKNOWN_KEY', place, details) };
  return nearest === undefined ? told : { ...told, meant: pathKey([...path, nearest]) };
}

function missingKey({ source, path, schema }: Spot): Told {
  const key = path.at(-1);
  const details = {
    received: `no ${key === undefined ? 'value' : `"${key}:"`}`,
    expected: described(kindInWords(schema), schema),
    ...(key !== undefined && { remedy: `Add "${key}:"` }),
  };
  return { finding: finding('MISSING_KEY', source.place(path), details), missing: pathKey(path) };
}

function emptyValue({ source, path, schema }: Spot): Told {
  const key = path.at(-1);
  const isField = typeof key === 'string';
  const required = isField && !mayBeLeftOut(schema);
  const remedy = required ? `Write a value after "${key}:"` : 'Write a value, or take the line out';
  const received = isField ? `nothing after "${key}:"` : 'nothing';
  const details = { received, expected: described(kindInWords(schema), schema), remedy };
  const place = source.place(path);
  return { finding: finding(required ? 'MISSING_KEY' : 'WRONG_TYPE', place, details) };
}

function badKey({ source, path }: Spot, issue: z.core.$ZodIssueInvalidKey): Told {
  const expected = issue.issues[0]?.message ?? 'another name';
  const details = { received: `the name ${describeValue(String(path.at(-1)))}`, expected };
  return { finding: finding('WRONG_TYPE', source.placeOfKey(path), details) };
}

/** What a single value lacks. */
function findingOf(issue: Issue, spot: Spot): Finding {
  const { schema, value } = spot;
  const place = spot.source.place(spot.path);
  const tellAs = (code: FindingCode, wanted: string, remedy?: string): Finding =>
    finding(code, place, {
      received: describeValue(value),
      expected: described(wanted, schema),
      ...(remedy !== undefined && { remedy }),
    });
  switch (issue.code) {
    case 'invalid_value': {
      const known = issue.values.map(String);
      const nearest = typeof value === 'string' ? nearestName(value, known) : undefined;
      const remedy = nearest === undefined ? undefined : `Did you mean "${nearest}"?`;
      return tellAs('WRONG_VALUE', `one of ${listed(known)}`, remedy);
    }
    case 'custom': {
      const params = paramsOf(issue);
      if (!params) return tellAs('WRONG_VALUE', issue.message);
      const expected = described(params.expected, schema);
      return finding(params.finding, place, { received: clip(params.received), expected });
    }
    case 'too_small':
      return value === ''
        ? tellAs('WRONG_TYPE', 'text that is not empty')
        : tellAs('OUT_OF_RANGE', `at least ${issue.minimum} ${UNIT_OF[issue.origin] ?? ''}`.trim());
    case 'too_big':
      return tellAs(
        'OUT_OF_RANGE',
        `at most ${issue.maximum} ${UNIT_OF[issue.origin] ?? ''}`.trim(),
      );
    case 'invalid_format':
      return tellAs('WRONG_TYPE', FORMATS[issue.format] ?? issue.message);
    case 'invalid_type':
    case 'invalid_union':
    case 'invalid_key':
    case 'invalid_element':
    case 'not_multiple_of':
    case 'unrecognized_keys': {
      const quote =
        typeof value === 'boolean' ? 'If it is meant as text, put it in quotes' : undefined;
      return tellAs('WRONG_TYPE', kindInWords(schema), quote);
    }
  }
}

const UNIT_OF: Readonly<Record<string, string>> = { string: 'characters', array: 'entries' };
const FORMATS: Readonly<Record<string, string>> = {
  email: 'an e-mail address, such as name@example.org',
};

/** What our own fields say of a value (see schema/fields.ts); undefined for a plain refinement. */
function paramsOf(issue: z.core.$ZodIssueCustom): IssueParams | undefined {
  const params: Readonly<Record<string, unknown>> = issue.params ?? {};
  const { finding: code, expected, received } = params;
  if (!isFindingCode(code)) return undefined;
  return { finding: code, expected: String(expected), received: String(received) };
}

const isFindingCode = (code: unknown): code is FindingCode =>
  typeof code === 'string' && Object.hasOwn(FINDING_CODES, code);

function described(wanted: string, schema: Schema | undefined): string {
  const description = descriptionOf(schema);
  return description === undefined ? wanted : `${wanted}: ${description}`;
}

const pathKey = (path: Path): string => JSON.stringify(path);
