import { describe, expect, test } from 'vitest';
import { changedBetween } from '../../../src/islands/copy/changed.ts';
import { whyRecalled } from '../../../src/islands/copy/recall.ts';
import { rulebookJson } from '../../../src/rulebook/export/json.ts';
import { readRecall, recallJson } from '../../../src/rulebook/export/recall.ts';
import { theProject } from '../../the-project.ts';

const { data } = theProject();
const now = rulebookJson(data);

/** The rulebook with some values another number. */
function withNumbers(numbers: Readonly<Record<string, number>>): string {
  const rulebook = JSON.parse(now);
  for (const [id, number] of Object.entries(numbers)) rulebook.rules[id].value.number = number;
  return JSON.stringify(rulebook);
}

const [OVERLAP, FALL, HOLE] = [
  'patch.layers.overlap',
  'safety.roof.fall-height',
  'access.roof-holes.diameter',
];

describe('what a newer copy changed is told', () => {
  test.each([
    ['nothing', {}, 'no value changed'],
    ['one value for safety', { [OVERLAP]: 3 }, '1 safety value changed'],
    ['two', { [OVERLAP]: 3, [FALL]: 5 }, '2 safety values changed'],
    ['one that is for something else', { [HOLE]: 7 }, '1 value changed, none of them a safety value'],
    ['both', { [OVERLAP]: 3, [FALL]: 5, [HOLE]: 7 }, '2 safety values changed, and 1 other value'],
  ])('%s', (_, numbers, says) => expect(changedBetween(now, withNumbers(numbers)).says).toBe(says));

  test('with the title, the new value and the old', () =>
    expect(changedBetween(now, withNumbers({ [OVERLAP]: 3 })).safety).toEqual([
      'Overlap of a patch layer: 3 in, before 2 in',
    ]));

  test('words and sources alone are no changed value', () => {
    const rulebook = JSON.parse(now);
    rulebook.rules[OVERLAP].says = 'Said otherwise.';
    expect(changedBetween(now, JSON.stringify(rulebook)).says).toBe('no value changed');
  });

  /** The rulebook with some values another number, and with cautions changed. */
  const withCautions = (change: Readonly<Record<string, object | null>>, numbers = {}): string => {
    const rulebook = JSON.parse(withNumbers(numbers));
    for (const [id, more] of Object.entries(change)) {
      if (more === null) delete rulebook.cautions[id];
      else rulebook.cautions[id] = { ...rulebook.cautions[id], ...more };
    }
    return JSON.stringify(rulebook);
  };
  const [KEEP, WEAR] = ['caution.flue.keep-clear', 'caution.before.wear'];

  test.each<[what: string, after: string, says: string]>([
    ['a caution of a lower level', withCautions({ [KEEP]: { level: 'note' } }), '1 caution changed'],
    ['the words of two', withCautions({ [KEEP]: { do: 'x' }, [WEAR]: { says: 'x' } }), '2 cautions changed'],
    ['one that goes', withCautions({ [KEEP]: null }), '1 caution changed'],
    ['where one comes from', withCautions({ [KEEP]: { source: { kind: 'memory' } } }), 'no value changed'],
    [
      'one, and a safety value',
      withCautions({ [KEEP]: { says: 'x' } }, { [OVERLAP]: 3 }),
      '1 safety value changed, and 1 caution',
    ],
    [
      'one, and both kinds of value',
      withCautions({ [KEEP]: { says: 'x' } }, { [OVERLAP]: 3, [FALL]: 5, [HOLE]: 7 }),
      '2 safety values changed, 1 other value, and 1 caution',
    ],
    [
      'one, and a value that is for something else',
      withCautions({ [KEEP]: { says: 'x' } }, { [HOLE]: 7 }),
      '1 value changed, none of them a safety value, and 1 caution changed',
    ],
  ])('%s', (_, after, says) => expect(changedBetween(now, after).says).toBe(says));

  test('of a caution what it says now, and what it said', () => {
    const words = { level: 'note', says: 'Fill lies {clearance.flue.to-combustibles} off.', do: 'Go on.' };
    const before = withCautions({ [KEEP]: { ...words, level: 'stop', says: 'Fill burns.' } });
    expect(changedBetween(before, withCautions({ [KEEP]: words })).safety).toEqual([
      'A note, before a stop: Fill lies 2 in off. Go on. Before: Fill burns. Go on.',
    ]);
    expect(changedBetween(before, withCautions({ [KEEP]: null })).safety).toEqual([
      'A stop, no longer there: Fill burns. Go on.',
    ]);
    expect(changedBetween(withCautions({ [KEEP]: null }), before).safety).toEqual([
      'A stop, new: Fill burns. Go on.',
    ]);
  });

  test('what an agency says beside one', () => {
    const beside = [{ agency: 'Harrow', level: 'stop', says: 'Ring us.', do: 'Wait.', from: 'practice' }];
    const words = { level: 'warn', says: 'It is hot.', do: 'Keep off.' };
    const told = changedBetween(
      withCautions({ [KEEP]: words }),
      withCautions({ [KEEP]: { ...words, beside } }),
    );
    expect(told.safety).toEqual([
      'A warning: It is hot. Keep off. Harrow: Ring us. Wait. Before: It is hot. Keep off.',
    ]);
  });

  test('a safety value that goes, or comes', () => {
    const rulebook = JSON.parse(now);
    delete rulebook.rules[OVERLAP];
    const without = JSON.stringify(rulebook);
    expect(changedBetween(now, without).safety).toEqual(['Overlap of a patch layer: no longer there']);
    expect(changedBetween(without, now).safety).toEqual(['Overlap of a patch layer: new, 2 in']);
  });
});

describe('what the host says of recalled versions', () => {
  const said = recallJson('2026.2', [{ version: '2026.1', reason: 'A load is wrong.' }]);

  test('is read back', () =>
    expect(readRecall(said)).toEqual([{ version: '2026.1', reason: 'A load is wrong.' }]));

  test.each([
    ['a version that is recalled', '2026.1', 'A load is wrong.'],
    ['one that is not', '2026.2', undefined],
    ['one whose name begins alike', '2026.10', undefined],
  ])('%s', (_, version, reason) => expect(whyRecalled(said, version)).toBe(reason));

  test.each([
    ['a page that asks to sign in', '<!doctype html><p>Sign in'],
    ['nothing', ''],
    ['null', 'null'],
    ['another file', '{"format":"heel-to-ridge rulebook","recalled":[]}'],
    ['no list', '{"format":"heel-to-ridge recall","recalled":"2026.1"}'],
  ])('is not told by %s', (_, text) => expect(readRecall(text)).toBeUndefined());

  test('an entry that is none is left out', () =>
    expect(
      readRecall(
        '{"format":"heel-to-ridge recall","recalled":[null,{"version":1},{"version":"2026.1"},"x"]}',
      ),
    ).toEqual([]));
});
