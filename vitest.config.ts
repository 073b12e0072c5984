import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    projects: [
      {
        test: { name: 'unit', include: ['src/**/*.test.ts', 'test/published/**/*.test.ts', 'test/cases/**/*.test.ts'] },
      },
      {
        test: {
          name: 'slow',
          include: ['test/store/**/*.test.ts', 'test/acceptance/**/*.test.ts', 'test/referee/**/*.test.ts'],
          exclude: ['test/acceptance/web/**'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
})
