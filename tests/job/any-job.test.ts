import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { fillLog } from '../../src/job/fill-log.ts';
import type { WorkedJob } from '../../src/job/planned.ts';
import { resistanceAcross } from '../../src/job/resistance-across.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { builtJob, sillyJob } from './any-job.ts';
import { data, rules, workEntries } from './entries.ts';

const RUNS = 300;
const inches = (q: Quantity<'length'>): number => amountIn(q, 'in');

/** Every amount of a plan, the deepest too. */
function amountsIn(value: unknown, seen = new Set<unknown>()): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object' || seen.has(value)) return [];
  seen.add(value);
  return Object.values(value).flatMap((each) => amountsIn(each, seen));
}

const wrongWith = (plan: WorkedJob): string[] => {
  const holes = plan.rows.flatMap((row) => row.holes);
  const negative = [plan, ...holes].filter(
    ({ volume, weight, bags }) => !(volume.amount >= 0 && weight.amount >= 0 && bags.amount >= 0),
  );
  return [
    ...(amountsIn(plan).every(Number.isFinite) ? [] : ['an amount that is no number']),
    ...negative.map(({ bags }) => `${bags.amount} bags`),
    ...(plan.bagsToLoad.amount >= plan.bags.amount ? [] : ['too few bags to load']),
    ...(/NaN|undefined|Infinity|null/.test(jobSheet(plan, data.cautions, rules))
      ? ['a sheet with holes in it']
      : []),
  ];
};

describe.each([
  { kind: 'a home as they are built', jobs: builtJob, mostly: true },
  { kind: 'a home as odd as the fields allow', jobs: sillyJob, mostly: false },
])('$kind', ({ jobs, mostly }) => {
  test('is worked without a negative figure or one that is no number, or refused in a sentence', () => {
    let worked = 0;
    fc.assert(
      fc.property(jobs, (entries) => {
        const read = workEntries(entries);
        if (read.ok) worked += 1;
        expect(read.ok ? wrongWith(read.value) : []).toEqual([]);
        expect(read.ok || read.problems.every((problem) => sentence(problem).length < 400)).toBe(true);
      }),
      { numRuns: RUNS },
    );
    // Were nearly all refused, the property would say nothing.
    expect(worked).toBeGreaterThan(mostly ? RUNS * 0.8 : RUNS * 0.02);
  });

  test('has openings by the way in that is taken, each with fill to take, that its log begins with', () => {
    let several = 0;
    fc.assert(
      fc.property(jobs, (entries) => {
        const read = workEntries(entries);
        if (!read.ok) return;
        const log = fillLog(read.value, rules);
        if (log.openings.length > 0 && log.openings[0]?.opening.what !== 'Hole') several += 1;
        expect(
          log.openings.every(({ verdict, planned }) => verdict === 'not begun' && planned.amount > 0),
        ).toBe(true);
        const asked = log.openings.reduce((all, { planned }) => all + planned.amount, 0);
        expect(Math.abs(asked - (log.stillToGo?.amount ?? 0))).toBeLessThanOrEqual(1e-9 * (1 + asked));
      }),
      { numRuns: RUNS },
    );
    // Lanes and bays, not only holes.
    expect(several).toBeGreaterThan(0);
  });

  test('has stretches that tile the roof from end to end', () => {
    fc.assert(
      fc.property(jobs, (entries) => {
        const read = workEntries(entries);
        if (!read.ok) return;
        const length = inches(read.value.job.home.length);
        for (const { holes } of read.value.rows) {
          if (holes.length === 0) continue;
          const starts = holes.map((hole) => inches(hole.from));
          const ends = holes.map((hole) => inches(hole.to));
          expect([starts[0], ends.at(-1)]).toEqual([0, length]);
          expect(ends.slice(0, -1)).toEqual(starts.slice(1));
          for (const hole of holes) {
            expect(inches(hole.along)).toBeGreaterThanOrEqual(inches(hole.from));
            expect(inches(hole.along)).toBeLessThanOrEqual(inches(hole.to));
          }
        }
      }),
      { numRuns: RUNS },
    );
  });

  test('has stretches whose volumes, weights and bags add up to the whole, to a part in 10^9', () => {
    fc.assert(
      fc.property(jobs, (entries) => {
        const read = workEntries(entries);
        if (!read.ok || read.value.rows.some(({ holes }) => holes.length === 0)) return;
        const { value: plan } = read;
        const holes = plan.rows.flatMap((row) => row.holes);
        for (const figure of ['volume', 'weight', 'bags'] as const) {
          const sum = holes.reduce((all, hole) => all + hole[figure].amount, 0);
          expect(Math.abs(sum - plan[figure].amount)).toBeLessThanOrEqual(1e-9 * plan[figure].amount);
        }
      }),
      { numRuns: RUNS },
    );
  });
});

describe('a plan keeps to what physics says', () => {
  test('a heavier fill never takes fewer bags nor lies lighter on the ceiling', () => {
    fc.assert(
      fc.property(builtJob, fc.integer({ min: 1, max: 100 }), (entries, percent) => {
        const fill = entries.fill as Readonly<Record<string, string>>;
        const heavier = `${Number.parseFloat(fill.density ?? '') * (1 + percent / 100)} lb/ft3`;
        const [light, heavy] = [
          workEntries(entries),
          workEntries({ ...entries, fill: { ...fill, density: heavier } }),
        ];
        if (!light.ok || !heavy.ok) return;
        expect(heavy.value.bags.amount).toBeGreaterThanOrEqual(light.value.bags.amount);
        expect(heavy.value.load.total.amount).toBeGreaterThanOrEqual(light.value.load.total.amount);
        if (light.value.load.verdict === 'does not carry it')
          expect(heavy.value.load.verdict).toBe('does not carry it');
      }),
      { numRuns: 100 },
    );
  });

  test('R along the width lies between its ends everywhere, and is nowhere less than that of what lies there already', () => {
    fc.assert(
      fc.property(builtJob, (entries) => {
        const read = workEntries(entries);
        if (!read.ok) return;
        const { profile } = read.value.section;
        const places = Array.from({ length: 21 }, (_, step) => (step / 20) * profile.width);
        for (const { low, value, high } of resistanceAcross(read.value, rules, places)) {
          expect(low >= 0 && low <= value && value <= high).toBe(true);
        }
        const light = amountIn(rules.range('thermal.batt.light-r').low, 'h ft2 F/(Btu in)');
        const old = read.value.job.old.depth ? inches(read.value.job.old.depth) : 0;
        for (const { across, low } of resistanceAcross(read.value, rules, places)) {
          expect(low).toBeGreaterThanOrEqual(light * Math.min(old, profile.depthAt(across)) * (1 - 1e-12));
        }
      }),
      { numRuns: 100 },
    );
  });
});
