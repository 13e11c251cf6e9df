import { execFile } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The top of the repository. */
export const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

const CONFIGURATION = [
  'package.json',
  'tsconfig.json',
  '.dependency-cruiser.cjs',
  '.oxlintrc.json',
] as const;

/** Path inside the tree -> text of the file. */
export type Files = Readonly<Record<string, string>>;

/**
 * Writes a tree under the temporary folder that the gates can be run on: this repository's own
 * configuration and packages, and the given files instead of its sources.
 *
 * @returns the absolute path of the tree; `removeTree` takes it away again
 */
export function writeTree(files: Files): string {
  const tree = mkdtempSync(join(tmpdir(), 'orlop-gate-'));
  for (const name of CONFIGURATION) cpSync(join(ROOT, name), join(tree, name));
  symlinkSync(join(ROOT, 'node_modules'), join(tree, 'node_modules'), 'dir');
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(tree, path)), { recursive: true });
    writeFileSync(join(tree, path), text);
  }
  return tree;
}

/** Removes what `writeTree` made; the packages behind the link stay. */
export function removeTree(tree: string): void {
  rmSync(tree, { recursive: true, force: true });
}

/** What a gate said. */
export type GateResult = { readonly status: number; readonly output: string };

/**
 * Runs one of the installed commands in a tree, with the arguments that package.json gives it.
 *
 * @returns the exit status (-1 when it had to be stopped) and all that was printed
 */
export function runGate(tree: string, command: string, args: readonly string[]) {
  return new Promise<GateResult>((done) => {
    execFile(
      join(ROOT, 'node_modules/.bin', command),
      args,
      { cwd: tree, timeout: 30_000, maxBuffer: 20_000_000, env: { ...process.env, NO_COLOR: '1' } },
      (error, stdout, stderr) => {
        const status = error === null ? 0 : typeof error.code === 'number' ? error.code : -1;
        done({ status, output: `${stdout}\n${stderr}` });
      },
    );
  });
}
