import { describe, expect, test } from 'vitest';
import type { Field, Fields } from '../../src/calc/declare/field.ts';
import { readFields } from '../../src/calc/declare/read-fields.ts';
import { isAside, workAside } from '../../src/job/aside.ts';
import { fillLog } from '../../src/job/fill-log.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import type { JobEntries } from '../../src/job/job-file.ts';
import { asksFor } from '../../src/job/parts/part.ts';
import { jobParts, workParts } from '../../src/job/parts/parts.ts';
import { workJob } from '../../src/job/work.ts';
import { exampleWith, planOf, rules } from './entries.ts';

const work = (entries: JobEntries) => {
  const read = readFields(jobFields, entries);
  return read.ok ? workJob(read.value, rules) : read;
};
const aside = (entries: JobEntries) => {
  const read = work(entries);
  return read.ok ? read.value : workAside(entries, read.problems, work);
};
const wrong = (entries: JobEntries): string[] => {
  const plan = aside(entries);
  return plan
    ? workParts(plan, rules).flatMap(({ name, state }) => (state === 'wrong' ? [name] : []))
    : ['all of it'];
};

describe('an entry that can’t be read holds its own part, and no other', () => {
  test.each<[string, Record<string, unknown>, string[]]>([
    ['a price without its unit', { 'saving.cost': 'much' }, ['savings']],
    ['a duct of no size', { 'air.ducts.0.size': 'wide' }, ['exhaust-duct']],
    ['a room of a list', { 'air.rooms.0.flow': 'some' }, ['fresh-air']],
    ['a finish of no kind', { 'moisture.finish': 'velvet' }, ['moisture']],
    ['a thickness on the receipt', { 'receipt.initial_thickness': 'thick' }, ['receipt']],
    ['a key that nobody knows', { 'saving.prize': '1 $' }, []],
    ['two of two sheets', { 'saving.cost': 'much', 'ladder.height': 'high' }, ['savings', 'ladder']],
    ['an entry of the plan', { 'cavity.width': 'wide' }, ['all of it']],
    [
      'one of the plan beside one that is none',
      { 'cavity.width': 'wide', 'saving.cost': '?' },
      ['all of it'],
    ],
    // Without it the plan could be worked, and would forget the weight of the old insulation.
    [
      'one of the plan that it can do without, beside one that is none',
      { 'old.depth': 'deep', 'saving.cost': '?' },
      ['all of it'],
    ],
    // No part asks for a whole group, so none would tell of it.
    ['a word in the place of a sheet’s entries', { saving: 'x' }, ['all of it']],
    ['a number there', { saving: 7 }, ['all of it']],
    [
      'one that is none beside two of the plan that clash',
      { 'saving.cost': '?', 'cavity.ridge': '1 in' },
      ['all of it'],
    ],
  ])('%s', (_, changes, parts) => {
    expect(wrong(exampleWith(changes))).toEqual(parts);
  });

  test('nothing wrong is nothing to work without', () => {
    expect(workAside(exampleWith({}), [], work)).toBeUndefined();
  });

  test('the plan and its log stand as they are without it', () => {
    const plan = aside(exampleWith({ 'saving.cost': 'much' }));
    const sound = planOf(exampleWith({}));
    expect(plan?.bags.amount).toBe(sound.bags.amount);
    expect(plan && fillLog(plan, rules).used.amount).toBe(fillLog(sound, rules).used.amount);
  });
});

test('every entry that is beside the plan is asked for by a part, which tells when it can’t be read', () => {
  const ways = (fields: Fields, way: string): string[] =>
    Object.entries(fields).flatMap(([name, field]: [string, Field]) =>
      field.kind === 'group' ? ways(field.of, `${way}${name}.`) : [`${way}${name}`],
    );
  const all = ways(jobFields, '').filter(isAside);
  expect(all.length).toBeGreaterThan(40);
  expect(all.filter((way) => !jobParts.some((part) => asksFor(part, way)))).toEqual([]);
});
