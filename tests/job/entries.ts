import { readFileSync } from 'node:fs';
import { listAt, textAt, withEntry } from '../../src/calc/declare/entries.ts';
import { type Read, sentence } from '../../src/calc/declare/read-fields.ts';
import { type JobEntries, readJobFile, writeJobFile } from '../../src/job/job-file.ts';
import type { WorkedJob } from '../../src/job/planned.ts';
import { workJob } from '../../src/job/work.ts';
import { openRulebook, type Rulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

export const { data } = theProject();
export const rules = openRulebook(data);

export const exampleText = readFileSync('public/example-job.json', 'utf8');

const { format, version, ...entries } = JSON.parse(exampleText);
/** The example job as it is typed, without the two lines that say what kind of file it is. */
export const exampleEntries: JobEntries = entries;
export const exampleHead = { format, version };

const flue = listAt(exampleEntries, ['roof', 'obstacles']).find(
  (each) => textAt(each, ['what']) === 'furnace flue',
);
if (!flue)
  throw new Error(
    'found no furnace flue on the roof of the example job, expected the one that tests rest on',
  );
/** The furnace flue of the example home. */
export const exampleFlue = flue;

/** The example job with some of its entries changed, each by its way: `home.length`. */
export const exampleWith = (changes: Readonly<Record<string, unknown>>): JobEntries =>
  Object.entries(changes).reduce<JobEntries>(
    (all, [way, value]) => withEntry(all, way.split('.'), value),
    exampleEntries,
  );

/** Works a job from its entries, by way of the text of a job file. */
export function workEntries(given: JobEntries, book: Rulebook = rules): Read<WorkedJob> {
  const read = readJobFile(writeJobFile(given));
  return read.ok ? workJob(read.value, book) : read;
}

/** The plan of a job; stops where there is none. */
export function planOf(given: JobEntries, book?: Rulebook): WorkedJob {
  const read = workEntries(given, book);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
}

/** What a job's entries are told off for, in sentences. */
export function told(given: JobEntries): string[] {
  const read = workEntries(given);
  return read.ok ? [] : read.problems.map(sentence);
}
