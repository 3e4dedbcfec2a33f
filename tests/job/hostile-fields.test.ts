import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addressOf } from '../../src/calc/declare/address.ts';
import { readFields } from '../../src/calc/declare/read-fields.ts';
import { inAddress } from '../../src/islands/jobs/addresses.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import { readShape } from '../../src/job/shape.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { workJob } from '../../src/job/work.ts';
import { CASES, noNumbers, PATIENCE, poorSentences, timed, typedAnew } from '../calc/every/hostile-words.ts';
import { data, exampleEntries, rules } from './entries.ts';

/** What is amiss with what the sheets would say of these entries; empty where all is well. */
function amiss(entries: unknown): string[] {
  const plan = timed(() => {
    const job = readFields(jobFields, entries);
    return job.ok ? workJob(job.value, rules) : job;
  });
  if (!plan.ok) return poorSentences(plan.problems);
  return noNumbers(jobSheet(plan.value, data.cautions, rules, true).split('\n'));
}

test(
  'whatever is typed into the planner, no sheet says anything that is no number, and the plan is there in good time',
  () => {
    fc.assert(
      fc.property(typedAnew(jobFields, [exampleEntries]), (entries) => {
        expect(amiss(entries)).toEqual([]);
      }),
      { numRuns: Math.ceil(CASES * 0.08) },
    );
  },
  PATIENCE,
);

test(
  'whatever the address of a sheet holds',
  () => {
    fc.assert(
      fc.property(typedAnew(jobFields, [exampleEntries]), (typed) => {
        const { entries } = inAddress(addressOf(typed));
        if (!entries) return;
        const shape = timed(() => readShape(jobFields, entries));
        expect(shape.ok ? amiss(shape.value) : poorSentences(shape.problems)).toEqual([]);
      }),
      { numRuns: Math.ceil(CASES * 0.03) },
    );
  },
  PATIENCE,
);
