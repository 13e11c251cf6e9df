import { type Document, parseDocument, type YAMLError } from 'yaml';
import { type Finding, finding, type FindingCode } from '../findings/index.ts';
import type { PlacedValue } from './placed.ts';
import { plainValue } from './plain-value.ts';
import { LONGEST_YAML, tooLarge } from './read-text.ts';
import { clip, CONTROL } from './words.ts';
import { YamlPlaces } from './yaml-place.ts';

/** A YAML text as a plain value with its places. With a syntax error the value is undefined. */
export interface YamlText extends PlacedValue {
  readonly findings: readonly Finding[];
}

/** After a bracket is left open, later lines only echo it. */
const MAX_SYNTAX_FINDINGS = 50;

/**
 * Reads a YAML text that keeps to plain blocks, lists and values.
 *
 * @param file - its name in findings
 * @returns the value, with a finding for each syntax error and for each part of YAML that is refused (anchors,
 * aliases, tags, directives, merge keys, keys that are not text, several documents); it never throws
 */
export function readYaml(text: string, file: string): YamlText {
  const early = unreadable(text, file);
  if (early) return withoutValue(file, [early]);
  const document = parseDocument(text, { prettyErrors: false, uniqueKeys: false });
  const findings = [...directiveFindings(text, file, document), ...syntaxFindings(file, document)];
  if (findings.some(({ code }) => code === 'YAML_SYNTAX')) return withoutValue(file, findings);
  const places = new YamlPlaces(file, document.contents);
  const value = plainValue(document.contents, { file, findings });
  return {
    file,
    value,
    findings,
    place: (path = []) => places.place(path),
    placeOfKey: (path) => places.placeOfKey(path),
  };
}

function withoutValue(file: string, findings: readonly Finding[]): YamlText {
  const place = () => ({ file });
  return { file, value: undefined, findings, place, placeOfKey: place };
}

function unreadable(text: string, file: string): Finding | undefined {
  const bytes = Buffer.byteLength(text);
  if (bytes > LONGEST_YAML) return tooLarge(file, bytes, LONGEST_YAML);
  const control = CONTROL.exec(text);
  if (!control) return undefined;
  const code = control[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
  const range = [control.index, control.index + 1] as const;
  return finding(
    'YAML_SYNTAX',
    { file, range },
    {
      received: `the control character U+${code}`,
      remedy: 'Take the character out, and save the file as plain text in UTF-8',
    },
  );
}

/** A directive changes how the rest is read; `parseDocument` only warns of one that it does not know. */
function directiveFindings(text: string, file: string, document: Document): Finding[] {
  const { yaml, tags } = document.directives ?? {};
  const unknown = document.warnings.some(({ code }) => code === 'BAD_DIRECTIVE');
  const declared = Object.keys(tags ?? {}).some((handle) => handle !== '!!');
  if (!yaml?.explicit && !declared && !unknown) return [];
  const line = /^\uFEFF?(%.*)$/m.exec(text);
  const written = line?.[1] ?? '%';
  const start = line ? line.index + line[0].indexOf('%') : 0;
  return [
    finding(
      'YAML_NOT_ALLOWED',
      { file, range: [start, start + written.trimEnd().length] },
      { received: `the directive ${clip(written.trim())}`, remedy: 'Take the line out' },
    ),
  ];
}

function syntaxFindings(file: string, document: Document): readonly Finding[] {
  const exhausted = document.errors.find(({ code }) => code === 'RESOURCE_EXHAUSTION');
  const errors = exhausted
    ? [exhausted]
    : [...document.errors, ...document.warnings]
        // An unknown tag or directive is found, and placed, where it is refused.
        .filter(({ code }) => code !== 'TAG_RESOLVE_FAILED' && code !== 'BAD_DIRECTIVE')
        .toSorted((a, b) => a.pos[0] - b.pos[0]);
  return errors.slice(0, MAX_SYNTAX_FINDINGS).map((error) => syntaxFinding(file, error));
}

interface Wording {
  readonly code?: FindingCode;
  readonly received?: string;
  readonly remedy?: string;
}

/** Errors of which we know more than the parser says. */
const WORDING: Readonly<Record<string, Wording>> = {
  MULTIPLE_DOCS: {
    code: 'YAML_NOT_ALLOWED',
    received: 'a second document after ---',
    remedy: 'Put it in a file of its own',
  },
  RESOURCE_EXHAUSTION: { received: 'blocks nested too deep to read' },
  TAB_AS_INDENT: { remedy: 'Indent with spaces, not tabs' },
  BAD_ALIAS: { code: 'YAML_NOT_ALLOWED' },
  BLOCK_AS_IMPLICIT_KEY: {
    remedy: 'Put text that has a colon in it in quotes; put a block on lines of its own',
  },
};

function syntaxFinding(file: string, error: YAMLError): Finding {
  const {
    code = 'YAML_SYNTAX',
    received = clip(error.message),
    remedy,
  } = WORDING[error.code] ?? {};
  const range = [error.pos[0], error.pos[1]] as const;
  return finding(code, { file, range }, { received, ...(remedy && { remedy }) });
}
