import { sentence } from '../../src/calc/declare/read-fields.ts';
import { type JobEntries, readJobFile, writeJobFile } from '../../src/job/job-file.ts';
import { workJob } from '../../src/job/work.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';
import { budgets } from './budgets.ts';
import type { Figure } from './figure.ts';
import { largestJob } from './largest-job.ts';
import { medianTime } from './median-time.ts';

/** How long is a job worked, in milliseconds? @throws where the job can't be worked: there would be nothing to time. */
export function workTime(entries: JobEntries): number {
  const rules = openRulebook(theProject().data);
  const read = readJobFile(writeJobFile(entries));
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  const once = workJob(read.value, rules);
  if (!once.ok) throw new Error(once.problems.map(sentence).join(' '));
  if (once.value.rows.some(({ holes }) => holes.length === 0))
    throw new Error('found a row without holes, expected a job whose every row is laid out');
  return medianTime(() => workJob(read.value, rules), { warm: 100, timed: 101 });
}

export const timeOfWork = (): Figure[] => [
  {
    what: 'work(job), two sections of 80 ft, 6 obstacles a side',
    unit: 'ms',
    found: workTime(largestJob()),
    budget: budgets.work,
  },
];
