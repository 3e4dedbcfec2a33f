import { describe, expect, test } from 'vitest';
import { ceiling } from '../../../src/calc/ceiling/declaration.ts';
import { joined, printed, remarkPieces, remarkText, said } from '../../../src/calc/declare/remark.ts';
import { input, quantity } from '../../../src/quantity/quantity.ts';
import { rules, worked } from '../told.ts';

const hole = rules.value('access.roof-holes.diameter');

describe('a sentence with quantities in it', () => {
  test('keeps of a rule’s number which rule it is, and of what was typed nothing', () => {
    expect(remarkPieces(said`A hole of ${hole} in ${input(66, 'ft', 'home.length')}.`)).toEqual([
      'A hole of ',
      { rule: 'access.roof-holes.diameter', text: '6 in' },
      ' in ',
      '66 ft',
      '.',
    ]);
  });

  test.each([
    ['plain words', 'As they stand.', 'As they stand.'],
    [
      'words, a number without unit and a quantity',
      said`${'Lane'} ${2} has ${quantity(3, 'in')}.`,
      'Lane 2 has 3 in.',
    ],
    [
      'a quantity to so many figures',
      said`${printed(quantity(2 / 3, 'ft'), { figures: 2 })} free`,
      '0.67 ft free',
    ],
    [
      'a sentence within a sentence',
      said`It leaks ${said`${quantity(2, 'cfm')} or less`}.`,
      'It leaks 2 cfm or less.',
    ],
    ['parts with a word between', joined([said`a`, said`b`, said`c`], ' and '), 'a and b and c'],
    ['nothing', said``, ''],
    ['no parts', joined([], ' and '), ''],
  ])('%s', (_, remark, text) => {
    expect(remarkText(remark)).toBe(text);
  });

  test('the old insulation that nobody weighed is told with the rule that its weight is of', () => {
    const { remarks } = worked(ceiling, { ...ceiling.example, old_depth: '2 in' });
    const of = remarks
      .flatMap(remarkPieces)
      .flatMap((piece) => (typeof piece === 'string' ? [] : [piece.rule]));
    expect(new Set(of)).toEqual(new Set(['thermal.batt.light-density']));
  });
});
