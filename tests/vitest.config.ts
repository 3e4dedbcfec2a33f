import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** These measure time, or build the site: they run after all others, one at a time, or each would disturb the other. */
const alone = [
  'tests/calc/holes/speed.test.ts',
  'tests/rulebook/one-number-changed.test.ts',
  'tests/rulebook/local/site.test.ts',
];

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    testTimeout: 30_000,
    // Nothing here leaves state behind in a module, and reading every module once a file took a third of the time.
    isolate: false,
    projects: [
      {
        extends: true,
        test: {
          name: 'together',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/site/**', 'node_modules/**', ...alone],
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: { name: 'alone', include: alone, maxWorkers: 1, sequence: { groupOrder: 1 } },
      },
    ],
  },
});
