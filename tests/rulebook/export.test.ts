import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { rulesCsv, sourcesCsv } from '../../src/rulebook/export/csv.ts';
import {
  ExportError,
  readRulebookJson,
  rulebookJson,
  rulebookJsonSchema,
} from '../../src/rulebook/export/json.ts';
import type { Rule, RulebookData } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

const { data } = theProject();
const text = rulebookJson(data);

/** Where an entry stands in the files is not part of the rulebook. */
const withoutPlaces = ({ rules, cautions, ...rest }: RulebookData) => ({
  ...rest,
  rules: Object.fromEntries(Object.entries(rules).map(([id, { file: _f, line: _l, ...rule }]) => [id, rule])),
  cautions: Object.fromEntries(
    Object.entries(cautions).map(([id, { file: _f, line: _l, ...caution }]) => [id, caution]),
  ),
});

describe('the exported rulebook', () => {
  test('reads back as the same rulebook', () => {
    expect(withoutPlaces(readRulebookJson(text, 'rulebook.json'))).toEqual(withoutPlaces(data));
  });

  test('comes out the same again', () => {
    expect(rulebookJson(readRulebookJson(text, 'rulebook.json'))).toBe(text);
  });

  test('is valid by its own JSON Schema, to another validator', () => {
    const validate = new Ajv2020({ strict: false, formats: { date: true } }).compile(rulebookJsonSchema());
    expect(validate(JSON.parse(text)), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...JSON.parse(text), version: 'soon' })).toBe(false);
  });

  test.each([
    ['text that is not JSON', 'no', 'not JSON'],
    ['a job file', '{"format":"heel-to-ridge job","version":1}', 'format'],
    ['a rule with a misspelt key', text.replace('"says"', '"sais"'), 'rules.'],
    ['no version', text.replace('"version"', '"verson"'), 'version'],
  ])('is refused in a sentence where it is %s', (_, given, says) => {
    expect(() => readRulebookJson(given, 'x.json')).toThrow(ExportError);
    expect(() => readRulebookJson(given, 'x.json')).toThrow(says);
  });
});

/** A reader of RFC 4180, written from the RFC. */
function readCsv(csv: string): string[][] {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < csv.length; at += 1) {
    const letter = csv[at];
    if (quoted) {
      if (letter !== '"') cell += letter;
      else if (csv[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else quoted = false;
    } else if (letter === '"') quoted = true;
    else if (letter === ',' || letter === '\r') {
      rows.at(-1)?.push(cell);
      cell = '';
      if (letter === '\r') {
        at += 1;
        rows.push([]);
      }
    } else cell += letter;
  }
  rows.pop();
  return rows;
}

describe('the spreadsheets', () => {
  test('hold every rule, in as many cells as the head has', () => {
    const [head = [], ...rows] = readCsv(rulesCsv(data));
    expect(rows.map(([id]) => id)).toEqual(Object.keys(data.rules).sort());
    for (const row of rows) expect(row).toHaveLength(head.length);
    const limit = rows.find(([id]) => id === 'ceiling.board.limit') ?? [];
    expect(JSON.parse(limit[head.indexOf('table')] ?? '').rows[0]).toEqual(['gypsum 1/2 in', 16, 2.2]);
  });

  test('hold every document with how many values it gives', () => {
    const [head = [], ...rows] = readCsv(sourcesCsv(data));
    expect(rows).toHaveLength(Object.keys(data.documents).length);
    const values = rows.map((row) => Number(row[head.indexOf('values')]));
    const published = Object.values(data.rules).filter(({ source }) => source.kind === 'document').length;
    expect(values.reduce((a, b) => a + b, 0)).toBe(published);
  });

  test('keep a spreadsheet from taking words for a formula', () => {
    const [first] = Object.values(data.rules) as [Rule];
    const odd = {
      ...data,
      rules: { 'a.b': { ...first, id: 'a.b', title: '=1+1', says: 'He said "no",\r\nand left.' } },
    };
    const [, row = []] = readCsv(rulesCsv(odd));
    expect(row.slice(1, 3)).toEqual(["'=1+1", 'He said "no",\r\nand left.']);
  });
});
