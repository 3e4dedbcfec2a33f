import { expect, test } from 'vitest';
import { calculations } from '../../src/calc/calculations.ts';
import { methods } from '../../src/calc/methods.ts';

test('every calculation has its method told, and no other has', () => {
  expect(Object.keys(methods).sort()).toEqual(calculations.map(({ name }) => name).sort());
});

test.each(Object.entries(methods))('%s: the method is told in whole sentences', (_, told) => {
  expect(told).toMatch(/^[A-Z0-9].*\.$/s);
});
