import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JobEntries } from '../../src/job/job-file.ts';
import type { WorkedJob } from '../../src/job/planned.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { builtJob } from '../job/any-job.ts';
import { exampleWith, planOf, rules, workEntries } from '../job/entries.ts';
import { offTheSheet, overlapping } from './crowding.ts';
import { jobs, sectionOf, sheetsOf, sizes } from './sheets.ts';

/** A vent farther down the slope than the roof reaches is drawn where it was said to be. */
const staysOnRoof = ({ job, section }: WorkedJob): boolean => {
  const half = amountIn(section.width, 'in') / (job.home.sections === 'double' ? 1 : 2);
  return (job.roof.obstacles ?? []).every(
    ({ along, from_peak, across }) =>
      amountIn(from_peak, 'in') + amountIn(across, 'in') / 2 <= half &&
      amountIn(along, 'in') + amountIn(across, 'in') / 2 <= amountIn(job.home.length, 'in'),
  );
};

const more: readonly [what: string, entries: JobEntries][] = [
  ...jobs,
  [
    'vents at the edge of a narrow roof and at its end',
    exampleWith({
      'cavity.width': '10 ft',
      'roof.obstacles': [
        { what: 'other hot flue', along: '10 ft', side: 'front', from_peak: '4 ft', across: '8 in' },
        { what: 'plumbing vent', along: '65 ft', side: 'front', from_peak: '2 ft', across: '8 in' },
      ],
    }),
  ],
  [
    'a deep old layer under one slope, in eighths of an inch',
    exampleWith({ 'cavity.shape': 'one-slope', 'old.depth': '2 7/8 in', 'cavity.ridge': '9 1/8 in' }),
  ],
];

describe('nothing is drawn beyond the edge of its sheet', () => {
  test.each(more)('%s', (_, entries) => {
    expect(sheetsOf(planOf(entries), rules).flatMap(offTheSheet)).toEqual([]);
  });
  test('homes as they are built', () => {
    fc.assert(
      fc.property(builtJob, (entries) => {
        const read = workEntries(entries);
        if (!read.ok || !staysOnRoof(read.value)) return;
        expect(sheetsOf(read.value, rules).flatMap(offTheSheet)).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('in a section no words stand on others', () => {
  const both = (plan: WorkedJob): string[] => sizes.flatMap((size) => overlapping(sectionOf(plan, size)));
  test.each(more)('%s', (_, entries) => {
    expect(both(planOf(entries))).toEqual([]);
  });
  test('homes as they are built', () => {
    fc.assert(
      fc.property(builtJob, (entries) => {
        const read = workEntries(entries);
        expect(read.ok ? both(read.value) : []).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});
