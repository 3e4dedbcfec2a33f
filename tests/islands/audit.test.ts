import { describe, expect, test } from 'vitest';
import { chosenIn, documentOf, passes } from '../../src/islands/audit.ts';

const row = {
  topic: 'fill',
  kind: 'exact',
  source: 'regulation',
  document: '24 CFR part 3280',
  status: 'read',
  read: '2026-03-01',
  guarded: 'in part',
};

describe('a row of the table of values passes', () => {
  test.each([
    ['where nothing is chosen', {}, true],
    ['where its topic is chosen', { topic: 'fill' }, true],
    ['not where another topic is', { topic: 'patch' }, false],
    ['not where one of two fails', { topic: 'fill', status: 'memory' }, false],
    ['where its kind of source is chosen', { source: 'regulation' }, true],
    ['not where another kind is', { source: 'handbook' }, false],
    ['where its document is chosen', { document: '24 CFR part 3280' }, true],
    ['not where another document is, of the same kind', { document: '24 CFR part 3285' }, false],
    ['where it was read before the day', { readbefore: '2026-04-01' }, true],
    ['not where it was read on the day', { readbefore: '2026-03-01' }, false],
  ])('%s', (_, chosen, wanted) => {
    expect(passes(row, chosen)).toBe(wanted);
  });

  test('where its reading was not dated, since it is due', () => {
    expect(passes({ ...row, read: '' }, { readbefore: '2000-01-01' })).toBe(true);
  });

  test('not a value without a document, whatever the day', () => {
    expect(
      passes({ ...row, source: 'practice', document: undefined, read: '' }, { readbefore: '2099-01-01' }),
    ).toBe(false);
  });
});

test.each([
  ['a regulation', '24 CFR part 3280 (2015), 3280.504(d)', '24 CFR part 3280'],
  ['another whose name it begins', '24 CFR part 3280 (extract) (2015), page 1', '24 CFR part 3280 (extract)'],
  ['one that is not listed', '24 CFR part 3285 (2015), 3285.801', undefined],
  ['common practice', 'common practice, no source', undefined],
])('the document of a line of source: %s', (_, line, name) => {
  const documents = ['24 CFR part 3280', '24 CFR part 3280 (extract)'].map((each) => ({
    name: each,
    kind: 'regulation',
  }));
  expect(documentOf(line, documents)?.name).toBe(name);
});

test('the address chooses; what it does not know is left alone', () => {
  expect(chosenIn('topic=fill&nonsense=1&status=')).toEqual({ topic: 'fill' });
  expect(chosenIn('%%%')).toEqual({});
});
