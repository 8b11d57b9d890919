import { defineConfig } from 'vitest/config';

/** Long enough for a property test on a busy machine of two cores. */
const unitTimeout_ms = 30_000;
/** A journey waits for a real browser and a real server. */
const journeyTimeout_ms = 120_000;

export default defineConfig({
  test: {
    reporters: ['default'],
    projects: [
      {
        test: {
          name: 'unit',
          setupFiles: ['tests/seed.ts'],
          include: ['{reference,packages,apps,scripts,tests}/**/*.test.{ts,tsx}'],
          exclude: ['**/node_modules/**', '**/dist/**', 'tests/{browser,docs}/**'],
          testTimeout: unitTimeout_ms,
          hookTimeout: unitTimeout_ms,
          maxWorkers: '100%',
        },
      },
      {
        // What the documents show, run through the built command line.
        test: {
          name: 'docs',
          include: ['tests/docs/**/*.test.ts'],
          testTimeout: journeyTimeout_ms,
          hookTimeout: journeyTimeout_ms,
        },
      },
      {
        // One browser at a time: the journeys measure and wait, and must not race one another for the machine.
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: journeyTimeout_ms,
          hookTimeout: journeyTimeout_ms,
          fileParallelism: false,
        },
      },
    ],
  },
});
