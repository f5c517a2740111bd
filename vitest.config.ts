import { defineConfig } from 'vitest/config';

// Tests run from source: the `source` export condition of each package. Never list `import` here.
const conditions = ['source', 'module', 'node', 'default'];
const resolution = { resolve: { conditions }, ssr: { resolve: { conditions } } };

// Laws are looked for from the same seed every time; another with LAW_SEED=<n>.
const setupFiles = ['tests/law-seed.ts'];

export default defineConfig({
  test: {
    // All cores: the main process has little to do, and the server's tests often wait.
    maxWorkers: '100%',
    onConsoleLog: () => {
      throw new Error('a test printed to the console');
    },
    projects: [
      {
        ...resolution,
        test: {
          setupFiles,
          name: 'unit',
          include: ['libs/**/*.spec.ts', 'apps/**/*.spec.ts'],
          exclude: ['**/*.db.spec.ts', '**/*.law.spec.ts'],
          // Libs keep no state between tests: one context for all files spares most of the time.
          isolate: false,
        },
      },
      // Long searches for a counter-example: solvers and bounds against brute force.
      {
        ...resolution,
        test: { setupFiles, name: 'laws', include: ['{libs,apps}/**/*.law.spec.ts'], testTimeout: 120_000 },
      },
      { ...resolution, test: { setupFiles, name: 'repository', include: ['tests/repository/**/*.spec.ts'] } },
      { ...resolution, test: { setupFiles, name: 'published', include: ['tests/published/**/*.spec.ts'] } },
      {
        ...resolution,
        test: {
          setupFiles,
          name: 'scenarios',
          include: ['tests/scenarios/**/*.spec.ts'],
          testTimeout: 120_000,
        },
      },
      // On a real PostgreSQL, one for the run: apps/server/src/testing/run-postgres.ts.
      {
        ...resolution,
        test: {
          setupFiles,
          name: 'server',
          include: ['apps/server/src/**/*.db.spec.ts'],
          globalSetup: ['apps/server/src/testing/run-postgres.ts'],
          // Loading the framework anew for each file takes longer than most files.
          isolate: false,
          testTimeout: 120_000,
          hookTimeout: 180_000,
        },
      },
      // In Chromium, against what `npm start` runs: `npm run browser-tests` builds both first.
      {
        ...resolution,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.spec.ts'],
          globalSetup: ['tests/browser/testing/run-office.ts'],
          maxWorkers: 2,
          testTimeout: 120_000,
          hookTimeout: 180_000,
        },
      },
      {
        ...resolution,
        test: { setupFiles, name: 'cli', include: ['tests/cli/**/*.spec.ts'], testTimeout: 120_000 },
      },
    ],
  },
});
