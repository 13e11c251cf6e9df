import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, it } from 'vitest';

const CHILD = path.join(import.meta.dirname, 'start-and-wait.ts');

function runs(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
}

it.each(['SIGKILL', 'SIGTERM', 'SIGINT'] as const)(
  'a program that gets %s takes its browser with it',
  async (signal) => {
    const child = spawn(process.execPath, ['--import', 'tsx', CHILD]);
    const [said] = await once(child.stdout, 'data');
    const pid = Number(String(said));
    expect(runs(pid)).toBe(true);
    child.kill(signal);
    for (let tries = 0; runs(pid) && tries < 100; tries += 1) await wait(50);
    child.kill('SIGKILL');
    expect(runs(pid)).toBe(false);
  },
  60_000,
);
