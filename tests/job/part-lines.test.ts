import { describe, expect, test } from 'vitest';
import { said } from '../../src/calc/declare/remark.ts';
import { partLines } from '../../src/job/part-lines.ts';
import { quantity } from '../../src/quantity/quantity.ts';
import { rules } from './entries.ts';

const words = { says: 'It is wet.', do: 'Dry it.' };
const cautions = {
  'caution.before.wet': { ...words, level: 'stop' },
  'caution.savings.vary': { ...words, level: 'note', says: 'Savings vary.', do: 'Promise none.' },
} as unknown as Parameters<typeof partLines>[1];

test('a part that is answered tells its stops, figures, tables, remarks and other cautions, in this order', () => {
  const lines = partLines(
    {
      name: 'a-part',
      title: 'Of the roof',
      state: 'answered',
      values: {},
      answer: {
        figures: {
          width: { label: 'Width', value: quantity(30, 'in'), format: { tape: 8 } },
          verdict: { label: 'Verdict', value: 'not ready' },
        },
        tables: {
          bays: {
            title: 'The bays',
            columns: { bay: 'Bay', from: 'From', who: 'Who' },
            rows: [
              { bay: 'the first', from: quantity(6, 'in') },
              { bay: 'next', from: quantity(18, 'in'), who: 'both' },
            ],
            format: { from: { tape: 8 } },
          },
        },
        cautions: ['caution.savings.vary', 'caution.before.wet'],
        remarks: [said`Look again.`],
      },
    } as unknown as Parameters<typeof partLines>[0],
    cautions,
    rules,
  );
  expect(lines).toEqual([
    '',
    'OF THE ROOF',
    'STOP: It is wet. Dry it.',
    '  Width: 2 ft 6 in',
    '  Verdict: not ready',
    '  The bays',
    // Each column as wide as its widest cell, and two spaces between them.
    '    Bay        From       Who',
    '    the first  6 in',
    '    next       1 ft 6 in  both',
    '  Look again.',
    'NOTE: Savings vary. Promise none.',
  ]);
});

type Outcome = Parameters<typeof partLines>[0];
const told = (outcome: object): string[] =>
  partLines({ name: 'a-part', title: 'Of the roof', ...outcome } as unknown as Outcome, cautions, rules);

describe('a part that is not answered', () => {
  test.each<[title: string, outcome: object, lines: readonly string[]]>([
    [
      'has nothing to work',
      { state: 'nothing', why: 'No hole is cut.' },
      ['', 'OF THE ROOF', '  No hole is cut.'],
    ],
    [
      'waits for entries',
      { state: 'waiting', wanted: [{ label: 'Width' }, { label: 'Length' }] },
      ['', 'OF THE ROOF', '  Waits for: Width, Length.'],
    ],
    [
      'has an entry that is wrong',
      {
        state: 'wrong',
        problem: { field: 'width', label: 'Width', found: 'nothing', expected: 'more than 0' },
      },
      ['', 'OF THE ROOF', '  Width (width): found nothing; expected more than 0.'],
    ],
    ['is held behind a stop, which is told elsewhere', { state: 'held' }, []],
  ])('%s', (_, outcome, lines) => {
    expect(told(outcome)).toEqual(lines);
  });
});
