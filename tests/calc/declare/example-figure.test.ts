import { expect, test } from 'vitest';
import { calculationNamed } from '../../../src/calc/calculations.ts';
import { exampleFigure } from '../../../src/calc/declare/example-figure.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';

const rules = openRulebook(theProject().data);
const section = calculationNamed('cavity-section');
if (!section) throw new Error('found no calculation of a section, expected one');

test('a figure of the example is the one that its entries give', () => {
  // The example's ridge is entered as 15 in, and nothing in the cavity is deeper.
  expect(exampleFigure(section, 'deepest', rules).value).toMatchObject({ amount: 15, unit: 'in' });
});

test('a figure that the answer does not have is refused, naming the nearest', () => {
  expect(() => exampleFigure(section, 'depest', rules)).toThrow(
    /found the figure "depest" of cavity-section, expected one of area, .*; did you mean "deepest"\?/,
  );
  expect(() => exampleFigure(section, 'constructor', rules)).toThrow(/found the figure "constructor"/);
});

test('an example that does not work is refused with what is wrong', () => {
  const broken = { ...section, example: { ...section.example, eave: 'deep' } };
  expect(() => exampleFigure(broken, 'deepest', rules)).toThrow(
    /the example of cavity-section does not work: .*deep/,
  );
});
