import { describe, expect, test } from 'vitest';
import { type Read, sentence } from '../../src/calc/declare/read-fields.ts';
import { isTime, JOB_FORMAT, parsed } from '../../src/job/job-file.ts';
import { JOBS_FORMAT, MOST_JOBS, readJobs, writeJobs } from '../../src/job/jobs-file.ts';
import { type KeptJob, readKept, writeKept } from '../../src/job/kept-job.ts';
import { exampleEntries } from './entries.ts';

const kept: KeptJob = {
  id: 'k3m7p2q9x4w8',
  entries: exampleEntries,
  changed: '2026-11-26T10:42:00Z',
  revision: 3,
  by: 'tab-1',
  deleted: undefined,
};
const said = (read: Read<unknown>): string => (read.ok ? '' : read.problems.map(sentence).join(' '));

/** The text of a kept job with some of what it says changed, beside its job and in it. */
function changed(beside: object, inside: object = {}): string {
  const whole = JSON.parse(writeKept(kept));
  return JSON.stringify({ ...whole, ...beside, job: { ...whole.job, ...inside } });
}

describe('a kept job comes back as it was kept', () => {
  test.each<[title: string, job: KeptJob]>([
    ['as it is', kept],
    ['its first revision', { ...kept, revision: 1 }],
    [
      'deleted, with the time from which it can be brought back',
      { ...kept, deleted: '2026-11-27T08:00:00Z' },
    ],
    ['by a tab of a name of forty letters', { ...kept, by: 'x'.repeat(40) }],
  ])('%s', (_, job) => {
    expect(readKept(writeKept(job))).toEqual({ ok: true, value: job });
  });
});

describe('what another program may have written there is refused in a sentence', () => {
  test.each<[title: string, beside: object, inside: object, says: string]>([
    ['no revision', { revision: undefined }, {}, 'the revision'],
    ['a revision of none', { revision: 0 }, {}, 'the revision "0"'],
    ['a revision below none', { revision: -1 }, {}, 'the revision "-1"'],
    ['half a revision', { revision: 1.5 }, {}, 'the revision "1.5"'],
    ['a revision past counting', { revision: 2 ** 53 }, {}, 'a whole number from 1'],
    ['a revision in words', { revision: 'three' }, {}, 'a whole number from 1'],
    ['nobody who kept it', { by: 7 }, {}, 'no tab that kept it'],
    ['a tab of a long name', { by: 'x'.repeat(41) }, {}, 'no tab that kept it'],
    ['deleted at no time', { deleted: 'yesterday' }, {}, 'the time "yesterday"'],
    [
      'deleted on a day that is none',
      { deleted: '2026-02-30T25:00:00Z' },
      {},
      'the time "2026-02-30T25:00:00Z"',
    ],
    ['a job without an id', {}, { id: undefined }, 'a job without id or time'],
    ['a job without a time', {}, { changed: undefined }, 'a job without id or time'],
    ['a job whose id is none', {}, { id: 'K3' }, 'the id'],
    ['a job of another kind of file', {}, { format: 'a diary' }, `"${JOB_FORMAT}"`],
  ])('%s', (_, beside, inside, says) => {
    expect(said(readKept(changed(beside, inside)))).toContain(says);
  });
});

describe('how much is read', () => {
  test('a text as long as the most is read, and one of a letter more is not begun', () => {
    const text = '{"a":1}';
    expect(parsed(text, text.length)).toEqual({ ok: true, value: { a: 1 } });
    expect(said(parsed(text, text.length - 1))).toContain('7 characters');
  });

  // A file of all jobs that a phone holds; each that is none is refused by itself.
  const file = (jobs: number) =>
    JSON.stringify({ format: JOBS_FORMAT, version: 1, jobs: Array.from({ length: jobs }, () => 0) });
  test('a file of the most jobs is read, and one of a job more is refused whole', () => {
    const most = readJobs(file(MOST_JOBS));
    expect(most.ok && most.value.refused).toHaveLength(30_000);
    expect(said(readJobs(file(MOST_JOBS + 1)))).toContain('30001 jobs');
  });

  // What browsers commonly keep of a site in localStorage: 5 MiB of letters.
  test('the file of as many jobs with logs as a browser keeps is read', () => {
    const openings = Array.from({ length: 40 }, (_, place) => ({
      side: 'back',
      opening: place + 1,
      bags: '7 bags',
    }));
    const job = { ...kept, entries: { ...exampleEntries, log: { openings } } };
    const jobs = Array.from({ length: Math.floor((5 * 2 ** 20) / writeKept(job).length) }, () => job);
    const read = readJobs(writeJobs(jobs));
    expect(read.ok && [read.value.jobs.length, read.value.refused]).toEqual([jobs.length, []]);
  });
});

test('a file that says it is a job is read as one, whatever else is in it: an unknown entry is told, and not taken for the job', () => {
  const inside = JSON.parse(writeKept(kept)).job;
  const file = JSON.stringify({ ...inside, job: inside });
  // A kept job has a version of its own, by which this file would seem to come of a newer copy.
  expect(said(readJobs(file))).toContain('"job"');
  expect(said(readJobs(file))).not.toContain('newer copy');
});

describe('a time', () => {
  test.each<[text: string, is: boolean]>([
    ['2026-11-26T10:42:00Z', true],
    ['2026-11-26T10:42:00.123Z', true],
    ['2026-13-26T10:42:00Z', false],
    ['2026-11-26T10:61:00Z', false],
    ['2026-11-26', false],
  ])('%s: %s', (text, is) => {
    expect(isTime(text)).toBe(is);
  });
});
