import { defineConfig } from 'vitest/config';

const browserTests = 'tests/browser/**/*.test.ts';

export default defineConfig({
  test: {
    reporters: ['default', './tests/support/reporter.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: [browserTests],
          // Walking every bench takes seconds, more on a busy machine; speed is for `npm run bench`.
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: [browserTests],
          testTimeout: 60_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
    coverage: {
      provider: 'v8',
      include: ['server/**/*.ts'],
      // Run as processes of their own: the server by its tests, the check by npm test.
      exclude: ['server/main.ts', 'server/catalogue/check.ts'],
      reporter: ['text-summary', 'html', 'json-summary'],
      thresholds: {
        statements: 90,
        branches: 90,
        functions: 90,
        lines: 90,
        'server/reasoning/**/*.ts': { branches: 100 },
      },
    },
  },
});
