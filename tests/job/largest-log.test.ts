import { describe, expect, test } from 'vitest';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { trussPlaces } from '../../src/calc/holes/members.ts';
import { stretches } from '../../src/calc/ways/stretches.ts';
import { addressOfUnkept, inAddress } from '../../src/islands/jobs/addresses.ts';
import { fillLog } from '../../src/job/fill-log.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import { LARGEST_JOB, openJobFile, writeJobFile } from '../../src/job/job-file.ts';
import { carry, readCarried } from '../../src/job/job-link.ts';
import { readKept, writeKept } from '../../src/job/kept-job.ts';
import { readWithPhotographs, writeWithPhotographs } from '../../src/job/photographs-file.ts';
import { amountIn, quantity } from '../../src/quantity/quantity.ts';
import { exampleWith, planOf, rules, told } from './entries.ts';

/** A log of each bay at both edges, in the longest words that an entry takes. */
const bothEdges = (bays: number) =>
  Array.from({ length: bays }, (_, place) => place + 1).flatMap((opening) =>
    ['back', 'front'].map((side) => ({
      way: 'lifted roof edge',
      side,
      opening,
      bags: '123.75 bags',
      state: 'filling',
      not_filled: 'neither hose nor tube goes in',
    })),
  );

const edges = {
  'ways.chosen': 'lifted roof edge',
  'ways.edges': 'both edges',
  'cavity.eave': '4 1/2 in',
  'roof.obstacles': [],
  'survey.flues': 'none',
};

describe('the log takes every opening that a plan makes', () => {
  test.each<[string, Record<string, unknown>, number]>([
    [
      '200 ft with a truss every 16 in, the first at the end',
      { 'home.length': '200 ft', 'roof.truss_spacing': '16 in' },
      150,
    ],
    ['100 ft at 12 in', { 'home.length': '100 ft', 'roof.truss_spacing': '12 in' }, 100],
  ])('%s: both edges of each bay', (_, changes, bays) => {
    const log = fillLog(
      planOf(exampleWith({ ...edges, ...changes, 'log.openings': bothEdges(bays) })),
      rules,
    );
    expect(log.openings).toHaveLength(2 * bays);
    expect(log.strays).toEqual([]);
  });

  // By hand: 200 ft are 2400 in. Of trusses 2 in apart, the closest that are taken, the first 1 in from the end, 1200 stand in it, and
  // make one bay more.
  const { opening } = jobFields.log.of.openings.of;
  test('and no more than the longest roof with the closest trusses makes', () => {
    const places = trussPlaces(
      { truss_spacing: quantity(2, 'in'), first_truss: quantity(1, 'in'), trusses_measured: undefined },
      quantity(200, 'ft'),
    );
    const member = amountIn(rules.value('framing.truss.member-width'), 'in');
    expect([stretches(places, 2400, member).length, opening.most]).toEqual([1201, 1201]);
    expect(jobFields.log.of.openings.most).toBe(2 * 1201);
    expect(told(exampleWith({ 'log.openings': bothEdges(1202) }))[0]).toContain('2404 entries');
  });
});

describe('the largest log goes wherever a job goes', () => {
  const { most } = jobFields.log.of.openings.of.opening;
  const entries = exampleWith({ 'log.openings': bothEdges(most) });
  const job = { id: 'k3m7p2q9x4w8h5n6', changed: '2026-11-26T10:42:00Z', entries };
  const problems = (read: ReturnType<typeof openJobFile>) => (read.ok ? [] : read.problems.map(sentence));

  test('into a file', () => {
    const text = writeJobFile(entries, job);
    expect(problems(openJobFile(text))).toEqual([]);
    expect(text.length).toBeLessThan(LARGEST_JOB);
  });

  test('into the browser’s keeping', () => {
    const kept = readKept(writeKept({ ...job, revision: 1, by: 'a tab', deleted: undefined }));
    expect(kept.ok).toBe(true);
  });

  test('into an address, where the browser keeps nothing', () => {
    const { entries: found } = inAddress(addressOfUnkept(job.id, entries));
    expect(found).toHaveProperty('log.openings.length', 2 * most);
  });

  test('beside its photographs', () => {
    expect(readWithPhotographs(writeWithPhotographs(job, [])).ok).toBe(true);
  });

  test('into a link, packed, and where the browser can not pack', async () => {
    expect(problems(readCarried(await carry(job)))).toEqual([]);
    const { CompressionStream: packing } = globalThis;
    Object.assign(globalThis, { CompressionStream: undefined });
    const plain = await carry(job);
    Object.assign(globalThis, { CompressionStream: packing });
    expect(plain).toContain('.p.');
    expect(problems(readCarried(plain))).toEqual([]);
  });
});
