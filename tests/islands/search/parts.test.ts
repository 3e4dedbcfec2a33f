import { expect, test } from 'vitest';
import { partOf } from '../../../src/islands/search/parts.ts';

const parts = [
  ['0', 'en_figures'],
  ['a', 'en_a'],
  ['breat', 'en_breat'],
] as const;

test.each([
  { title: 'a word between the first words of two parts stands in the former', word: 'board', part: 'en_a' },
  { title: 'a first word stands in its own part', word: 'breat', part: 'en_breat' },
  { title: 'what follows the last first word stands in the last part', word: 'zinc', part: 'en_breat' },
  { title: 'capitals, accents and marks are as nothing', word: 'Bréather-', part: 'en_breat' },
  { title: 'figures stand before letters', word: '24', part: 'en_figures' },
  { title: 'what has no letter stands before all', word: '…', part: undefined },
])('$title', ({ word, part }) => {
  expect(partOf(word, parts)).toBe(part);
});
