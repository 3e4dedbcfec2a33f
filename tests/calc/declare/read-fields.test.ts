import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  choiceField,
  groupField,
  lengthField,
  listField,
  optional,
  quantityField,
  wordsField,
  yearField,
} from '../../../src/calc/declare/field.ts';
import { fieldsReader } from '../../../src/calc/declare/fields-reader.ts';
import { readFields, sentence } from '../../../src/calc/declare/read-fields.ts';

/** One field of every kind. */
const fields = {
  width: lengthField('W', 'Width', 'Across.', '13 ft 10 in', { most: '40 ft' }),
  depth: optional(lengthField('d', 'Depth', 'Down.', '2 in', { zero: 'allowed', most: '6 ft' })),
  density: quantityField({
    dimension: 'density',
    symbol: 'ρ',
    label: 'Density',
    hint: 'Of the fill.',
    example: '1.5 lb/ft3',
    zero: 'refused',
  }),
  shape: choiceField('Shape', 'Of the roof.', ['bowed', 'level']),
  name: wordsField('Name', 'Of the job.', '14 Larkspur Lane'),
  crew: optional(wordsField('Crew', 'Who does it.', 'Blue')),
  built: yearField('Built', 'From the plate.', '1979'),
  marks: listField('Marks', 'On the roof.', 'a mark', { at: lengthField('x', 'Place', 'Along.', '8 ft') }, 3),
  old: groupField('Old', 'What lies there.', {
    kind: optional(choiceField('Kind', 'Of it.', ['batt', 'loose'])),
  }),
} as const;

const good = {
  width: '13 ft 10 in',
  density: '1.5 lb/ft3',
  shape: 'bowed',
  name: 'A lane',
  built: 1979,
};

const told = (entries: unknown): string[] => {
  const read = readFields(fields, entries);
  return read.ok ? [] : read.problems.map(sentence);
};

test('a nought with a minus before it is nought', () => {
  const read = readFields(
    { depth: lengthField('d', 'Depth', 'How deep.', '3 in', { zero: 'allowed' }) },
    { depth: '-0 in' },
  );
  expect(read.ok && Object.is(read.value.depth.amount, 0)).toBe(true);
});

describe('entries are read as they were meant', () => {
  test('each kind of field gives its value; what may be left out is left out', () => {
    const read = readFields(fields, good);
    expect(read).toMatchObject({
      ok: true,
      value: {
        width: {
          amount: 166,
          unit: 'in',
          symbol: 'W',
          label: 'Width',
          origin: { from: 'input', field: 'width' },
        },
        depth: undefined,
        density: { amount: 1.5, unit: 'lb/ft3' },
        shape: 'bowed',
        name: 'A lane',
        crew: undefined,
        built: 1979,
        marks: [],
        old: { kind: undefined },
      },
    });
  });

  test('text is trimmed to one line, a year may be text, an empty text counts as left out', () => {
    const read = readFields(fields, {
      ...good,
      name: '  A\n\tlane ',
      shape: ' level ',
      built: ' 1979 ',
      crew: '  ',
      depth: '',
    });
    expect(read).toMatchObject({
      ok: true,
      value: { name: 'A lane', shape: 'level', built: 1979, crew: undefined, depth: undefined },
    });
  });

  test('a value inside a list or a group knows its way', () => {
    const read = readFields(fields, {
      ...good,
      marks: [{ at: '8 ft' }, { at: '9 ft' }],
      old: { kind: 'batt' },
    });
    expect(read).toMatchObject({
      ok: true,
      value: { marks: [{}, { at: { origin: { field: 'marks.1.at' } } }], old: { kind: 'batt' } },
    });
  });

  test('nought is read where it is allowed', () => {
    expect(readFields(fields, { ...good, depth: '0 in' })).toMatchObject({
      ok: true,
      value: { depth: { amount: 0 } },
    });
  });

  test('the most itself is let pass, in whatever unit it is written', () => {
    // 40 ft are 12.192 m and 1219.2 cm, by definition of the foot.
    for (const width of ['40 ft', '480 in', '12.192 m', '1219.2 cm'])
      expect(told({ ...good, width })).toEqual([]);
  });
});

const complaints: readonly [title: string, entries: unknown, says: string][] = [
  [
    'a number without a unit',
    { ...good, width: '12' },
    'Width (width): found "12", a number with no unit; expected a length such as 13 ft 10 in.',
  ],
  [
    'a bare number',
    { ...good, width: 12 },
    'Width (width): found "12"; expected text with a unit, such as "13 ft 10 in".',
  ],
  [
    'another kind of quantity',
    { ...good, width: '12 lb' },
    'Width (width): found "12 lb" (weight); expected a length such as 13 ft 10 in.',
  ],
  [
    'a unit that there is not',
    { ...good, width: '12 furlongs' },
    'Width (width): found "12 furlongs" with the unknown unit "furlongs"; expected a length such as 13 ft 10 in.',
  ],
  [
    'a quantity left out',
    { ...good, width: '' },
    'Width (width): found nothing; expected text with a unit, such as "13 ft 10 in".',
  ],
  [
    'a negative length',
    { ...good, width: '-3 ft' },
    'Width (width): found "-3 ft"; expected an amount above 0, such as 13 ft 10 in.',
  ],
  [
    'nought where it is refused',
    { ...good, width: '0 ft' },
    'Width (width): found "0 ft"; expected more than 0, such as 13 ft 10 in.',
  ],
  [
    'more than the most',
    { ...good, width: '41 ft' },
    'Width (width): found "41 ft"; expected 40 ft at most: this entry takes no more.',
  ],
  [
    'a list for a quantity',
    { ...good, width: ['12 ft'] },
    'Width (width): found a list; expected text with a unit, such as "13 ft 10 in".',
  ],
  [
    'a word that is no choice',
    { ...good, shape: 'domed' },
    'Shape (shape): found "domed"; expected one of: bowed; level.',
  ],
  [
    'a choice left out',
    { ...good, shape: undefined },
    'Shape (shape): found nothing; expected one of: bowed; level.',
  ],
  [
    'a number for words',
    { ...good, name: 14 },
    'Name (name): found "14"; expected words such as "14 Larkspur Lane".',
  ],
  [
    'words left out',
    { ...good, name: '   ' },
    'Name (name): found nothing; expected words such as "14 Larkspur Lane".',
  ],
  [
    'too many letters',
    { ...good, name: 'x'.repeat(201) },
    'Name (name): found 201 letters; expected 200 at most.',
  ],
  [
    'a year of three digits',
    { ...good, built: '979' },
    'Built (built): found "979"; expected a year such as 1979.',
  ],
  [
    'a year of another age',
    { ...good, built: 1899 },
    'Built (built): found "1899"; expected a year such as 1979.',
  ],
  ['half a year', { ...good, built: 1979.5 }, 'Built (built): found "1979.5"; expected a year such as 1979.'],
  [
    'a year in a list',
    { ...good, built: ['1979'] },
    'Built (built): found a list; expected a year such as 1979.',
  ],
  [
    'a year that can’t be made text',
    { ...good, built: { toString: 1, valueOf: 1 } },
    'Built (built): found a set of entries; expected a year such as 1979.',
  ],
  ['something else for a list', { ...good, marks: '8 ft' }, 'Marks (marks): found "8 ft"; expected a list.'],
  [
    'a list too long',
    { ...good, marks: Array(4).fill({ at: '8 ft' }) },
    'Marks (marks): found 4 entries; expected 3 at most.',
  ],
  [
    'something else for an entry of a list',
    { ...good, marks: ['8 ft'] },
    'a mark (marks.0): found "8 ft"; expected a set of named entries.',
  ],
  [
    'a mistake inside a list',
    { ...good, marks: [{ at: '8 ft' }, { at: '9' }] },
    'Place (marks.1.at): found "9", a number with no unit; expected a length such as 8 ft.',
  ],
  [
    'something else for a group',
    { ...good, old: 'batt' },
    'Old (old): found "batt"; expected a set of named entries.',
  ],
  [
    'an unknown key',
    { ...good, colour: 'red' },
    'Unknown entry (colour): found the unknown key "colour"; expected one of width, depth, density, shape, name, crew, built, marks, old.',
  ],
  [
    'an unknown key in a group',
    { ...good, old: { knd: 'batt' } },
    'Unknown entry (old.knd): found the unknown key "knd"; expected one of kind.',
  ],
  ['no set at all', null, 'The entries: found nothing; expected a set of named entries.'],
  ['a list for everything', [good], 'The entries: found a list; expected a set of named entries.'],
];

describe('a mistake is one sentence: the field, what was found, what is expected', () => {
  test.each(complaints)('%s', (_, entries, says) => {
    expect(told(entries)).toEqual([says]);
  });
});

describe('nought of what need not be there may be written as none', () => {
  const of = (zero: 'allowed' | 'or none' | 'refused') => ({
    depth: lengthField('d', 'Depth', 'Down.', '2 in', { zero }),
  });
  test.each(['none', 'None', ' no ', 'nothing', 'none.'])('%s', (depth) => {
    const read = readFields(of('or none'), { depth });
    expect(read.ok && read.value.depth).toMatchObject({ amount: 0, unit: 'in', dimension: 'length' });
  });
  test.each(['allowed', 'refused'] as const)('but not where nought is %s in figures', (zero) => {
    expect(readFields(of(zero), { depth: 'none' })).toMatchObject({
      ok: false,
      problems: [{ found: '"none"', expected: 'a length such as 2 in' }],
    });
  });
  test('nor in more words', () => {
    expect(readFields(of('or none'), { depth: 'none in' }).ok).toBe(false);
  });
});

describe('a share beside a percent sign is never a bare number', () => {
  const share = {
    share: quantityField({
      dimension: 'number',
      beside: 'percent',
      symbol: 's',
      label: 'Share',
      hint: 'Of all.',
      example: '80 %',
      zero: 'allowed',
    }),
  };
  test.each(['0.8', '80', '½', '0', ' 1/2 '])('%s', (given) => {
    const read = readFields(share, { share: given });
    expect(read.ok ? [] : read.problems.map(sentence)).toEqual([
      `Share (share): found "${given.trim()}", a number with no unit; expected a share such as 80 %.`,
    ]);
  });
  test('with the sign, or in words, it is', () => {
    for (const given of ['80 %', '80%', '80 percent', '80 per cent'])
      expect(readFields(share, { share: given })).toMatchObject({
        ok: true,
        value: { share: { amount: 80, unit: 'percent' } },
      });
  });
});

describe('all mistakes are told at once', () => {
  test('six of them, in the order of the entries', () => {
    const entries = {
      ...good,
      widht: '1 ft',
      width: '12',
      density: '1 lb',
      shape: 'x',
      built: 'old',
      marks: [{ at: '9' }],
    };
    expect(told(entries).map((each) => each.split(':')[0])).toEqual([
      'Unknown entry (widht)',
      'Width (width)',
      'Density (density)',
      'Shape (shape)',
      'Built (built)',
      'Place (marks.0.at)',
    ]);
  });
  test('nothing is half read: with a mistake there is no value', () => {
    expect(readFields(fields, { ...good, shape: 'x' })).not.toHaveProperty('value');
  });
});

describe('hostile entries do no harm', () => {
  const pollution = [
    '{"__proto__": {"polluted": true}}',
    '{"constructor": {"prototype": {"polluted": true}}}',
    '{"old": {"__proto__": {"polluted": true}}}',
    '{"marks": [{"__proto__": {"at": "8 ft"}}]}',
  ];
  test.each(pollution)('%s is an unknown key', (json) => {
    const read = readFields(fields, JSON.parse(json));
    expect(read.ok).toBe(false);
    expect(read.ok ? '' : read.problems.map(sentence).join(' ')).toMatch(
      /unknown key "(__proto__|constructor)"/,
    );
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  test('a name that every object has is no choice and no entry', () => {
    expect(told({ ...good, shape: 'toString' })).toHaveLength(1);
    expect(told({ ...good, hasOwnProperty: 'x' })).toHaveLength(1);
  });

  test('what is said stays on one line, and no control character comes through', () => {
    const bell = String.fromCharCode(27);
    const entries = {
      ...good,
      [`two\nlines${bell}[31m`]: 1,
      width: `1\n${bell}[2J furlong`,
      shape: 'a\tb',
    };
    for (const each of told(entries)) expect(each).not.toMatch(/\p{Cc}/u);
    expect(told(entries)).toHaveLength(3);
  });

  test('what is said of a long entry is short', () => {
    const long = 'x'.repeat(100_000);
    for (const each of told({ ...good, [long]: 1, shape: long, width: long }))
      expect(each.length).toBeLessThan(300);
  });

  test('ten thousand values of any kind are read or refused, and nothing is thrown', () => {
    const key = fc.constantFrom(...Object.keys(fields), 'at', 'kind', '__proto__', 'x');
    const { tree } = fc.letrec((tie) => ({
      tree: fc.oneof(
        { maxDepth: 4 },
        fc.constantFrom('13 ft', '1.5 lb/ft3', 'bowed', '', ' ', 'toString', '1979'),
        fc.string(),
        fc.integer(),
        fc.double(),
        fc.boolean(),
        fc.constant(null),
        fc.array(tie('tree'), { maxLength: 5 }),
        fc.dictionary(key, tie('tree'), { maxKeys: 8 }),
      ),
    }));
    fc.assert(
      fc.property(fc.oneof(tree, fc.jsonValue()), (value) => {
        const given: unknown = JSON.parse(JSON.stringify(value) ?? 'null');
        const read = readFields(fields, given);
        return (
          read.ok ||
          (read.problems.length > 0 && read.problems.every((problem) => sentence(problem).endsWith('.')))
        );
      }),
      { numRuns: 10_000 },
    );
  });
});

describe('a reader that is asked again and again', () => {
  const mark = (at: string) => ({ at });
  const [first, second, wrong] = [mark('8 ft'), mark('9 ft'), mark('far')];

  test.each([
    ['one entry changed', { ...good, marks: [first] }, { ...good, name: 'Another lane', marks: [first] }],
    [
      'a row before it taken off, so that it is another entry',
      { marks: [first, second] },
      { marks: [second] },
    ],
    ['rows in another order', { marks: [first, second] }, { marks: [second, first] }],
    ['one object as two rows', { marks: [first] }, { marks: [first, first] }],
    ['what was wrong still wrong', { marks: [wrong] }, { marks: [wrong, second] }],
    ['what was wrong mended', { marks: [wrong] }, { marks: [first] }],
    ['a group left out', { old: { kind: 'batt' } }, {}],
    ['no entries any more', good, undefined],
  ])('answers with %s as one that reads all anew', (_, before, after) => {
    const read = fieldsReader(fields);
    for (const entries of [before, after, before]) expect(read(entries)).toEqual(readFields(fields, entries));
  });

  test('gives the very group that it gave, where nothing of it changed', () => {
    const read = fieldsReader(fields);
    const marks = [first];
    const [before, after] = [read({ ...good, marks }), read({ ...good, name: 'Another lane', marks })];
    if (!before.ok || !after.ok) throw new Error('found entries that can’t be read, expected two that can');
    expect(after.value.marks[0]).toBe(before.value.marks[0]);
  });
});
