import { expect, test } from 'vitest';
import { restingOnPlan } from '../../src/job/parts/found-by-plan.ts';
import { input, number, type Origin, plus, type Quantity, times } from '../../src/quantity/quantity.ts';

const [holes, spare] = [input(5, '1', 'holes'), input(1, '1', 'spare')];
const ofPlan: Origin = { from: 'method', method: 'holes of the plan', operands: [] };

/** Where each quantity that a figure rests on comes from, itself first. */
const origins = (q: Quantity): readonly Origin['from'][] => [
  q.origin.from,
  ...('operands' in q.origin ? q.origin.operands.flatMap(origins) : []),
];

/** 2 · (5 + 1): the product, the constant, the sum, the holes, the spare one. */
const screws = times(number(2), plus(holes, spare));
const answer = {
  figures: { screws: { label: 'Screws', value: screws }, word: { label: 'Kit', value: 'whole' } },
  tables: { rows: { title: 'Rows', columns: { of: 'Of' }, rows: [{ of: holes }, { of: spare }] } },
  cautions: [],
  remarks: [],
};

test('what the plan found is told as the plan’s, however deep in a working it lies, and what was typed as typed', () => {
  expect(origins(screws)).toEqual(['operation', 'constant', 'operation', 'input', 'input']);
  const { figures, tables } = restingOnPlan(answer, { holes: ofPlan });
  expect(origins(figures.screws?.value as Quantity)).toEqual([
    'operation',
    'constant',
    'operation',
    'method',
    'input',
  ]);
  expect(figures.screws?.value).toMatchObject({ amount: 12 });
  expect(figures.word?.value).toBe('whole');
  expect(tables?.rows?.rows.map(({ of }) => (of as Quantity).origin)).toEqual([ofPlan, spare.origin]);
});

test('where the plan found nothing, every quantity is the one that it was', () =>
  expect(restingOnPlan(answer, {}).figures.screws?.value).toBe(screws));
