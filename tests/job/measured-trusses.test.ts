import { describe, expect, test } from 'vitest';
import type { JobEntries } from '../../src/job/job-file.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import type { Quantity } from '../../src/quantity/quantity.ts';
import { amountsIn } from '../calc/every/named.ts';
import { exampleWith, planOf, rules, told } from './entries.ts';

/** Every amount of every answer of a job, and the plan’s own, by name and unit. */
function amountsOf(entries: JobEntries): Record<string, number> {
  const plan = planOf(entries);
  const own: [string, Quantity][] = [
    ['volume', plan.volume],
    ['weight', plan.weight],
    ['bags', plan.bags],
  ];
  const parts = workParts(plan, rules, true).flatMap((each) =>
    each.state === 'answered'
      ? amountsIn(each.answer).map(([name, value]): [string, Quantity] => [`${each.title}: ${name}`, value])
      : [],
  );
  return Object.fromEntries(
    [...own, ...parts].map(([name, value]) => [`${name}, ${value.unit}`, value.amount]),
  );
}

/** The home of the example is 66 ft long: a truss at each of 0, 24, ... 792 in. */
const everyTwoFeet = Array.from({ length: 34 }, (_, place) => ({ at: `${24 * place} in` }));
const shapes: readonly [title: string, changes: Readonly<Record<string, unknown>>][] = [
  ['roof holes, the gable ends and one edge', {}],
  ['both edges', { 'ways.edges': 'both edges' }],
  ['framing by the trusses', { 'heat.framing_share': 'from the trusses' }],
];

describe('trusses measured one by one every 24 in are a spacing of 24 in, on every sheet', () => {
  test.each(shapes)('%s', (_, changes) => {
    const spaced = amountsOf(exampleWith(changes));
    const measured = amountsOf(
      exampleWith({
        ...changes,
        'roof.truss_spacing': undefined,
        'roof.first_truss': undefined,
        'roof.trusses_measured': everyTwoFeet,
      }),
    );
    expect(Object.keys(measured)).toEqual(Object.keys(spaced));
    expect(Object.keys(spaced).length).toBeGreaterThan(100);
    for (const [name, amount] of Object.entries(spaced))
      expect(Math.abs((measured[name] ?? Number.NaN) - amount), name).toBeLessThanOrEqual(
        1e-9 * Math.abs(amount),
      );
  });
});

test('the spacing that stands beside trusses that were measured has no say', () => {
  const measured = { 'roof.trusses_measured': everyTwoFeet };
  expect(amountsOf(exampleWith({ ...measured, 'roof.truss_spacing': '16 in' }))).toEqual(
    amountsOf(exampleWith({ ...measured, 'roof.truss_spacing': '24 in' })),
  );
});

test.each([
  [
    'the sixth truss, off the roof',
    { 'roof.trusses_measured': everyTwoFeet.with(5, { at: '190 ft' }) },
    'Place (roof.trusses_measured.5.at): found 190 ft; expected a place of its own on the roof.',
  ],
  [
    'a seam told twice',
    { 'roof.seams_measured': [{ at: '4 ft' }, { at: '48 in' }] },
    'Place (roof.seams_measured.1.at): found 48 in; expected a place of its own on the roof.',
  ],
])('is told at its very entry: %s', (_, changes, says) => expect(told(exampleWith(changes))).toEqual([says]));
