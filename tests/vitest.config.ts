import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: '.',
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/seed.ts'],
    // Dates and numbers are formatted the same on every machine, and the demonstration stands on its day.
    env: { TZ: 'UTC', LANG: 'en_AU.UTF-8', ORLOP_TODAY: '2026-11-26' },
    // Files share their modules, so that the demonstration is computed once and not a dozen times.
    isolate: false,
    // Each worker computes the demonstration for itself: more than two cost more than they gain.
    maxWorkers: 2,
    // Far beyond what any takes alone: a busy machine must not fail a test.
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
