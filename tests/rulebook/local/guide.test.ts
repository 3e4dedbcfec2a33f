import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { folderGuide, sourceForms, valueForms } from '../../../src/rulebook/local/guide.ts';

const texts = {
  rulebook: readFileSync('src/rulebook/schema.ts', 'utf8'),
  local: readFileSync('src/rulebook/local/schema.ts', 'utf8'),
};
const EXAMPLE = 'rules/local/harrow-valley';

describe('the guide to an agency’s folder', () => {
  const guide = folderGuide(texts);

  test('explains the files that a folder may have', () => {
    expect(guide.map(({ name }) => name)).toEqual([
      'agency.yaml',
      'values.yaml',
      'notes.yaml',
      'cautions.yaml',
      'sources.yaml',
    ]);
  });

  test.each(guide)('explains every field that the example has in $name', ({ name, fields }) => {
    const file = parse(readFileSync(`${EXAMPLE}/${name}`, 'utf8')) as Record<string, unknown>;
    const entries = name === 'agency.yaml' ? [file] : Object.values(file);
    const used = new Set(entries.flatMap((entry) => Object.keys(entry as object)));
    const explained = fields.map((field) => field.name);
    expect(used.size).toBeGreaterThan(0);
    for (const field of used) expect(explained).toContain(field);
    // What every entry must have, the example has in each.
    for (const { name: field } of fields.filter(({ needed }) => needed))
      for (const entry of entries) expect(Object.keys(entry as object)).toContain(field);
  });

  test('says of a logo and of a note’s source that they may be left out, and of a reason that it may not', () => {
    const needed = (file: string, field: string) =>
      guide.find(({ name }) => name === file)?.fields.find(({ name }) => name === field)?.needed;
    expect(needed('agency.yaml', 'logo')).toBe(false);
    expect(needed('notes.yaml', 'source')).toBe(false);
    expect(needed('values.yaml', 'reason')).toBe(true);
  });

  test('a field of which the schema says nothing is an error', () => {
    const mute = texts.local.replace('/** Why it differs here, in a sentence. */', '');
    expect(() => folderGuide({ ...texts, local: mute })).toThrow(
      'found no comment on "reason" of values.yaml',
    );
  });

  test('has each form of a value in the words of its own comment', () => {
    const found = valueForms(texts).map(({ name, what }) => [name, what]);
    expect(found).toContainEqual(['at-least', 'The value or more.']);
    expect(found).toContainEqual(['between', 'Between two values, both included.']);
    expect(found).toHaveLength(6);
  });

  test('has the sources that an agency can name', () => {
    expect(sourceForms(texts).map(({ name }) => name)).toEqual(['document', 'practice', 'memory']);
  });
});
