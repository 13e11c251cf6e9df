import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** A file of the project: its path from the top, with `/`, and its text. */
export type ProjectFile = { readonly path: string; readonly text: string };

const NOT_OURS = new Set(['node_modules', '_site', '.cache', '.git']);

/** Every path below `root`, where there is no git to ask. */
function walk(root: string, folder = ''): readonly string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    if (NOT_OURS.has(entry.name)) return [];
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    return entry.isDirectory() ? walk(root, path) : [path];
  });
}

function listed(root: string): readonly string[] {
  if (!existsSync(join(root, '.git'))) return walk(root);
  const args = ['ls-files', '-z', '--cached', '--others', '--exclude-standard'];
  return execFileSync('git', args, { cwd: root, encoding: 'utf8', timeout: 10_000 }).split('\0');
}

/**
 * Every text file that is, or is about to be, under version control; files with a NUL byte
 * (pictures, fonts) are left out.
 */
export function projectFiles(root: string): readonly ProjectFile[] {
  return listed(root).flatMap((path) => {
    const at = join(root, path);
    if (path === '' || !existsSync(at) || !statSync(at).isFile()) return [];
    const bytes = readFileSync(at);
    return bytes.includes(0) ? [] : [{ path, text: bytes.toString('utf8') }];
  });
}
