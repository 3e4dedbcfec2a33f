import type { JobEntries } from '../../job/job-file.ts';

/** What tells of things seen, done or signed at one home, and of no other. */
const OF_ONE_HOME = {
  survey: 'the survey',
  machine: 'the machine’s figures',
  log: 'the fill log',
  receipt: 'the receipt',
} as const;

export type OfOneHome = keyof typeof OF_ONE_HOME;

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * What does a job that was typed over the example still have of the example’s home? Nothing, as long as it is the example’s home.
 * @example stillExamples({ home: { built: 1979 }, survey: { leaks: 'none found' } }, { home: { built: 1980 }, survey: { leaks: 'none found' } }) // => ['survey']
 */
export const stillExamples = (entries: JobEntries, example: JobEntries): OfOneHome[] =>
  same(entries.home, example.home) && same(entries.cavity, example.cavity)
    ? []
    : (Object.keys(OF_ONE_HOME) as OfOneHome[]).filter(
        (group) => entries[group] !== undefined && same(entries[group], example[group]),
      );

/** Their names in a sentence. @example namesOf(['survey', 'log']) // => 'the survey, the fill log' */
export const namesOf = (groups: readonly OfOneHome[]): string =>
  groups.map((group) => OF_ONE_HOME[group]).join(', ');
