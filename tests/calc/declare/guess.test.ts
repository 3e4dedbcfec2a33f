import { describe, expect, test } from 'vitest';
import { groupField, lengthField } from '../../../src/calc/declare/field.ts';
import { guessed } from '../../../src/calc/declare/guess.ts';
import { readFields, sentence } from '../../../src/calc/declare/read-fields.ts';

const fields = {
  width: lengthField('w', 'Width', 'Across.', '12 ft'),
  old: groupField('Old', 'What lies there.', { kind: lengthField('k', 'Kind', 'Of it.', '2 in') }),
};

const told = (entries: unknown): string[] => {
  const read = readFields(fields, entries);
  return read.ok ? [] : read.problems.map(guessed).map(sentence);
};

/** By hand: of the keys of the form or of its group, the one that a slip of two letters or fewer away leads to. */
describe('an unknown key is told with the one that was meant, where one is near', () => {
  test.each([
    ['a slip of two letters', { width: '12 ft', old: { kind: '2 in' }, widht: '12 ft' }, 'expected "width".'],
    [
      'one in a group, from the keys of the group',
      { width: '12 ft', old: { kind: '2 in', knd: '2 in' } },
      'expected "kind".',
    ],
    [
      'one that no key is near, all of them',
      { width: '12 ft', old: { kind: '2 in' }, colour: 'red' },
      'expected one of width, old.',
    ],
    [
      'and a mistake of another kind stays as it is',
      { width: '12', old: { kind: '2 in' } },
      'expected a length such as 12 ft.',
    ],
  ])('%s', (_, entries, ends) => {
    const all = told(entries);
    expect(all).toHaveLength(1);
    expect(all[0]).toMatch(new RegExp(`${ends.replace('.', '\\.')}$`));
  });
});
