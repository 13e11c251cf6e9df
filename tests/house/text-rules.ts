import { posix } from 'node:path';
import type { ProjectFile } from './project-files.ts';

/** What the filter before `safe` may be: both return text made by src/, never text of an order. */
const MAY_BE_SAFE = /\|\s*(?:svg|css)\s*(?:\([^()]*\))?\s*$/;

const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

/** Places in a template where text of an order could reach the page unescaped. */
export function unescaped({ path, text }: ProjectFile): readonly string[] {
  const code = text.replaceAll(/\{#[\s\S]*?#\}/g, (comment) => comment.replaceAll(/[^\n]/g, ' '));
  const safe = [...code.matchAll(/\|\s*safe\b/g)]
    .filter(({ index }) => {
      const opened = Math.max(code.lastIndexOf('{{', index), code.lastIndexOf('{%', index));
      return !MAY_BE_SAFE.test(code.slice(Math.max(opened, 0), index));
    })
    .map(({ index }) => `${path}:${lineAt(code, index)} "safe" after a filter other than svg, css`);
  const off = [...code.matchAll(/\{%-?\s*autoescape\s+false/g)].map(
    ({ index }) => `${path}:${lineAt(code, index)} leave autoescape on`,
  );
  return [...safe, ...off];
}

// Written so that this file does not hold what it looks for.
const OF_ONE_MACHINE: readonly RegExp[] = [
  /(?<![\w.])\/(?:work|root)\//,
  /(?<![\w.])\/(?:home|Users)\/[\w.-]+\//,
  /\b[A-Z]:\\Users\\/,
  /\bregistry\.(?:npmjs|yarnpkg|npmmirror)\b/,
  /"resolved":\s*"https?:/,
];

/** Lines that hold only on one machine: its paths, or the host that its packages came from. */
export function ofOneMachine({ path, text }: ProjectFile): readonly string[] {
  return text.split('\n').flatMap((line, index) => {
    const found = OF_ONE_MACHINE.map((pattern) => pattern.exec(line)?.[0]).find(Boolean);
    return found ? [`${path}:${index + 1} holds "${found}"`] : [];
  });
}

const SCHEMA_LINE = /^# yaml-language-server: \$schema=(\S+)[ \t]*\r?(?:\n|$)/;

/**
 * Files people write whose first line does not lead an editor to their schema.
 *
 * @param exists - tells whether a path from the top of the project is a file
 */
export function withoutSchemaLine(
  { path, text }: ProjectFile,
  exists: (path: string) => boolean,
): readonly string[] {
  const named = SCHEMA_LINE.exec(text)?.[1];
  if (named === undefined) return [`${path}:1 begin with "# yaml-language-server: $schema=..."`];
  const target = posix.join(posix.dirname(path), named);
  return exists(target) ? [] : [`${path}:1 names the schema ${target}, which is not there`];
}
