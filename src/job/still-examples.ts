import type { JobEntries } from './job-file.ts';

/** What tells of things seen, done or signed at one home, and of no other. */
const OF_ONE_HOME = {
  survey: 'the survey',
  machine: 'the machine’s figures',
  line: 'the overhead line',
  weather: 'the heat of the day',
  log: 'the fill log',
  receipt: 'the receipt',
} as const;

export type OfOneHome = keyof typeof OF_ONE_HOME;

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

const groups = Object.keys(OF_ONE_HOME) as OfOneHome[];

/** What makes it another home. */
const homeOf = ({ name, home, cavity }: JobEntries): readonly unknown[] => [name, home, cavity];

/**
 * What does a job that was typed over the example still have of the example’s home? Nothing, as long as it is the example’s home.
 * @example stillExamples({ home: { built: 1979 }, survey: { leaks: 'none found' } }, { home: { built: 1980 }, survey: { leaks: 'none found' } }) // => ['survey']
 */
export const stillExamples = (entries: JobEntries, example: JobEntries): OfOneHome[] =>
  same(homeOf(entries), homeOf(example))
    ? []
    : groups.filter((group) => entries[group] !== undefined && same(entries[group], example[group]));

/**
 * The entries as they count: what is still the example’s survey counts as not looked at, or a home that nobody saw would be told ready.
 * @example asLookedAt({ name: 'Lot 8', survey: { leaks: 'none found' } }, { survey: { leaks: 'none found' } }) // => { name: 'Lot 8' }
 */
export function asLookedAt(entries: JobEntries, example: JobEntries): JobEntries {
  if (!stillExamples(entries, example).includes('survey')) return entries;
  const { survey: _survey, ...others } = entries;
  return others;
}

/**
 * The entries before an answer goes in. The first one of another home’s survey lets the example’s go: the rest would count as looked at too.
 * @example beforeAnswer({ name: 'Lot 8', survey: { leaks: 'none found' } }, { survey: { leaks: 'none found' } }, ['survey', 'pests']) // => { name: 'Lot 8' }
 */
export const beforeAnswer = (entries: JobEntries, example: JobEntries, way: readonly string[]): JobEntries =>
  way[0] === 'survey' ? asLookedAt(entries, example) : entries;

/**
 * The entries that a job has for another home, and what stays with the first because it was seen, done or signed there.
 * @example forAnotherHome({ name: 'Lot 4', log: { openings: [] } }) // => { entries: { name: 'Lot 4' }, left: ['log'] }
 */
export function forAnotherHome(entries: JobEntries): {
  readonly entries: JobEntries;
  readonly left: readonly OfOneHome[];
} {
  const left = groups.filter((group) => !same(entries[group] ?? {}, {}));
  const others = Object.entries(entries).filter(([name]) => !(left as readonly string[]).includes(name));
  return { entries: Object.fromEntries(others), left };
}

/** Their names in a sentence. @example namesOf(['survey', 'log']) // => 'the survey, the fill log' */
export const namesOf = (of: readonly OfOneHome[]): string => of.map((group) => OF_ONE_HOME[group]).join(', ');
