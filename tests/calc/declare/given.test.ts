import { expect, test } from 'vitest';
import { groupField, listField, optional, wordsField } from '../../../src/calc/declare/field.ts';
import { given } from '../../../src/calc/declare/given.ts';

const fields = {
  name: wordsField('Name', 'Of the home.', 'any'),
  roof: groupField('Roof', 'What covers it.', {
    cover: wordsField('Cover', 'What it is of.', 'any'),
    age: optional(wordsField('Age', 'In years.', 'any')),
  }),
  holes: listField('Holes', 'Each hole.', 'a hole', { along: wordsField('Along', 'From the end.', 'any') }),
};

test('what was entered is told in the order of the form, each with its group or its place in a list', () => {
  const entries = {
    holes: [{ along: '7 ft' }, { along: '20 ft' }],
    roof: { age: '12', cover: 'metal' },
    name: 'Larkspur',
  };
  expect(given(fields, entries)).toEqual([
    { label: 'Name', value: 'Larkspur' },
    { label: 'Roof: Cover', value: 'metal' },
    { label: 'Roof: Age', value: '12' },
    { label: 'Hole 1: Along', value: '7 ft' },
    { label: 'Hole 2: Along', value: '20 ft' },
  ]);
});

test.each([
  ['left out', undefined],
  ['null', null],
  ['empty', ''],
])('an entry that is %s is not told, nor is a list or a group', (_, nothing) => {
  expect(given(fields, { name: nothing, roof: nothing, holes: nothing })).toEqual([]);
  expect(given(fields, { roof: { age: nothing }, holes: [] })).toEqual([]);
});

test('a nought is an entry', () => {
  expect(given(fields, { name: 0 })).toEqual([{ label: 'Name', value: '0' }]);
});
