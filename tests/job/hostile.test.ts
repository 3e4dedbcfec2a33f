import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FieldProblem, type Read, readFields, sentence } from '../../src/calc/declare/read-fields.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import { openJobFile, writeJobFile } from '../../src/job/job-file.ts';
import { carry, readCarried } from '../../src/job/job-link.ts';
import { readJobs } from '../../src/job/jobs-file.ts';
import { readKept, readSingleKept } from '../../src/job/kept-job.ts';
import { workJob } from '../../src/job/work.ts';
import { timed } from '../calc/every/hostile-words.ts';
import { builtJob } from './any-job.ts';
import { rules } from './entries.ts';

const fixture = (name: string): string => readFileSync(`tests/job/fixtures/${name}`, 'utf8').trim();

/** Words that programs trip over, and pieces of what is read. */
const odd = fc.constantFrom(
  '"__proto__":{"polluted":1},',
  '"constructor":{"prototype":{"polluted":1}},',
  'null',
  '[]',
  '{}',
  '-1',
  '1e999',
  'NaN',
  '"x"',
  '"<script>alert(1)</script>"',
  '\\u0000',
  '"version":99,',
  '"id":7,',
  '"changed":"2026-13-45T99:99:99Z",',
  '.',
  '%',
  '=',
  ' ',
);

/** A text that was right, with a few pieces cut out, put in or written over. */
const harmed = (text: string): fc.Arbitrary<string> =>
  fc
    .array(
      fc.record({
        at: fc.nat({ max: text.length }),
        cut: fc.oneof(fc.nat({ max: 3 }), fc.nat({ max: text.length })),
        put: fc.oneof(odd, fc.string({ maxLength: 4 }), fc.constant('')),
      }),
      { minLength: 1, maxLength: 3 },
    )
    .map((harms) =>
      harms.reduce((all, { at, cut, put }) => all.slice(0, at) + put + all.slice(at + cut), text),
    );

/** Entries of the right names, with any value in any place. */
const anyValue = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom(
    '66 ft',
    '1e308 ft',
    '-0 in',
    'NaN',
    'Infinity ft',
    '½ in',
    0,
    -1,
    1e308,
    true,
    null,
    [],
    {},
  ),
  fc.object({ maxDepth: 2, maxKeys: 3 }),
);
const names = Object.keys(jobFields);
const anyJob = fc.dictionary(
  fc.constantFrom(...names, '__proto__', 'toString', 'nmae'),
  fc.oneof(
    anyValue,
    fc.dictionary(
      fc.constantFrom('built', 'length', 'sections', 'obstacles', 'lights', 'openings', 'width', '__proto__'),
      fc.oneof(anyValue, fc.array(anyValue, { maxLength: 3 })),
      { maxKeys: 4 },
    ),
  ),
  { maxKeys: 6 },
);

const RUNS = { numRuns: 10_000 };

/** Every number in what was read; words such as NaN that a person typed stay words. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

const SENTENCE = /^.+: found .+; expected .+\.$/;
const NO_SENTENCE = /undefined|\[object|\uFFFD|\n/;

/** What is amiss with a reading: it tells in sentences, or gives numbers that are numbers; and does no harm. */
function amiss(read: Read<unknown>): string | undefined {
  if (({} as Record<string, unknown>).polluted !== undefined) return 'harm done';
  if (read.ok) return numbersIn(read.value).every(Number.isFinite) ? undefined : 'a number that is none';
  if (read.problems.length === 0) return 'no sentence';
  return read.problems
    .map(sentence)
    .find((each) => !SENTENCE.test(each) || NO_SENTENCE.test(each) || each.length > 1000);
}

type Reader = readonly [what: string, read: (text: string) => Read<unknown>, right: readonly string[]];

const readers: readonly Reader[] = [
  ['a file', readJobs, [fixture('1/larkspur-lane.json'), fixture('jobs-1/two-jobs.json')]],
  ['a kept job', readKept, [fixture('kept-1/larkspur-lane.json')]],
  ['the one job of before', readSingleKept, [fixture('single-kept/larkspur-lane.json')]],
  ['a link', readCarried, [fixture('link-1/packed.txt'), fixture('link-1/plain.txt')]],
];

describe.each(readers)('%s is read with distrust', (_, read, right) => {
  test('ten thousand harmed ones', () => {
    fc.assert(
      fc.property(fc.oneof(...right.map(harmed), fc.string()), (text) => {
        const found = amiss(timed(() => read(text)));
        if (found !== undefined) throw new Error(found);
      }),
      RUNS,
    );
  });

  test('huge ones, deep ones and long ones are over at once', () => {
    const huge: readonly string[] = [
      '['.repeat(190_000),
      `{"format":${'['.repeat(90_000)}${']'.repeat(90_000)}}`,
      `{${Array.from({ length: 15_000 }, (_each, place) => `"k${place}":1`).join(',')}}`,
      JSON.stringify({ ...JSON.parse(writeJobFile({})), [`n${'a'.repeat(190_000)}`]: 1 }),
      JSON.stringify({ ...JSON.parse(writeJobFile({})), name: 'x'.repeat(190_000) }),
      'x'.repeat(6_000_000),
      `carried=1.d.${'A'.repeat(290_000)}.00000000`,
      `carried=1.p.${'e'.repeat(290_000)}.00000000`,
    ];
    for (const text of huge) expect(amiss(timed(() => read(text)))).toBeUndefined();
  });
});

test('entries of any kind under the names of a job', () => {
  fc.assert(
    fc.property(anyJob, (entries) => {
      expect(
        amiss(timed(() => openJobFile(writeJobFile(entries as Record<string, unknown>)))),
      ).toBeUndefined();
    }),
    { numRuns: 2000 },
  );
});

test('what opens is worked, or told what is wrong with it', () => {
  const right = fixture('2/larkspur-lane.json');
  let worked = 0;
  fc.assert(
    fc.property(harmed(right), (text) => {
      const opened = openJobFile(text);
      if (!opened.ok) return;
      const job = readFields(jobFields, opened.value.entries);
      const plan = job.ok ? workJob(job.value, rules) : job;
      if (!plan.ok) {
        for (const problem of plan.problems as FieldProblem[]) expect(sentence(problem)).toMatch(/found .+/);
        return;
      }
      worked += 1;
      expect(plan.value.bags.amount).not.toBeNaN();
      expect(plan.value.load.total.amount).not.toBeNaN();
    }),
    { numRuns: 500 },
  );
  expect(worked).toBeGreaterThan(0);
});

describe('a link gives back the job it was made of', () => {
  test('packed or plain, whatever the job', async () => {
    await fc.assert(
      fc.asyncProperty(builtJob, async (entries) => {
        const job = { id: 'k3m7p2q9x4w8', changed: '2026-11-26T10:42:00Z', entries };
        const read = readCarried(await carry(job));
        expect(JSON.parse(JSON.stringify(read))).toMatchObject({ ok: true, value: { id: job.id } });
        // What says nothing is left out on the way; the rest is the same to the letter.
        expect(read.ok && spoken(read.value.entries)).toEqual(spoken(entries));
      }),
      { numRuns: 100 },
    );
  });

  test('words of any writing too', async () => {
    const name = 'Łąkowa 7 — ½ ñ 家 🙂 "quoted" <b>&amp;';
    const read = readCarried(await carry({ entries: { name } }));
    expect(read).toEqual({ ok: true, value: { entries: { name } } });
  });

  test('one letter wrong, or the end cut off, is noticed', async () => {
    const link = await carry({ entries: { name: '14 Larkspur Lane', home: { length: '66 ft' } } });
    for (let at = 8; at < link.length; at += 1) {
      const other = link.charAt(at) === 'A' ? 'B' : 'A';
      expect(readCarried(link.slice(0, at) + other + link.slice(at + 1)).ok).toBe(false);
      expect(readCarried(link.slice(0, at)).ok).toBe(false);
    }
  });
});

/** Entries without what says nothing. */
function spoken(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(spoken);
  if (value === null || typeof value !== 'object') return value;
  const kept = Object.entries(value)
    .map(([key, each]): [string, unknown] => [key, spoken(each)])
    .filter(
      ([, each]) =>
        each !== undefined &&
        each !== '' &&
        !(each !== null && typeof each === 'object' && Object.keys(each).length === 0),
    );
  return Object.fromEntries(kept);
}
