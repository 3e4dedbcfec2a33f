import { expect, test } from 'vitest';
import { calculationNamed } from '../../../src/calc/calculations.ts';
import { type AnyCalculation, answer } from '../../../src/calc/declare/calculation.ts';
import { whichOfList } from '../../../src/calc/declare/which-of-list.ts';
import { jobFields } from '../../../src/job/job-fields.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';

test.each([
  ['a truss of many', 'roof.trusses_measured.3.at', 'Place (truss 4)'],
  ['a whole entry of a list', 'roof.obstacles.0', 'Place (vent, flue or skylight 1)'],
  ['a duct', 'air.ducts.1.size', 'Place (duct 2)'],
  ['a list as such', 'roof.obstacles', 'Place'],
  ['no list', 'cavity.width', 'Place'],
  ['nothing of the job', 'nowhere.4.at', 'Place'],
  ['all entries', '', 'Place'],
])('%s', (_, field, label) => {
  expect(whichOfList(jobFields, { field, label: 'Place', found: '"9"', expected: 'a length' })).toEqual({
    field,
    label,
    found: '"9"',
    expected: 'a length',
  });
});

test.each([
  ['that can’t be read', { gross: 'heavy', tare: '10 lb' }, ['Gross weight (fill 2)']],
  ['that is missing', { tare: '10 lb' }, ['Gross weight (fill 2)']],
  ['that clashes with another', { gross: '9 lb', tare: '10 lb' }, ['Tare weight (fill 2)']],
])('a calculation tells of an entry %s which of the list it is', (_, second, labels) => {
  const testBox = calculationNamed('test-box') as AnyCalculation;
  const fills = [{ gross: '16 lb', tare: '10 lb' }, second];
  const read = answer(testBox, { ...testBox.example, fills }, openRulebook(theProject().data));
  expect(read.ok ? [] : read.problems.map(({ label }) => label)).toEqual(labels);
});
