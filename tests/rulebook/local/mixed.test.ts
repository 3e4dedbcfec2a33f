import { describe, expect, test } from 'vitest';
import { bookOf } from '../../../src/islands/book.ts';
import { drawnFrom } from '../../../src/rulebook/drawn-from.ts';
import { rulesCsv, sourcesCsv } from '../../../src/rulebook/export/csv.ts';
import { readRulebookJson, rulebookJson } from '../../../src/rulebook/export/json.ts';
import { ruleNotesModule, sentRules } from '../../../src/rulebook/generate.ts';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { type Resolved, resolveLocal } from '../../../src/rulebook/local/resolve.ts';
import { agency, base, context, inLayer, setting } from './folder.ts';

const GUARDRAIL = 'safety.fall.guardrail-height';
const BOARD = 'ceiling.board.limit';
const CLAUSE = '{ kind: document, document: irc, clause: R999, read: read, on: 2026-10-01 }';

/** What two folders of agencies come to, called One and Two; the second rests on a document. */
function ofTwo(rule: string, one: string, two: string): Resolved {
  const layer = (id: string, short: string, value: string, source?: string) =>
    inLayer(
      {
        'agency.yaml': agency(id, undefined, short),
        'values.yaml': setting(rule, value, source),
      },
      readLayer,
    );
  return resolveLocal(base, [layer('one', 'One', one), layer('two', 'Two', two, CLAUSE)], context);
}

/** The board's rows are keyed by board and framing, with 2.2, 1.3 and 2.2 lb/ft2 in the rulebook. */
const boards = (...loads: readonly number[]): string =>
  `{ kind: table, columns: [{ name: board, title: Board, key: word }, { name: framing, title: Framing at most, unit: in, key: at-most }, { name: load, title: Most weight, unit: lb/ft2 }], rows: [[gypsum 1/2 in, 16, ${loads[0]}], [gypsum 1/2 in, 24, ${loads[1]}], [gypsum 5/8 in, 24, ${loads[2]}]] }`;

const low = '{ kind: between, low: 40, high: 45, unit: in }';
const high = '{ kind: between, low: 3.25, high: 3.5, unit: ft }';
const ranges = ofTwo(GUARDRAIL, low, high);

describe('a value that no one folder gave whole tells of each figure whose it is and where from', () => {
  /** 3.5 ft is 42 in. */
  test('the ends of a range', () => {
    expect(ranges.problems).toEqual([]);
    expect(
      ranges.data.rules[GUARDRAIL]?.mixed?.map(({ figures, by, source }) => [figures, by, source.kind]),
    ).toEqual([
      ['40 in', 'One', 'practice'],
      ['42 in', 'Two', 'document'],
    ]);
  });

  test('the cells of a table, and what is as in the rulebook is the rulebook’s', () => {
    const { data, problems } = ofTwo(BOARD, boards(2, 1.3, 2.2), boards(2.2, 1.2, 2.2));
    expect(problems).toEqual([]);
    expect(data.rules[BOARD]?.mixed?.map(({ figures, by }) => [by, figures])).toEqual([
      ['One', 'gypsum 1/2 in, 16, Most weight: 2 lb/ft²'],
      ['Two', 'gypsum 1/2 in, 24, Most weight: 1.2 lb/ft²'],
      ['the rulebook', 'gypsum 5/8 in, 24, Most weight: 2.2 lb/ft²'],
    ]);
    expect(data.rules[BOARD]?.mixed?.at(-1)?.source).toEqual(base.rules[BOARD]?.source);
  });

  test('but not one that a folder gave whole', () => {
    const { data } = ofTwo(GUARDRAIL, low, '{ kind: between, low: 41, high: 43, unit: in }');
    expect(data.rules[GUARDRAIL]).toMatchObject({ by: 'Two', source: { kind: 'document' } });
    expect(data.rules[GUARDRAIL]?.mixed).toBeUndefined();
  });
});

describe('each source of such a value is told', () => {
  test('in the notes of a sheet on paper', () => {
    const notes = ruleNotesModule(ranges.data, (id) => id === GUARDRAIL);
    expect(notes).toContain(
      `common practice, no source for 40 in, One; read, IRC (${base.documents.irc?.edition}), R999 for 42 in, Two`,
    );
  });

  test('on the page of its document, and in the count of that', () => {
    expect(drawnFrom('irc', ranges.data).map(({ rule }) => rule.id)).toContain(GUARDRAIL);
    const counts = (data: typeof base) => {
      const row = sourcesCsv(data)
        .split('\r\n')
        .find((each) => each.startsWith('irc,'));
      return Number(row?.split(',').at(-1));
    };
    expect(counts(ranges.data) - counts(base)).toBe(1);
  });

  test('in the list as a spreadsheet, a line each, with whose it is', () => {
    const csv = rulesCsv({ ...ranges.data, rules: { [GUARDRAIL]: ranges.data.rules[GUARDRAIL] as never } });
    expect(csv).toContain(',One and Two,');
    expect(csv).toContain('"practice\nread"');
    expect(csv).toContain('"\nR999"');
  });

  test('in the exported rulebook, which reads back the same', () => {
    const text = rulebookJson(ranges.data);
    expect(rulebookJson(readRulebookJson(text, 'rulebook.json'))).toBe(text);
  });
});

test('in a browser both stand behind it', () => {
  const { rules, titleOf } = bookOf(sentRules(ranges.data, (id) => id === GUARDRAIL));
  expect(rules.whose(GUARDRAIL)).toBe('One and Two');
  expect(titleOf(GUARDRAIL)).toMatch(/ \(One and Two\)$/);
});
