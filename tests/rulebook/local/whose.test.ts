import { describe, expect, test } from 'vitest';
import { remarkPieces, said } from '../../../src/calc/declare/remark.ts';
import { plannedJson } from '../../../src/cli/planned-json.ts';
import { cautionSentence } from '../../../src/job/caution-sentence.ts';
import { jobSheet } from '../../../src/job/sheet.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { sentenceOf } from '../../../src/rulebook/whose.ts';
import { exampleWith, workEntries } from '../../job/entries.ts';
import { base, resolved, setting } from './folder.ts';

const FLUE = 'clearance.flue.to-combustibles';

/** An agency called Valley asks for 3 in about a flue, where the rulebook has 2 in, and sets half a pound less for the thin board. */
const own = [
  setting(FLUE, '{ kind: at-least, number: 3, unit: in }'),
  setting(
    'ceiling.board.limit',
    '{ kind: table, columns: [{ name: board, title: Board, key: word }, { name: framing, title: Framing at most, unit: in, key: at-most }, { name: load, title: Most weight, unit: lb/ft2 }], rows: [[gypsum 1/2 in, 16, 2], [gypsum 1/2 in, 24, 1.2], [gypsum 5/8 in, 24, 2.1]] }',
  ),
].join('');
const { data, problems } = resolved({ 'values.yaml': own });
const book = openRulebook(data);

const sheetOf = (known: typeof data, changes: Readonly<Record<string, unknown>> = {}): string => {
  const rules = openRulebook(known);
  const plan = workEntries(exampleWith(changes), rules);
  if (!plan.ok) throw new Error('the example does not work');
  return jobSheet(plan.value, known.cautions, rules);
};

describe('text says whose a value is where an agency set it', () => {
  const sheet = sheetOf(data);
  test('the folder is sound', () => expect(problems).toEqual([]));
  test.each([
    ['a caution', 'with a fixed shield that does not burn, 3 in (Valley) or more from the flue'],
    ['a figure of a part', '\n  Widest ring: 3 in (Valley)\n'],
    [
      'a cell of a table, and the document it would else be from',
      /chimney {2}3 in \(Valley\) {2}Valley {2,}/,
    ],
    ['what the ceiling may carry', /it may carry (2|1\.2|2\.1) lb\/ft² \(Valley\)\n/],
  ])('%s', (_, words) => expect(sheet).toMatch(words));

  test('and says nothing where it is the rulebook’s own', () => {
    const published = sheetOf(base);
    expect(published).toContain('2 in or more from the flue');
    expect(published).toContain('\n  Widest ring: 2 in\n');
    expect(published).toMatch(/chimney {2}2 in {2}the federal work specifications/);
  });

  test('a remark', () => {
    const remark = said`Keep ${book.value(FLUE)} clear.`;
    expect(sentenceOf(remarkPieces(remark), book)).toBe('Keep 3 in (Valley) clear.');
    expect(sentenceOf(remarkPieces(remark), openRulebook(base))).toBe('Keep 3 in clear.');
  });

  test('a caution of the rulebook, with what the agency itself says beside it under its name', () => {
    const beside = [{ agency: 'Valley', level: 'warn', says: 'Fog lies.', do: 'Wait.', from: 'x' }] as const;
    const caution = { level: 'stop', says: `Keep {${FLUE}}.`, do: 'Measure.', beside } as const;
    expect(cautionSentence(caution, book)).toBe(
      'STOP: Keep 3 in (Valley). Measure.\nWARN of Valley: Fog lies. Wait.',
    );
  });
});

describe('what a command prints for programs names whose the values behind its figures are', () => {
  const printed = (known: typeof data) => {
    const rules = openRulebook(known);
    const plan = workEntries(exampleWith({}), rules);
    if (!plan.ok) throw new Error('the example does not work');
    return plannedJson(plan.value, rules, known.cautions, true);
  };
  test('each rule that the agency set, where a figure rests on it, and no other', () => {
    expect(printed(data)).toMatchObject({ whose: { [FLUE]: 'Valley', 'ceiling.board.limit': 'Valley' } });
    expect(Object.keys((printed(data) as { whose?: object }).whose ?? {})).toHaveLength(2);
  });
  test('nothing where all are the rulebook’s own', () => {
    expect(printed(base)).not.toHaveProperty('whose');
  });
});
