import { describe, expect, test } from 'vitest';
import { choiceField, groupField, lengthField, listField, optional } from '../../src/calc/declare/field.ts';
import { filledIn, otherwise } from '../../src/calc/variations.ts';

/** Invented: a choice, an entry that may be left out, and both again in a list and in a group. */
const kind = choiceField('Kind', 'What it is.', ['vent', 'flue', 'chimney']);
const size = lengthField('s', 'Size', 'How wide it is.', '6 in');
const fields = {
  kind,
  size: optional(size),
  things: optional(listField('Things', 'What stands there.', 'a thing', { kind, size: optional(size) })),
  edge: groupField('Edge', 'Of the roof.', { kind: optional(kind), size }),
};

describe('entries near to others', () => {
  test('each choice is made otherwise and each entry left out, in rows and groups too, one at a time', () => {
    const rows = [{ kind: 'vent' }, { kind: 'flue', size: '1 in' }];
    const edge = { kind: 'flue', size: '2 in' };
    const entries = { kind: 'vent', size: '3 in', things: rows, edge };
    expect(otherwise(fields, entries)).toEqual([
      { ...entries, kind: 'flue' },
      { ...entries, kind: 'chimney' },
      { ...entries, size: undefined },
      { ...entries, things: undefined },
      { ...entries, things: [{ kind: 'flue' }, rows[1]] },
      { ...entries, things: [{ kind: 'chimney' }, rows[1]] },
      { ...entries, things: [rows[0], { kind: 'vent', size: '1 in' }] },
      { ...entries, things: [rows[0], { kind: 'chimney', size: '1 in' }] },
      { ...entries, things: [rows[0], { kind: 'flue', size: undefined }] },
      { ...entries, edge: { ...edge, kind: 'vent' } },
      { ...entries, edge: { ...edge, kind: 'chimney' } },
      { ...entries, edge: { ...edge, kind: undefined } },
    ]);
  });

  test('a choice that is left out is made in each way', () => {
    expect(otherwise({ kind: optional(kind) }, {})).toEqual([
      { kind: 'vent' },
      { kind: 'flue' },
      { kind: 'chimney' },
    ]);
  });

  test('what is left out is given its own example, of a list one row with what it must have', () => {
    const entries = { kind: 'vent', edge: { size: '2 in' } };
    expect(filledIn(fields, entries)).toEqual([
      { ...entries, size: '6 in' },
      { ...entries, things: [{ kind: 'vent' }] },
      { ...entries, edge: { size: '2 in', kind: 'vent' } },
    ]);
    expect(filledIn(fields, { ...entries, size: '3 in', things: [{ kind: 'flue' }] })).toEqual([
      { ...entries, size: '3 in', things: [{ kind: 'flue', size: '6 in' }] },
      { ...entries, size: '3 in', things: [{ kind: 'flue' }], edge: { size: '2 in', kind: 'vent' } },
    ]);
  });
});
