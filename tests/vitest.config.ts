import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** This measures time: it runs after all others, or they would disturb it. */
const timed = ['tests/calc/holes/speed.test.ts'];

/** These build the site, and are by far the longest: begun last, one of them would run on alone. */
const building = [
  'tests/rulebook/one-number-changed.test.ts',
  'tests/rulebook/local/site.test.ts',
  'tests/rulebook/mistakes-stop-the-build.test.ts',
];

/** These run whole commands: no units, and no part of the minute that types and unit tests may take. */
const whole = [
  ...building,
  'tests/rulebook/local/new-folder.test.ts',
  'tests/cli/commands.test.ts',
  'tests/cli/content-check.test.ts',
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const builds = ({ moduleId }: TestSpecification) => building.some((name) => moduleId.endsWith(name));
    const sorted = await super.sort(files);
    return [...sorted.filter(builds), ...sorted.filter((each) => !builds(each))];
  }
}

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    testTimeout: 30_000,
    setupFiles: ['tests/same-cases.ts'],
    // Nothing here leaves state behind in a module, and reading every module once a file took a third of the time.
    isolate: false,
    sequence: { sequencer: LongestFirst },
    // By itself the runner leaves one of two cores idle.
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          name: 'together',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/site/**', 'node_modules/**', ...timed, ...whole],
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: { name: 'alone', include: timed, maxWorkers: 1, sequence: { groupOrder: 1 } },
      },
      {
        extends: true,
        test: {
          name: 'whole',
          include: whole,
          globalSetup: ['tests/compile-once.ts'],
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
