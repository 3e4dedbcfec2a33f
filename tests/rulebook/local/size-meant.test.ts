import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readJobFile } from '../../../src/job/job-file.ts';
import { jobSheet } from '../../../src/job/sheet.ts';
import { workJob } from '../../../src/job/work.ts';
import { isUnitName, units } from '../../../src/quantity/units.ts';
import { changedRulebook } from '../../../src/rulebook/changed.ts';
import { sizeProblem } from '../../../src/rulebook/local/size-meant.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import type { RuleValue } from '../../../src/rulebook/schema.ts';
import { base } from './folder.ts';

const job = readJobFile(readFileSync('public/example-job.json', 'utf8'));

/** A length so many times as large. */
const timesAsLarge = (value: RuleValue, times: number): RuleValue =>
  value.kind === 'between'
    ? { ...value, low: value.low * times, high: value.high * times }
    : 'number' in value
      ? { ...value, number: (value.number ?? Number.NaN) * times }
      : value;

/** Lengths decide how many places are searched and drawn; a folder may set what is not worked out and has a stricter way. */
const lengths = Object.values(base.rules).filter(
  ({ id, value, safety }) =>
    /^(access|patch|framing)\./.test(id) &&
    'unit' in value &&
    isUnitName(value.unit) &&
    units[value.unit].dimension === 'length' &&
    safety !== 'as it stands' &&
    !(value.kind === 'exact' && value.formula !== undefined),
);

test.each(lengths)('at the bounds of $id the example job is worked or refused in words', ({ id, value }) => {
  if (!job.ok) throw new Error('expected the example job to be read');
  for (const times of [100, 1 / 100]) {
    const moved = timesAsLarge(value, times);
    expect(sizeProblem(value, moved)).toBeUndefined();
    const data = changedRulebook(base, { [id]: moved });
    const rules = openRulebook(data);
    const plan = workJob(job.value, rules);
    if (plan.ok) expect(jobSheet(plan.value, data.cautions, rules, true)).not.toBe('');
    else expect(plan.problems).not.toEqual([]);
  }
});
