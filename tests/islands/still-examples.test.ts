import { describe, expect, test } from 'vitest';
import { stillExamples } from '../../src/islands/jobs/still-examples.ts';
import { exampleEntries, exampleWith } from '../job/entries.ts';

describe('what a job typed over the example still has of the example’s home', () => {
  test.each<[title: string, changes: Readonly<Record<string, unknown>>, still: readonly string[]]>([
    ['nothing, while it is that home', { 'fill.density': '1.6 lb/ft3' }, []],
    [
      'all that was seen, done and signed there, of another home',
      { 'home.length': '50 ft' },
      ['survey', 'machine', 'log', 'receipt'],
    ],
    ['the same of another cavity', { 'cavity.ridge': '14 in' }, ['survey', 'machine', 'log', 'receipt']],
    [
      'less where some of it was entered anew',
      { 'home.length': '50 ft', 'survey.leaks': 'found', log: {} },
      ['machine', 'receipt'],
    ],
    [
      'nothing once it is cleared',
      { 'home.length': '50 ft', survey: {}, machine: {}, log: {}, receipt: {} },
      [],
    ],
  ])('%s', (_, changes, still) => {
    expect(stillExamples(exampleWith(changes), exampleEntries)).toEqual(still);
  });
});
