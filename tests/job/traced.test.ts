import { describe, expect, test } from 'vitest';
import { jobFields } from '../../src/job/job-fields.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import type { Quantity } from '../../src/quantity/quantity.ts';
import { type Entries, leavesIn, movedBy, withAt } from '../calc/every/entries.ts';
import { type Figures, SHARES, untold } from '../calc/every/named.ts';
import { exampleEntries as example, rules, workEntries } from './entries.ts';

/** The amounts of a job that a sheet shows with their working; none where it can't be worked. */
function figuresOf(entries: Entries): Figures {
  const plan = workEntries(entries);
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
    ...workParts(plan.value, rules, true).flatMap((part) =>
      part.state === 'answered'
        ? Object.entries(part.answer.figures).map(([name, { value }]): [string, Quantity | string] => [
            `${part.title}: ${name}`,
            value,
          ])
        : [],
    ),
  ];
  return new Map(
    all.flatMap(([name, value]) => (value === undefined || typeof value === 'string' ? [] : [[name, value]])),
  );
}

describe('every figure of a job that moves with an entry names it in its working', () => {
  const before = figuresOf(example);

  test('the example has figures', () => expect(before.size).toBeGreaterThan(50));

  test.each(
    leavesIn(jobFields, example).flatMap(({ way, field, given }) =>
      field.kind === 'quantity' ? [{ name: way.join('.'), way, field, given }] : [],
    ),
  )('$name', ({ name, way, field, given }) => {
    const found = SHARES.flatMap((share) =>
      untold(before, figuresOf(withAt(example, way, movedBy(field, given, share))), [name], name),
    );
    expect([...new Set(found)]).toEqual([]);
  });
});
