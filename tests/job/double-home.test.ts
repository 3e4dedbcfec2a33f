import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JobEntries } from '../../src/job/job-file.ts';
import type { WorkedJob } from '../../src/job/planned.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { builtJob } from './any-job.ts';
import { exampleWith, planOf, workEntries } from './entries.ts';

/** Sums of floating numbers in another order differ in the last places. */
const WITHIN = 1e-9;
const near = (found: number, expected: number): boolean =>
  Math.abs(found - expected) <= WITHIN * Math.abs(expected);

const inches = (q: Quantity<'length'>): number => amountIn(q, 'in');
const sum = (amounts: readonly number[]): number => amounts.reduce((all, each) => all + each, 0);

type Home = Readonly<Record<string, unknown>>;

/** Any job, made one on a double-section home: told by one half, which rises from eave to marriage line or is measured. */
const doubleJob = builtJob.map((entries): JobEntries => {
  const cavity = entries.cavity as Home;
  const half = cavity.shape === 'measured' || cavity.shape === 'level' ? cavity.shape : 'one-slope';
  return {
    ...entries,
    home: { ...(entries.home as Home), sections: 'double' },
    cavity: { ...cavity, shape: half },
  };
});

const changed = (entries: JobEntries, group: string, more: Home): JobEntries => ({
  ...entries,
  [group]: { ...(entries[group] as Home), ...more },
});

/** Runs over plans of double-section homes with a hole on either side, and says how many there were. */
function forDoubleHomes(hold: (plan: WorkedJob, entries: JobEntries) => void): number {
  let worked = 0;
  fc.assert(
    fc.property(doubleJob, (entries) => {
      const read = workEntries(entries);
      if (!read.ok || read.value.rows.some(({ holes }) => holes.length === 0)) return;
      worked += 1;
      hold(read.value, entries);
    }),
    { numRuns: 150 },
  );
  return worked;
}

describe('a double-section home, whatever its size', () => {
  test('has a row on either side, whose stretches add up to twice its length', () => {
    const worked = forDoubleHomes(({ rows, job }) => {
      expect(rows.map(({ side }) => side)).toEqual(['back', 'front']);
      const lengths = rows.map(({ holes }) => sum(holes.map(({ from, to }) => inches(to) - inches(from))));
      for (const each of lengths) expect(near(each, inches(job.home.length))).toBe(true);
      expect(near(sum(lengths), 2 * inches(job.home.length))).toBe(true);
    });
    expect(worked).toBeGreaterThan(75);
  });

  test('takes in all what its holes take: volume, weight and bags', () => {
    forDoubleHomes((plan) => {
      const holes = plan.rows.flatMap((row) => row.holes);
      for (const figure of ['volume', 'weight', 'bags'] as const) {
        const all = plan[figure].amount;
        expect([figure, near(sum(holes.map((hole) => hole[figure].amount)), all)]).toEqual([figure, true]);
      }
    });
  });

  test('takes out a flue on the side where it stands, and from no other', () => {
    forDoubleHomes(({ rows }) => {
      for (const { side, holes } of rows)
        for (const flue of holes.flatMap(({ kept }) => kept)) expect(flue.side).toBe(side);
    });
  });

  test('with nothing on its roof takes twice what one half of it takes', () => {
    forDoubleHomes((_, entries) => {
      const bare = changed(entries, 'roof', { obstacles: [] });
      const [both, one] = [workEntries(bare), workEntries(changed(bare, 'home', { sections: 'single' }))];
      if (!both.ok || !one.ok) throw new Error('found a job that can not be worked without its vents');
      expect(near(both.value.volume.amount, 2 * one.value.volume.amount)).toBe(true);
      expect(near(both.value.bags.amount, 2 * one.value.bags.amount)).toBe(true);
      expect(both.value.load).toMatchObject({ verdict: one.value.load.verdict });
      expect(both.value.load.total.amount).toBe(one.value.load.total.amount);
    });
  });
});

/**
 * By hand: a wedge of 0 to 12 in over 120 in is 720 in2, and without known trusses nothing is taken off for them: 720 in2 × 2 × 480 in
 * / 1728 = 400 ft3. At 1.5 lb/ft3 that is 600 lb, 20 bags of 30 lb.
 */
test('a wedge of 12 in by 10 ft, 40 ft long on either side, takes 400 ft3 in 20 bags', () => {
  const plan = planOf(
    exampleWith({
      'home.sections': 'double',
      'home.length': '40 ft',
      'cavity.shape': 'one-slope',
      'cavity.width': '10 ft',
      'cavity.eave': '0 in',
      'cavity.ridge': '12 in',
      'roof.truss_spacing': '',
      'roof.first_truss': '',
      'roof.obstacles': [],
      'survey.flues': 'none',
      old: {},
    }),
  );
  expect(near(amountIn(plan.volume, 'ft3'), 400)).toBe(true);
  expect(near(amountIn(plan.weight, 'lb'), 600)).toBe(true);
  expect(near(amountIn(plan.bags, 'bag'), 20)).toBe(true);
});
