import { describe, expect, test } from 'vitest';
import type { JobEntries } from '../../src/job/job-file.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { asLookedAt, beforeAnswer, forAnotherHome, stillExamples } from '../../src/job/still-examples.ts';
import { exampleEntries, exampleWith, planOf, rules } from '../job/entries.ts';

/** What the example has of them. */
const ALL = ['survey', 'machine', 'weather', 'log', 'receipt'];

/** What a sheet says that the home is. */
const verdictOf = (entries: JobEntries): unknown => {
  const [outcome] = workParts(planOf(asLookedAt(entries, exampleEntries)), rules).filter(
    ({ name }) => name === 'readiness',
  );
  return outcome?.state === 'answered' ? outcome.answer.figures.verdict?.value : outcome?.state;
};

describe('what a job typed over the example still has of the example’s home', () => {
  test.each<[title: string, changes: Readonly<Record<string, unknown>>, still: readonly string[]]>([
    ['nothing, while it is that home', { 'fill.density': '1.6 lb/ft3' }, []],
    ['all that was seen, done and signed there, of another home', { 'home.length': '50 ft' }, ALL],
    ['the same of another cavity', { 'cavity.ridge': '14 in' }, ALL],
    ['the same at another address', { name: 'Next door, lot 8' }, ALL],
    [
      'less where some of it was entered anew',
      { 'home.length': '50 ft', 'survey.leaks': 'found', log: {} },
      ['machine', 'weather', 'receipt'],
    ],
    [
      'nothing once it is cleared',
      { 'home.length': '50 ft', survey: {}, machine: {}, weather: {}, log: {}, receipt: {} },
      [],
    ],
  ])('%s', (_, changes, still) => {
    expect(stillExamples(exampleWith(changes), exampleEntries)).toEqual(still);
  });
});

describe('a home is ready only once it was looked at itself', () => {
  test.each<[title: string, changes: Readonly<Record<string, unknown>>, verdict: string]>([
    ['the example, with its own survey', {}, 'ready'],
    ['another home, with the example’s survey', { name: 'Next door, lot 8' }, 'not looked at everywhere'],
    ['another roof, with it', { 'home.length': '50 ft' }, 'not looked at everywhere'],
  ])('%s', (_, changes, verdict) => {
    expect(verdictOf(exampleWith(changes))).toBe(verdict);
  });
});

describe('an answer about another home', () => {
  const { survey: _, ...others } = exampleWith({ name: 'Next door, lot 8' });
  const still = exampleWith({ name: 'Next door, lot 8' });
  test.each<[title: string, entries: JobEntries, way: readonly string[], before: JobEntries]>([
    ['lets the example’s survey go', still, ['survey', 'leaks'], others],
    [
      'leaves what was answered of that home',
      exampleWith({ name: 'x', 'survey.pests': 'signs of them' }),
      ['survey', 'leaks'],
      exampleWith({ name: 'x', 'survey.pests': 'signs of them' }),
    ],
    ['leaves the survey alone where it is of something else', still, ['home', 'length'], still],
    ['leaves the example its own', exampleEntries, ['survey', 'leaks'], exampleEntries],
  ])('%s', (_, entries, way, before) => {
    expect(beforeAnswer(entries, exampleEntries, way)).toEqual(before);
  });
});

describe('a copy, for another home', () => {
  const { entries, left } = forAnotherHome({ ...exampleEntries, line: { height: '20 ft' } });

  test('has none of what was seen, done or signed at the first, and names it', () => {
    expect(left).toEqual(['survey', 'machine', 'line', 'weather', 'log', 'receipt']);
    expect(Object.keys(entries).filter((group) => (left as readonly string[]).includes(group))).toEqual([]);
    expect(verdictOf(entries)).toBe('not looked at everywhere');
  });

  test('has all else as it was', () => {
    expect({ ...exampleEntries, ...entries }).toEqual(exampleEntries);
    expect(Object.keys(entries).length + ALL.length).toBe(Object.keys(exampleEntries).length);
  });
});
