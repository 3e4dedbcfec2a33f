import { describe, expect, test } from 'vitest';
import { calculationNamed, calculations } from '../../../src/calc/calculations.ts';
import { answer, type Cell } from '../../../src/calc/declare/calculation.ts';
import type { Field, Fields } from '../../../src/calc/declare/field.ts';
import { readFields, sentence } from '../../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { jobFields } from '../../../src/job/job-fields.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';

const { data, files } = theProject();
const rules = openRulebook(data);

/** Every field below some fields, with the way to it. */
const allOf = (fields: Fields, way: string): [way: string, field: Field][] =>
  Object.entries(fields).flatMap(([name, field]): [string, Field][] => [
    [`${way}.${name}`, field],
    ...(field.kind === 'group' || field.kind === 'list' ? allOf(field.of, `${way}.${name}`) : []),
  ]);

const declared = [
  ...calculations.flatMap(({ name, fields }) => allOf(fields, name)),
  ...allOf(jobFields, 'job'),
].map(([way, field]) => ({ way, field }));

describe('every calculation', () => {
  test.each(calculations.map((each) => ({ name: each.name, each })))(
    '$name works its own example',
    ({ each }) => {
      const read = answer(each, each.example, rules);
      if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
      expect(Object.keys(read.value.figures).length).toBeGreaterThan(0);
      for (const id of read.value.cautions) expect(data.cautions[id]).toBeDefined();
      // A working is found by its figure's label.
      const labels = Object.values(read.value.figures).map(({ label }) => label);
      expect(labels).toEqual([...new Set(labels)]);
    },
  );

  test.each(calculations.map(({ name }) => name))('%s is found by its name, and by no other', (name) => {
    expect(calculations.filter((each) => each.name === name)).toHaveLength(1);
    expect(calculationNamed(name)?.name).toBe(name);
    expect(calculationNamed(`${name}x`)).toBeUndefined();
  });

  test('gives the same answer twice, since it is pure', () => {
    for (const each of calculations) {
      expect(answer(each, each.example, rules)).toEqual(answer(each, each.example, rules));
    }
  });
});

/** Entries that are answered: each calculation's own example, and what the published checks give. */
const answered = [
  ...calculations.map((each) => ({ name: each.name, what: 'its example', given: each.example })),
  ...files.checks
    .filter(({ entry }) => entry.refuses === undefined)
    .map(({ id, entry }) => ({ name: entry.calculation, what: id, given: entry.given })),
];

/** A sentence ends; it may begin with what somebody typed. */
const SENTENCE = /^\S.*\.$/s;
/** Words, which may be none, or a quantity. */
const isCell = (value: Cell | undefined): boolean => {
  if (value === undefined || typeof value === 'string') return typeof value === 'string';
  return 'caution' in value ? data.cautions[value.caution] !== undefined : Number.isFinite(value.amount);
};

describe('every answer is whole', () => {
  test.each(answered)('$name: $what', ({ name, given }) => {
    const one = calculationNamed(name);
    if (!one) throw new Error(`found no calculation ${name}`);
    const read = answer(one, given, rules);
    if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
    const { figures, tables = {}, cautions, remarks } = read.value;
    expect(Object.keys(figures)).not.toEqual([]);
    for (const [key, { label, value }] of Object.entries(figures)) {
      expect(label.trim(), key).not.toBe('');
      expect(isCell(value) && value !== '', key).toBe(true);
    }
    for (const [key, table] of Object.entries(tables)) {
      const columns = Object.keys(table.columns);
      expect(table.title, key).not.toBe('');
      expect(table.rows, key).not.toEqual([]);
      for (const row of table.rows) {
        expect(Object.keys(row).sort(), key).toEqual([...columns].sort());
        for (const column of columns) expect(isCell(row[column]), `${key}, ${column}`).toBe(true);
      }
      expect(columns).toEqual(expect.arrayContaining(Object.keys(table.format ?? {})));
    }
    expect(new Set(cautions).size).toBe(cautions.length);
    for (const id of cautions) expect(data.cautions[id], id).toBeDefined();
    for (const remark of remarks) expect(remarkText(remark)).toMatch(SENTENCE);
  });
});

describe('every field is described, and its own example is accepted', () => {
  test.each(declared)('$way', ({ field }) => {
    expect(field.label.trim()).not.toBe('');
    expect(field.hint).toMatch(/[.?]$/);
    // A sentence ends with it, and with one full stop.
    if ('example' in field) expect(field.example).not.toMatch(/\.$/);
    if (field.kind === 'quantity' || field.kind === 'words' || field.kind === 'year') {
      expect(readFields({ it: field }, { it: field.example })).toMatchObject({ ok: true });
    }
    if (field.kind === 'choice') {
      expect(new Set(field.choices).size).toBe(field.choices.length);
      for (const choice of field.choices) expect(readFields({ it: field }, { it: choice }).ok).toBe(true);
    }
  });
});
