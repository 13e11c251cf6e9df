import { readFileSync, realpathSync, type Stats, statSync } from 'node:fs';
import path from 'node:path';
import { type Finding, finding, type FindingCode } from '../findings/index.ts';

/** Bytes. An order of 200 lines has some 8,000. */
export const LONGEST_YAML = 512 * 1024;
/** Bytes. A price list of 20,000 rows has some 1,500,000. */
export const LONGEST_CSV = 8 * 1024 * 1024;

type ReadText =
  | { readonly text: string; readonly finding?: never }
  | { readonly text?: never; readonly finding: Finding };

interface ReadRules {
  readonly most: number;
  /** Raised when the bytes are not UTF-8. */
  readonly badText: FindingCode;
}

/**
 * Reads one text file of a workspace, without its byte order mark.
 *
 * @param file - relative to the workspace, with forward slashes
 * @returns the text; or why there is none: it is missing, not a regular file, reached by a link that leaves the
 * workspace, too large, or not UTF-8
 */
export function readText(workspace: string, file: string, rules: ReadRules): ReadText {
  const full = path.join(workspace, file);
  const facts = factsOf(full);
  if (!facts) return { finding: finding('FILE_MISSING', { file }, { received: 'no such file' }) };
  if (!facts.isFile()) return { finding: notAFile(file, facts) };
  if (facts.size > rules.most) return { finding: tooLarge(file, facts.size, rules.most) };
  try {
    if (leaves(workspace, full)) return { finding: linkOut(file) };
    return decode(readFileSync(full), file, rules);
  } catch {
    const received = 'a file that may not be read';
    const remedy = 'Allow it to be read';
    return { finding: finding('FILE_MISSING', { file }, { received, remedy }) };
  }
}

function factsOf(full: string): Stats | undefined {
  try {
    return statSync(full, { throwIfNoEntry: false });
  } catch {
    // A link to itself, or a folder that may not be entered: there is no file to read.
    return undefined;
  }
}

function decode(bytes: Uint8Array, file: string, rules: ReadRules): ReadText {
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    const received = 'bytes that are not UTF-8 text';
    const remedy = 'Save the file as UTF-8';
    return { finding: finding(rules.badText, { file }, { received, remedy }) };
  }
}

function linkOut(file: string): Finding {
  const received = 'a link that leads out of the workspace';
  return finding('FILE_MISSING', { file }, { received, remedy: 'Put the file itself here' });
}

function notAFile(file: string, facts: Stats): Finding {
  const received = facts.isDirectory() ? 'a folder' : 'something that is not a regular file';
  return finding('FILE_MISSING', { file }, { received, remedy: 'Put a file of this name here' });
}

function leaves(workspace: string, full: string): boolean {
  const inside = path.relative(realpathSync(workspace), realpathSync(full));
  return inside === '..' || inside.startsWith(`..${path.sep}`) || path.isAbsolute(inside);
}

/** The finding of a file over its limit, in bytes. */
export function tooLarge(file: string, bytes: number, most: number): Finding {
  const kilobytes = (count: number): string => `${Math.ceil(count / 1024)} KiB`;
  return finding(
    'FILE_TOO_LARGE',
    { file },
    { received: kilobytes(bytes), expected: `at most ${kilobytes(most)}` },
  );
}
