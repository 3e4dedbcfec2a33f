import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Collected } from './collect.ts';

/** Files that are left out: they take minutes, or measure time. Mutants that only these would notice count as survivors. */
const leftOutFiles = [
  'tests/calc/every/',
  'tests/calc/holes/speed.test.ts',
  // These build the site, or run whole commands.
  'tests/rulebook/local/new-folder.test.ts',
  'tests/rulebook/local/site.test.ts',
  'tests/rulebook/mistakes-stop-the-build.test.ts',
  'tests/rulebook/one-number-changed.test.ts',
  // It sets the clock, which is vitest’s own affair.
  'tests/rulebook/today.test.ts',
  // These come by the view of a page, which wants a bundler.
  'tests/drawings/bays-plan.test.ts',
  'tests/drawings/lanes-plan.test.ts',
];

/** Groups that are left out, by title: every value of the rulebook is moved, which takes half a minute. */
export const leftOutGroups: ReadonlySet<string> = new Set(['the checks bite']);

/** Files whose properties take a minute and more with all of their cases: they meet fewer. */
export const withFewerCases: ReadonlySet<string> = new Set([
  'tests/calc/holes/properties.test.ts',
  'tests/job/hostile.test.ts',
  'tests/rulebook/local/hostile.test.ts',
]);

/** What is run whatever the folder: the published checks, what each working names, the declared examples, and those of the docstrings. */
const always = [
  'tests/calc/checks.test.ts',
  'tests/calc/every/traced.test.ts',
  'tests/calc/declare/declarations.test.ts',
  'tests/rulebook/examples.test.ts',
];

const testFilesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => join(folder, name));

const folders = readdirSync('src/calc', { withFileTypes: true })
  .filter((each) => each.isDirectory())
  .map(({ name }) => name);

/** Folders of the source that have one of the tests to themselves. */
const ownTests: Readonly<Record<string, string>> = {
  'src/quantity': 'tests/quantity',
  'src/rulebook': 'tests/rulebook',
  'src/job': 'tests/job',
  'src/drawings': 'tests/drawings',
};

const isLeftOut = (file: string): boolean => leftOutFiles.some((way) => file.startsWith(way));

/** The folder that a test file of the calculations is named for, by the beginning of its own name; none where it serves several. */
const namedFor = (file: string): string | undefined =>
  folders.find((name) => file.startsWith(`tests/calc/${name}`));

/**
 * The test files that are run against the mutants of a folder of the source: those named for it, those named for none that import from
 * it, and those that are always run. What only the tests of another folder would notice counts as a survivor: a fault should be
 * noticed where it is made, and the run would take a day.
 */
export function testsOf(folder: string): readonly string[] {
  const mirrored = ownTests[folder];
  if (mirrored !== undefined)
    return [...new Set([...testFilesBelow(mirrored).filter((file) => !isLeftOut(file)), ...always])];
  const imports = folder === 'src/calc' ? /src\/calc\/[\w-]+\.ts/ : new RegExp(`${folder}/`);
  const own = testFilesBelow('tests/calc').filter((file) => {
    if (isLeftOut(file)) return false;
    const name = namedFor(file);
    return name === undefined ? imports.test(readFileSync(file, 'utf8')) : folder === `src/calc/${name}`;
  });
  return [...new Set([...own, ...always])];
}

/** The examples in docstrings are asked only where mutants are; others stand in files that want a browser’s tools. */
export const isAsked = ({ file, title }: Collected): boolean =>
  !file.endsWith('examples.test.ts') || /> src\/(quantity|rulebook|calc|job|drawings)\//.test(title);
