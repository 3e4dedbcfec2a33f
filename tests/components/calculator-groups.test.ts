import { expect, test } from 'vitest';
import { calculations } from '../../src/calc/calculations.ts';
import { grouped } from '../../src/components/calculator-groups.ts';

test('every calculator stands in one group', () => {
  const names = grouped(calculations).flatMap(({ of }) => of.map(({ name }) => name));
  expect([...names].sort()).toEqual(calculations.map(({ name }) => name).sort());
});

test('one in no group, and a group of what is not there, stop the build by name', () => {
  const [first, ...others] = calculations;
  if (!first) throw new Error('found no calculation');
  expect(() => grouped([...calculations, { ...first, name: 'left-out' }])).toThrow(
    'found left-out in no group',
  );
  expect(() => grouped(others)).toThrow(`found no calculation "${first.name}"`);
});
