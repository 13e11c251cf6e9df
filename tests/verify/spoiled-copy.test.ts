import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, it } from 'vitest';

const HOUSE = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'orlop-'));

afterAll(() => rmSync(folder, { recursive: true }));

it('a copy of the program with one number spoiled fails, as whoever runs it is told', () => {
  for (const name of ['src', 'package.json', 'catalogue', 'orders'])
    cpSync(path.join(HOUSE, name), path.join(folder, name), { recursive: true });
  symlinkSync(path.join(HOUSE, 'node_modules'), path.join(folder, 'node_modules'));
  const file = path.join(folder, 'src/performance/drag.ts');
  const source = readFileSync(file, 'utf8');
  expect(source).toContain('return 0.075');
  writeFileSync(file, source.replace('return 0.075', 'return 0.076'));
  const { status, stdout } = spawnSync(process.execPath, ['src/cli/orlop.js', 'verify'], {
    cwd: folder,
    encoding: 'utf8',
  });
  expect(status).toBe(1);
  expect(stdout).toMatch(/^FAIL {2}drive: Cf at Re 1e\+6/m);
  expect(stdout).not.toMatch(/^FAIL {2}money/m);
});
