import { describe, expect, test } from 'vitest';
import { chosenIn, passes } from '../../src/islands/audit.ts';

const row = {
  topic: 'fill',
  kind: 'exact',
  source: 'document',
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
    ['where it was read before the day', { readbefore: '2026-04-01' }, true],
    ['not where it was read on the day', { readbefore: '2026-03-01' }, false],
  ])('%s', (_, chosen, wanted) => {
    expect(passes(row, chosen)).toBe(wanted);
  });

  test('where its reading was not dated, since it is due', () => {
    expect(passes({ ...row, read: '' }, { readbefore: '2000-01-01' })).toBe(true);
  });

  test('not a value without a document, whatever the day', () => {
    expect(passes({ ...row, source: 'practice', read: '' }, { readbefore: '2099-01-01' })).toBe(false);
  });
});

test('the address chooses; what it does not know is left alone', () => {
  expect(chosenIn('topic=fill&nonsense=1&status=')).toEqual({ topic: 'fill' });
  expect(chosenIn('%%%')).toEqual({});
});
