import { lstatSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { type Finding, finding } from '../findings/index.ts';
import { LONGEST_CSV, LONGEST_YAML, readText } from './read-text.ts';

/** What is read of a workspace: the texts by file name, and what went wrong on the way. */
export interface Reading {
  readonly workspace: string;
  readonly sources: Map<string, string>;
  readonly findings: Finding[];
}

/** A text of the workspace; undefined, with a finding, when it cannot be read. */
export function readSource(reading: Reading, file: string): string | undefined {
  const csv = /\.csv$/i.test(file);
  const { text, finding: failed } = readText(reading.workspace, file, {
    most: csv ? LONGEST_CSV : LONGEST_YAML,
    badText: csv ? 'CSV_ROW' : 'YAML_SYNTAX',
  });
  if (text === undefined) reading.findings.push(failed);
  else reading.sources.set(file, text);
  return text;
}

/** The files of a folder that have an ending, by name; with a finding when there is no such folder. */
export function filesIn(reading: Reading, folder: string, ending: RegExp): readonly string[] {
  const full = path.join(reading.workspace, folder);
  try {
    return readdirSync(full, { withFileTypes: true })
      .filter((entry) => !entry.isDirectory() && !entry.name.startsWith('.'))
      .map(({ name }) => name)
      .filter((name) => ending.test(name))
      .toSorted((a, b) => (a < b ? -1 : 1))
      .map((name) => `${folder}/${name}`);
  } catch {
    reading.findings.push(
      finding('FILE_MISSING', { file: folder }, { received: 'no such folder' }),
    );
    return [];
  }
}

/** True when a path is a folder that can be looked into. */
export function isFolder(full: string): boolean {
  try {
    return statSync(full).isDirectory();
  } catch {
    return false;
  }
}

/** True when anything goes by that name, a folder or a broken link too. */
export const isThere = (full: string): boolean =>
  lstatSync(full, { throwIfNoEntry: false }) !== undefined;

export const YAML_FILE = /\.ya?ml$/i;
export const CSV_FILE = /\.csv$/i;
