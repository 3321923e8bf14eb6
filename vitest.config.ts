import { defineConfig } from 'vitest/config'

/**
 * Two sets: `unit` is quick and touches no machine beyond reading its own fixtures (part of `npm run check`);
 * `whole` starts real stores, processes and papers (only in `npm test`).
 */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: [
            'src/**/*.test.ts',
            'tests/content/**/*.test.ts',
            'tests/laws/**/*.test.ts',
            'tests/living/some-days.test.ts',
            'tests/published/**/*.test.ts',
          ],
          exclude: ['src/storage/**', 'src/cli/**', 'src/server/**'],
          // Pure code keeps nothing between tests: the content is read once by each worker and not by each of 180 files.
          isolate: false,
          // A busy machine is no fault of the code: the limit only ends a test that hangs.
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'whole',
          include: [
            'src/storage/**/*.test.ts',
            'src/cli/**/*.test.ts',
            'src/server/**/*.test.ts',
            'tests/approved/**/*.test.ts',
            'tests/journeys/**/*.test.ts',
            'tests/living/every-day.test.ts',
            'tests/house/**/*.test.ts',
          ],
          globalSetup: './tests/build-once.ts',
          // Each file has stores, ports and folders of its own, so that two processors are used; how long a test may take says
          // only when one hangs.
          maxWorkers: 2,
          testTimeout: 300_000,
          hookTimeout: 300_000,
        },
      },
    ],
  },
})
