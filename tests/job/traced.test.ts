import { describe, expect, test } from 'vitest';
import { movableValues } from '../../src/calc/checks/moved-values.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import type { Quantity } from '../../src/quantity/quantity.ts';
import type { Rulebook } from '../../src/rulebook/rulebook.ts';
import { type Entries, leavesIn } from '../calc/every/entries.ts';
import { amountsIn, type Figures, untoldOfEntry, untoldOfRule } from '../calc/every/named.ts';
import { data, exampleEntries as example, rules, workEntries } from './entries.ts';

/** The amounts of a job that a sheet shows with their working; none where it can't be worked. */
function figuresOf(entries: Entries, by: Rulebook = rules): Figures {
  const plan = workEntries(entries, by);
  if (!plan.ok) return new Map();
  const { volume, weight, bags, bagsToLoad, load, resistance, rows } = plan.value;
  const all: [string, Quantity | string | undefined][] = [
    ['volume', volume],
    ['weight', weight],
    ['bags', bags],
    ['bags to load', bagsToLoad],
    ['load', load.total],
    ['limit', load.limit],
    ['resistance', resistance?.value],
    ...rows.flatMap(({ side, holes }) =>
      holes.flatMap((hole): [string, Quantity][] => [
        [`hole ${hole.number} ${side}`, hole.along],
        [`bags of hole ${hole.number} ${side}`, hole.bags],
      ]),
    ),
    ...workParts(plan.value, by, true).flatMap((part) =>
      part.state === 'answered'
        ? amountsIn(part.answer).map(([name, value]): [string, Quantity] => [`${part.title}: ${name}`, value])
        : [],
    ),
  ];
  return new Map(
    all.flatMap(([name, value]) => (value === undefined || typeof value === 'string' ? [] : [[name, value]])),
  );
}

const before = figuresOf(example);

describe('every figure of a job that moves with an entry names it in its working', () => {
  test('the example has figures', () => expect(before.size).toBeGreaterThan(50));

  test.each(
    leavesIn(jobFields, example)
      .filter(({ field }) => field.kind === 'quantity')
      .map((leaf) => ({ name: leaf.way.join('.'), leaf })),
  )('$name', ({ leaf }) => {
    expect(untoldOfEntry(before, example, leaf, (entries) => figuresOf(entries))).toEqual([]);
  });
});

/** Those of every calculation are moved one calculation at a time; what a job counts by itself rests on these. */
const layoutRules = Object.values(data.rules).filter(({ id }) => id.startsWith('access.roof-holes.'));

describe('every figure of a job that moves with a rule of the holes names it in its working', () => {
  test.each(layoutRules.flatMap((rule) => movableValues(rule)))('$rule $part', (value) => {
    expect(untoldOfRule(before, value, (by) => figuresOf(example, by))).toEqual([]);
  });
});
