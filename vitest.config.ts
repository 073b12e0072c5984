import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['src/**/*.test.ts', 'test/published/**/*.test.ts', 'test/cases/**/*.test.ts'],
          exclude: ['test/cases/documents/**'],
          // What is not done in time is slow only where nothing else runs on the machine.
          testTimeout: 30_000,
          // Nearly all files load the same pure modules, which takes longer than their tests: a worker loads them once.
          isolate: false,
          unstubGlobals: true,
        },
      },
      {
        test: {
          name: 'slow',
          // Typesetting a whole packet takes seconds; the documents are tested with what is slow.
          include: [
            ...[
              'test/store/**/*.test.ts',
              'test/acceptance/**/*.test.ts',
              'test/referee/**/*.test.ts',
              'test/soak/**/*.test.ts',
            ],
            'test/cases/documents/**/*.test.ts',
          ],
          exclude: ['test/acceptance/web/**'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // Each file has its own folders, databases and ports, so that files run beside each other, and one after the
          // other in a process that has the program loaded.
          maxWorkers: 2,
          isolate: false,
          globalSetup: ['test/acceptance/web/prepare-folder.ts', 'test/store/postgres-server.ts'],
        },
      },
    ],
  },
})
