import { describe, expect, test } from 'vitest';
import { movableValues } from '../../src/calc/checks/moved-values.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import type { Quantity } from '../../src/quantity/quantity.ts';
import type { Rulebook } from '../../src/rulebook/rulebook.ts';
import { type Entries, leavesIn } from '../calc/every/entries.ts';
import { amountsIn, type Figures, namedBy, untoldOfEntry, untoldOfRule } from '../calc/every/named.ts';
import { data, exampleEntries as example, exampleWith, rules, workEntries } from './entries.ts';

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

describe('the stops that are open name what the ceiling under the fill is asked by', () => {
  const onBoard = (framing: string, pressure?: string) =>
    exampleWith({
      'ceiling.board': 'gypsum 1/2 in',
      'ceiling.framing': framing,
      'machine.pressure': pressure,
    });
  /** None of a board of half an inch is published for a framing over 24 in: by that the board is unrated, and no limit is there to name. */
  test.each<[title: string, entries: Entries, names: readonly string[], not: readonly string[]]>([
    ['a board with a limit', onBoard('16 in'), ['ceiling.board.limit'], ['machine.pressure']],
    [
      'one whose framing is too wide for any',
      onBoard('24.3 in'),
      ['ceiling.framing'],
      ['ceiling.board.limit'],
    ],
    ['a gauge that was read', onBoard('16 in', '0.01 psi'), ['machine.pressure'], []],
  ])('%s', (_, entries, names, not) => {
    const stops = figuresOf(entries).get('Ready or not: stops');
    const found = stops ? [...namedBy(stops)] : [];
    expect(found).toEqual(expect.arrayContaining(['cavity.ridge', 'fill.density', 'old.depth', ...names]));
    expect(found.filter((name) => not.includes(name))).toEqual([]);
  });
});
