import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: '.',
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/seed.ts'],
    // Dates and numbers are formatted the same on every machine.
    env: { TZ: 'UTC', LANG: 'en_AU.UTF-8' },
    isolate: false,
    testTimeout: 10_000,
  },
});
