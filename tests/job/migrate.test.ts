import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Read, sentence } from '../../src/calc/declare/read-fields.ts';
import {
  JOB_VERSION,
  type JobEntries,
  openJobFile,
  readJobFile,
  writeJobFile,
} from '../../src/job/job-file.ts';
import { readCarried } from '../../src/job/job-link.ts';
import { JOBS_VERSION, readJobs, writeJobs } from '../../src/job/jobs-file.ts';
import { readKept, readSingleKept, writeKept } from '../../src/job/kept-job.ts';
import { jobSteps, migrate } from '../../src/job/migrate.ts';
import { readWithPhotographs } from '../../src/job/photographs-file.ts';
import { recheck } from '../../src/job/recheck.ts';
import { readRecord, writeRecord } from '../../src/job/record.ts';
import { data, exampleEntries, exampleFlue, planOf, rules } from './entries.ts';

const FIXTURES = 'tests/job/fixtures';
const fixture = (name: string): string => readFileSync(`${FIXTURES}/${name}`, 'utf8').trim();
const said = (read: Read<unknown>): string => (read.ok ? '' : read.problems.map(sentence).join(' '));

/** What the job of every fixture was typed as; the log and all. */
const typed = JSON.parse(fixture('single-kept/larkspur-lane.json'));
const head = { id: 'k3m7p2q9x4w8h5n6', changed: '2026-11-26T10:42:00.000Z' };

describe('a job file of every version that ever was', () => {
  const versions = readdirSync(FIXTURES).filter((name) => /^\d+$/.test(name));

  test('has a fixture', () => {
    expect(versions.map(Number).sort((a, b) => a - b)).toEqual(
      Array.from({ length: JOB_VERSION }, (_, before) => before + 1),
    );
  });

  test.each(versions)('version %s opens with every entry as it was typed, and is worked', (version) => {
    const text = fixture(`${version}/larkspur-lane.json`);
    const opened = openJobFile(text);
    const { of_example, ...entries } = opened.ok ? opened.value.entries : {};
    expect(entries).toEqual(typed);
    // Only from version 3 on does a file say what came with the example.
    expect(of_example !== undefined).toBe(Number(version) >= 3);
    expect(readJobFile(text).ok).toBe(true);
  });

  test('version 1 knew no id and no time; version 2 keeps both', () => {
    const [one, two] = ['1', '2'].map((version) => openJobFile(fixture(`${version}/larkspur-lane.json`)));
    expect(one?.ok && [one.value.id, one.value.changed]).toEqual([undefined, undefined]);
    expect(two?.ok && [two.value.id, two.value.changed]).toEqual([head.id, head.changed]);
  });

  test('what is written is of the present version, and opens as what it was written from', () => {
    const opened = openJobFile(writeJobFile(exampleEntries, head));
    expect(opened).toEqual({ ok: true, value: { ...head, entries: exampleEntries } });
  });
});

describe('the other forms in which a job is kept or sent', () => {
  test('a job with its photographs, one of an entry that the list never had', () => {
    const read = readWithPhotographs(
      new Uint8Array(readFileSync(`${FIXTURES}/photographs-1/larkspur-lane.zip`)),
    );
    const { job, pictures, refused } = read.ok ? read.value : { job: undefined, pictures: [], refused: [] };
    const { of_example, ...entries } = job?.entries ?? {};
    expect({ ...job, entries }).toEqual({ ...head, entries: typed });
    expect(refused).toEqual([]);
    expect(pictures.map(({ photograph: { entry, words }, bytes }) => [entry, words, bytes.length])).toEqual([
      ['roof-before', 'North side', 311],
      ['no-longer-listed', '', 311],
    ]);
  });

  test('a file of two jobs, one of them half typed', () => {
    const read = readJobs(fixture('jobs-1/two-jobs.json'));
    expect(read).toEqual({
      ok: true,
      value: {
        jobs: [
          { ...head, entries: typed },
          {
            id: 'b8c2d4f6g9h3j5k7',
            changed: '2026-11-25T08:00:00.000Z',
            entries: { name: '3 Teasel Row', home: { built: '19', length: '' } },
          },
        ],
        refused: [],
      },
    });
    expect(read.ok && readJobs(writeJobs(read.value.jobs))).toEqual(read);
  });

  test('a kept job', () => {
    const read = readKept(fixture('kept-1/larkspur-lane.json'));
    expect(read).toEqual({ ok: true, value: { ...head, entries: typed, revision: 7, by: 'abc123' } });
    expect(read.ok && readKept(writeKept(read.value))).toEqual(read);
  });

  test('a kept job that was saved to a file, as it stands where it is kept', () => {
    const text = fixture('kept-1/larkspur-lane.json');
    expect(readJobs(text)).toEqual({ ok: true, value: { jobs: [{ ...head, entries: typed }], refused: [] } });
    expect(said(readJobs(text.replace('{"version":1', '{"version":2')))).toContain('made by a newer copy');
  });

  const records = readdirSync(FIXTURES).filter((name) => name.startsWith('record-'));
  test.each(records)('a %s, and it is worked again', (version) => {
    const read = readRecord(fixture(`${version}/larkspur-lane.json`));
    if (!read.ok) throw new Error(said(read));
    // Version 3 came once a flue of no kind held the plan, so its job has the kind, and nothing is held back.
    const kind = version === 'record-3' ? exampleFlue.kind : undefined;
    expect(read.value.job).toEqual({
      ...typed,
      roof: {
        ...typed.roof,
        obstacles: typed.roof.obstacles.map((each: JobEntries) =>
          kind !== undefined && each.what === 'furnace flue' ? { ...each, kind } : each,
        ),
      },
    });
    expect(read.value.figures['plan.bags']?.unit).toBe('bag');
    expect(said(recheck(read.value, rules, data.rules))).toBe('');
  });

  test.each(records)('a %s tells of words which rules are behind them from version 3 on', (version) => {
    const read = readRecord(fixture(`${version}/larkspur-lane.json`));
    if (!read.ok) throw new Error(said(read));
    const { 'plan.ceiling': words, 'plan.limit': amount } = read.value.figures;
    expect(words?.text).toBe('carries it');
    expect(words?.rules?.includes('ceiling.board.limit')).toBe(version === 'record-3' ? true : undefined);
    expect(amount?.rules).toEqual(['ceiling.board.limit']);
  });

  test('a record of every version that ever was has a fixture, and the newest is what is written now', () => {
    const written = JSON.parse(writeRecord(exampleEntries, planOf(exampleEntries), rules, data));
    expect(records.sort()).toEqual(
      Array.from({ length: written.version }, (_, before) => `record-${before + 1}`),
    );
    expect(written.job).toEqual(JSON.parse(writeJobFile(exampleEntries)));
  });

  test('the one job that was kept before there were several', () => {
    expect(readSingleKept(fixture('single-kept/larkspur-lane.json'))).toEqual({ ok: true, value: typed });
  });

  test.each(['packed', 'plain'])('a %s link', (form) => {
    expect(readCarried(fixture(`link-1/${form}.txt`))).toEqual({
      ok: true,
      value: { ...head, entries: typed },
    });
  });
});

describe('a newer one is refused, with what to do', () => {
  const newer: readonly [what: string, read: () => Read<unknown>][] = [
    [
      'job file',
      () => openJobFile(JSON.stringify({ ...JSON.parse(writeJobFile({})), version: JOB_VERSION + 1 })),
    ],
    [
      'file of jobs',
      () => readJobs(JSON.stringify({ ...JSON.parse(writeJobs([])), version: JOBS_VERSION + 1 })),
    ],
    ['link', () => readCarried('carried=2.z.AAAA.00000000')],
  ];
  test.each(newer)('%s', (_, read) => {
    expect(said(read())).toMatch(
      /found version \d, made by a newer copy of this site; expected version \d.*update this copy first/,
    );
  });

  test('a newer kept job too', () => {
    const text = fixture('kept-1/larkspur-lane.json').replace('{"version":1', '{"version":2');
    expect(said(readKept(text))).toContain('made by a newer copy');
  });

  test('of several jobs in a file the others come', () => {
    const both = JSON.parse(fixture('jobs-1/two-jobs.json'));
    both.jobs[0].version = JOB_VERSION + 1;
    const read = readJobs(JSON.stringify(both));
    expect(read.ok && read.value.jobs.map(({ id }) => id)).toEqual(['b8c2d4f6g9h3j5k7']);
    expect(read.ok && read.value.refused.map(sentence)).toEqual([
      expect.stringMatching(/^Job 1 of 2, Job file \(version\): found version 4, made by a newer copy/),
    ]);
  });
});

describe('steps', () => {
  const steps = {
    1: (file: object) => ({ ...file, version: 2, a: 'one' }),
    2: (file: object) => ({ ...file, version: 3, b: 'two' }),
  };
  const to = (now: number) => ({ now, steps, label: 'File' });

  test('go from each version to the next, and none is left out', () => {
    expect(migrate({ version: 1 }, to(3))).toEqual({ ok: true, value: { version: 3, a: 'one', b: 'two' } });
    expect(migrate({ version: 2 }, to(3))).toEqual({ ok: true, value: { version: 3, b: 'two' } });
    expect(migrate({ version: 3 }, to(3))).toEqual({ ok: true, value: { version: 3 } });
  });

  test('stop in a sentence where one is missing', () => {
    expect(said(migrate({ version: 1 }, to(4)))).toContain(
      'found version 3; expected a version from which a step leads on to 4',
    );
  });

  test('change nothing in what they are given', () => {
    const file = Object.freeze({ version: 1, name: 'x' });
    expect(jobSteps[1]?.(file)).toEqual({ version: 2, name: 'x' });
    expect(jobSteps[2]?.(Object.freeze({ version: 2, name: 'x' }))).toEqual({ version: 3, name: 'x' });
  });

  test.each([0, -1, 1.5, '1', null, undefined, Number.NaN, [], {}])('no version at all: %j', (version) => {
    expect(said(migrate({ version }, to(3)))).toMatch(/found version .*; expected a version from 1 to 3/);
  });
});
