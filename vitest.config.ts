import { defineConfig } from 'vitest/config';

// Tests run from source: the `source` export condition of each package. Never list `import` here.
const conditions = ['source', 'module', 'node', 'default'];
const shared = { resolve: { conditions }, ssr: { resolve: { conditions } } };

export default defineConfig({
  test: {
    onConsoleLog: () => {
      throw new Error('a test printed to the console');
    },
    projects: [
      {
        ...shared,
        test: {
          name: 'unit',
          include: ['libs/**/*.spec.ts', 'apps/**/*.spec.ts'],
          exclude: ['**/*.db.spec.ts'],
        },
      },
      { ...shared, test: { name: 'repository', include: ['tests/repository/**/*.spec.ts'] } },
      { ...shared, test: { name: 'published', include: ['tests/published/**/*.spec.ts'] } },
      {
        ...shared,
        test: { name: 'scenarios', include: ['tests/scenarios/**/*.spec.ts'], testTimeout: 120_000 },
      },
      // On a real PostgreSQL, one for the run: apps/server/src/testing/run-postgres.ts.
      {
        ...shared,
        test: {
          name: 'server',
          include: ['apps/server/src/**/*.db.spec.ts'],
          globalSetup: ['apps/server/src/testing/run-postgres.ts'],
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
      { ...shared, test: { name: 'cli', include: ['tests/cli/**/*.spec.ts'], testTimeout: 120_000 } },
    ],
  },
});
