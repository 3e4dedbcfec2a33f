import { describe, expect, test } from 'vitest';
import { calculations } from '../../../src/calc/calculations.ts';
import { movableValues } from '../../../src/calc/checks/moved-values.ts';
import { type AnyCalculation, answer } from '../../../src/calc/declare/calculation.ts';
import { askedByCalculations } from '../../../src/calc/uses.ts';
import { openRulebook, type Rulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import { type Entries, leavesIn } from './entries.ts';
import { amountsIn, type Figures, untoldOfEntry, untoldOfRule } from './named.ts';

const { data, files } = theProject();
const rules = openRulebook(data);
const asked = askedByCalculations(
  data,
  files.checks.map(({ entry }) => entry),
);

/** Rules whose numbers only count their rows; what the rows say is words. */
const rowsCounted: readonly string[] = ['patch.screws.first-four'];

/** The amounts of an answer; none where the entries can't be worked. */
function figuresOf(declared: AnyCalculation, entries: Entries, by: Rulebook): Figures {
  const answered = answer(declared, entries, by);
  return new Map(answered.ok ? amountsIn(answered.value) : []);
}

const withEntries = (declared: AnyCalculation, entries: Entries): string[] => {
  const before = figuresOf(declared, entries, rules);
  return leavesIn(declared.fields, entries).flatMap((leaf) =>
    untoldOfEntry(before, entries, leaf, (moved) => figuresOf(declared, moved, rules)),
  );
};

const withRules = (declared: AnyCalculation): string[] => {
  const before = figuresOf(declared, declared.example, rules);
  return [...(asked.get(declared.name) ?? [])]
    .filter((id) => !rowsCounted.includes(id))
    .flatMap((id) => movableValues(data.rules[id] as (typeof data.rules)[string]))
    .flatMap((value) => untoldOfRule(before, value, (by) => figuresOf(declared, declared.example, by)));
};

/** The example, and what the checks give: other shapes, other choices. */
const entriesOf = ({ name, example }: AnyCalculation): Entries[] => [
  example,
  ...files.checks.flatMap(({ entry }) => (entry.calculation === name ? [entry.given as Entries] : [])),
];

describe('every figure that moves with an entry names it in its working', () => {
  test.each(calculations.map((each) => ({ name: each.name, each })))('$name', ({ each }) => {
    expect([...new Set(entriesOf(each).flatMap((entries) => withEntries(each, entries)))]).toEqual([]);
  });
});

describe('every figure that moves with a number of the rulebook names its rule in its working', () => {
  test.each(calculations.map((each) => ({ name: each.name, each })))('$name', ({ each }) => {
    expect(withRules(each)).toEqual([]);
  });
});
