import type { Collected } from './collect.ts';

/** Where the tests stand that are run against each mutant. */
export const testFolders = ['tests/quantity', 'tests/calc', 'tests/rulebook/examples.test.ts'];

/** Files that are left out: they take minutes, or measure time. Mutants that only these would notice count as survivors. */
export const leftOutFiles = ['tests/calc/every/', 'tests/calc/holes/speed.test.ts'];

/** Groups that are left out, by title: every value of the rulebook is moved, which takes half a minute. */
export const leftOutGroups: ReadonlySet<string> = new Set(['the checks bite']);

/** The examples in docstrings are asked only where mutants are; others stand in files that want a browser's tools. */
export const isAsked = ({ file, title }: Collected): boolean =>
  !file.endsWith('examples.test.ts') || /> src\/(calc|quantity)\//.test(title);
