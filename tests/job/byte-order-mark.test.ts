import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { openJobFile, readJobFile } from '../../src/job/job-file.ts';
import { readJobs, writeJobs } from '../../src/job/jobs-file.ts';
import { readRecord, writeRecord } from '../../src/job/record.ts';
import { data, exampleEntries, planOf, rules } from './entries.ts';

const job = readFileSync('public/example-job.json', 'utf8');

/** Some editors write this before the text of a file; a browser leaves it out as it reads one. */
const MARK = '\uFEFF';

describe('a file that begins with a byte-order mark is read as if it had none', () => {
  test.each<[what: string, read: (text: string) => { readonly ok: boolean }, text: string]>([
    ['a job', readJobFile, job],
    ['a job as it was typed', openJobFile, job],
    ['all jobs', readJobs, writeJobs([])],
    ['a record', readRecord, writeRecord(exampleEntries, planOf(exampleEntries), rules, data)],
  ])('%s', (_, read, text) => {
    const marked = read(MARK + text);
    expect(marked.ok).toBe(true);
    expect(marked).toEqual(read(text));
  });
  test('but no mark stands in the middle of one', () =>
    expect(readJobFile(job.replace('{', `{${MARK}`)).ok).toBe(false));
});
