import { expect, test } from 'vitest';
import { amountAs, toldApart } from '../../src/job/told-apart.ts';

type Amount = Parameters<typeof toldApart>[0];

test.each<[title: string, before: Amount, after: Amount, told: readonly [string, string]]>([
  [
    'texts that differ stay as they are',
    { text: '6 1/2 bags', amount: 6.5, unit: 'bag' },
    { text: '6.6 bags', amount: 6.6, unit: 'bag' },
    ['6 1/2 bags', '6.6 bags'],
  ],
  [
    'amounts that read alike get as many figures as it takes',
    { text: '2 lb', amount: 2.0001, unit: 'lb' },
    { text: '2 lb', amount: 2.0002, unit: 'lb' },
    ['2.0001 lb', '2.0002 lb'],
  ],
  // A foot is 12 in, so the two are 24.01 and 24.02 in.
  [
    'in the unit of the first',
    { text: '24 in', amount: 24.01, unit: 'in' },
    { text: '24 in', amount: 24.02 / 12, unit: 'ft' },
    ['24.01 in', '24.02 in'],
  ],
  [
    'what is no amount stays as it is',
    { text: 'glass fibre' },
    { text: 'glass fibre' },
    ['glass fibre', 'glass fibre'],
  ],
  [
    'an amount that is gone stays as it was',
    { text: '2 lb', amount: 2, unit: 'lb' },
    { text: '2 lb' },
    ['2 lb', '2 lb'],
  ],
])('%s', (_, before, after, told) => {
  expect(toldApart(before, after)).toEqual(told);
});

test.each<[title: string, amount: Amount, as: string, found: number | undefined]>([
  ['feet in inches', { text: '2 ft', amount: 2, unit: 'ft' }, 'in', 24],
  ['one of a unit that is no longer known, in that unit', { text: '2 oz', amount: 2, unit: 'oz' }, 'oz', 2],
  [
    'one of a unit that is no longer known, in another',
    { text: '2 oz', amount: 2, unit: 'oz' },
    'lb',
    undefined,
  ],
  ['one of something else', { text: '2 lb', amount: 2, unit: 'lb' }, 'in', undefined],
  ['none, in the unit that it has', { text: 'as it lies', unit: 'in' }, 'in', undefined],
])('an amount in a unit: %s', (_, amount, as, found) => {
  expect(amountAs(amount, as)).toBe(found);
});
