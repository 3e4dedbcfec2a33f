import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addressOf } from '../../src/calc/declare/address.ts';
import { groupField, lengthField, listField, wordsField } from '../../src/calc/declare/field.ts';
import { MOST_LETTERS, readFields } from '../../src/calc/declare/read-fields.ts';
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

describe('what has no place in a form is named by where it stands', () => {
  const pipe = { across: lengthField('D', 'Width', '', '6 in') };
  const form = {
    roof: groupField('Roof', '', { pipes: listField('Pipes', '', 'a pipe', pipe, 2) }),
    name: wordsField('Name', '', 'The home'),
  };
  const pipes = (...all: readonly unknown[]) => ({ roof: { pipes: all } });

  test.each<[title: string, given: unknown, field: string, found: string]>([
    ['a list where a text belongs', pipes({}, { across: [] }), 'roof.pipes.1.across', 'a list'],
    ['an unknown entry', pipes({ acros: '6 in' }), 'roof.pipes.0.acros', ''],
    ['a text where a set belongs', pipes('6 in'), 'roof.pipes.0', '"6 in"'],
    ['more in a list than it holds', pipes({}, {}, {}), 'roof.pipes', '3 entries'],
    ['a number that is none', pipes({ across: Number.NaN }), 'roof.pipes.0.across', ''],
    ['a text without end', { name: 'x'.repeat(MOST_LETTERS + 1) }, 'name', `${MOST_LETTERS + 1} letters`],
  ])('%s', (_, given, field, found) => {
    const read = readShape(form, given);
    expect(read.ok ? [] : read.problems).toEqual([
      expect.objectContaining({ field, ...(found ? { found } : {}) }),
    ]);
  });

  test.each<[title: string, given: unknown]>([
    ['a list as long as it may be', pipes({}, { across: '6 in' })],
    ['a text as long as it may be', { name: 'x'.repeat(MOST_LETTERS) }],
    ['a number', pipes({ across: 6 })],
  ])('%s has one', (_, given) => {
    expect(readShape(form, given)).toEqual({ ok: true, value: given });
  });

  test('nothing said, and null, are left out', () => {
    expect(readShape(form, { name: null, roof: { pipes: undefined } })).toEqual({
      ok: true,
      value: { roof: {} },
    });
    const read = readShape(form, { name: null, roof: undefined });
    expect(read.ok && Object.keys(read.value)).toEqual([]);
  });
});
