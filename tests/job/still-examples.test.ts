import { describe, expect, test } from 'vitest';
import { type Entries, withEntry } from '../../src/calc/declare/entries.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import type { JobEntries } from '../../src/job/job-file.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import {
  entered,
  forAnotherHome,
  NONE_OF_EXAMPLE,
  ofThisHome,
  stillExamples,
} from '../../src/job/still-examples.ts';
import { exampleEntries, exampleWith, planOf, rules } from '../job/entries.ts';

/** What the example has of them. */
const ALL = ['survey', 'machine', 'weather', 'log', 'receipt'];

/** Entries typed one after the other, as a sheet takes them: what tells of the example's home goes once it is another. */
const typed = (from: JobEntries, ...keys: readonly (readonly [way: string, value: unknown])[]): JobEntries =>
  keys.reduce<JobEntries>(
    (entries, [way, value]) =>
      ofThisHome(entered(entries, exampleEntries, way.split('.'), value), exampleEntries),
    from,
  );

/** What a sheet says that the home is. */
const verdictOf = (entries: JobEntries): unknown => {
  const [outcome] = workParts(planOf(ofThisHome(entries, exampleEntries)), rules).filter(
    ({ name }) => name === 'readiness',
  );
  return outcome?.state === 'answered' ? outcome.answer.figures.verdict?.value : outcome?.state;
};

const survey = exampleEntries.survey as Readonly<Record<string, string>>;
const answersInOrder = Object.entries(survey).map(([name, value]) => [`survey.${name}`, value] as const);
/** A home of its own, typed from nothing, of which only the survey is left to answer. */
const ownHome: JobEntries = {
  ...Object.fromEntries(Object.entries(exampleEntries).filter(([group]) => !ALL.includes(group))),
  name: '9 Elm Court',
  ...NONE_OF_EXAMPLE,
};
/** As an older copy kept it: how it was begun is not known. */
const { of_example: _, ...older } = exampleEntries;

test('the example names each of its own entries that tell of one home, and the fields have a place for each group', () => {
  const named = exampleEntries.of_example as Readonly<Record<string, string>>;
  const there = Object.fromEntries(
    ALL.map((group) => [group, Object.keys(exampleEntries[group] as object).join(' ')]),
  );
  expect(named).toEqual(there);
  expect(Object.keys(jobFields.of_example.of)).toEqual(expect.arrayContaining(ALL));
});

describe('what a job typed over the example still has of the example’s home', () => {
  test.each<[title: string, entries: JobEntries, still: readonly string[]]>([
    ['nothing to go, while it is that home', exampleWith({ 'fill.density': '1.6 lb/ft3' }), []],
    [
      'all that was seen, done and signed there, of another home',
      exampleWith({ 'home.length': '50 ft' }),
      ALL,
    ],
    ['the same of another cavity', exampleWith({ 'cavity.ridge': '14 in' }), ALL],
    ['the same at another address', exampleWith({ name: 'Next door, lot 8' }), ALL],
    ['nothing to go of a copy, as two tabs part', exampleWith({ name: '14 Larkspur Lane (copy)' }), []],
    [
      'nothing to go of a copy of the twelfth copy',
      exampleWith({ name: '14 Larkspur Lane (copy 12) (copy)' }),
      [],
    ],
    [
      'the same of a copy that was made another roof since',
      exampleWith({ name: '14 Larkspur Lane (copy)', 'home.length': '50 ft' }),
      ALL,
    ],
    [
      'the same at an address that only has such words in it',
      exampleWith({ name: '14 Larkspur Lane (copy) B' }),
      ALL,
    ],
    [
      'what a file was changed in by hand is its own',
      exampleWith({ name: 'x', 'log.openings': [], 'weather.index': '70 F' }),
      ['survey', 'machine', 'weather', 'receipt'],
    ],
    ['the same of a job of before, to the letter', { ...older, name: 'x' }, ALL],
    [
      'nothing of a group that a job of before has otherwise',
      withEntry({ ...older, name: 'x' }, ['survey', 'leaks'], 'found') as JobEntries,
      ['machine', 'weather', 'log', 'receipt'],
    ],
  ])('%s', (_, entries, still) => {
    expect(stillExamples(entries, exampleEntries)).toEqual(still);
  });
});

describe('a home is ready only once it was looked at itself', () => {
  const roofWorn = ['survey.roof_surface', 'worn'] as const;
  const another = ['name', 'Next door, lot 8'] as const;
  test.each<[title: string, entries: JobEntries, verdict: string]>([
    ['the example, with its own survey', exampleEntries, 'ready'],
    [
      'another home, with the example’s survey',
      exampleWith({ name: 'Next door, lot 8' }),
      'not looked at everywhere',
    ],
    ['another roof, with it', exampleWith({ 'home.length': '50 ft' }), 'not looked at everywhere'],
    ['another home of a job of before, with it', { ...older, name: 'x' }, 'not looked at everywhere'],
    [
      'one answer before the home, the others the example’s',
      typed(exampleEntries, roofWorn, another),
      'not looked at everywhere',
    ],
    [
      'one answer after the home, the others the example’s',
      typed(exampleEntries, another, roofWorn),
      'not looked at everywhere',
    ],
    [
      'every answer, each the same as the example’s, typed from nothing',
      typed(ownHome, ...answersInOrder),
      'ready',
    ],
    [
      'every answer entered over the example before the home',
      typed(exampleEntries, ...answersInOrder, another),
      'ready',
    ],
    [
      'every answer entered over the example after the home',
      typed(exampleEntries, another, ...answersInOrder),
      'ready',
    ],
  ])('%s', (_, entries, verdict) => {
    expect(verdictOf(entries)).toBe(verdict);
  });
});

describe('what is entered is the job’s own', () => {
  test('an answer given before the home is another stays, and the others go', () => {
    const entries = typed(exampleEntries, ['survey.roof_surface', 'worn'], ['name', 'Lot 8']);
    expect(entries.survey).toEqual({ roof_surface: 'worn' });
    expect(entries.log).toEqual({});
  });

  test('one figure of the machine does not keep the others', () => {
    const entries = typed(exampleEntries, ['machine.pressure', '0.2 in w.c.'], ['name', 'Lot 8']);
    expect(entries.machine).toEqual({ pressure: '0.2 in w.c.' });
  });

  test('nothing goes while it is the example’s home', () => {
    const { of_example, ...entries } = typed(exampleEntries, ['survey.pests', 'signs of them']);
    expect(entries).toEqual({ ...older, survey: { ...survey, pests: 'signs of them' } });
    expect((of_example as Record<string, string>).survey).not.toContain('pests');
  });

  describe('of a list, row by row', () => {
    const fills = exampleEntries.machine as { readonly fills: readonly Entries[] };
    const [first, second, third] = fills.fills as readonly [Entries, Entries, Entries];
    const own = { gross: '15.5 lb', tare: '9 lb' };
    const elsewhere = ['name', 'Lot 8'] as const;
    test.each<[title: string, keys: readonly (readonly [way: string, value: unknown])[], left: unknown]>([
      ['a row typed over', [['machine.fills.1.gross', '15.5 lb']], [{ ...second, gross: '15.5 lb' }]],
      [
        'a row typed over with what it said',
        [
          ['machine.fills.1.gross', '15.5 lb'],
          ['machine.fills.1.gross', second.gross],
        ],
        [second],
      ],
      ['a row more', [['machine.fills', [first, second, third, own]]], [own]],
      [
        'a row more before the others, one of them taken off, and one typed over',
        [
          ['machine.fills', [own, first, second, third]],
          ['machine.fills', [own, second, third]],
          ['machine.fills.2.tare', '9 lb'],
        ],
        [own, { ...third, tare: '9 lb' }],
      ],
      [
        'each row typed over',
        [
          ['machine.fills.0.tare', '9 lb'],
          ['machine.fills.1.tare', '9 lb'],
          ['machine.fills.2.tare', '9 lb'],
        ],
        [first, second, third].map((row) => ({ ...row, tare: '9 lb' })),
      ],
      ['none, where a row was taken off', [['machine.fills', [first, third]]], undefined],
      [
        'of two alike, the one typed over alone',
        [
          ['machine.fills', [first, second, third, first]],
          ['machine.fills.3.gross', first.gross],
        ],
        [first],
      ],
    ])('%s', (_, keys, left) => {
      expect((typed(exampleEntries, ...keys, elsewhere).machine as Entries).fills).toEqual(left);
    });

    test('after the home is another, all that is typed stays', () => {
      const entries = typed(exampleEntries, elsewhere, ['machine.fills', [first]]);
      expect(entries.machine).toEqual({ fills: [first] });
    });

    test('a job kept with a word for the whole list has rows of its own where they differ', () => {
      const changed = exampleWith({ name: 'Lot 8', 'machine.fills': [first, own] });
      expect((ofThisHome(changed, exampleEntries).machine as Entries).fills).toEqual([own]);
    });
  });

  test('a group that is emptied keeps nothing', () => {
    const entries = typed(exampleEntries, ['log', {}], ['name', 'Lot 8']);
    expect(entries.log).toEqual({});
    expect(stillExamples(entries, exampleEntries)).toEqual([]);
  });
});

describe('a copy, for another home', () => {
  const signed = exampleWith({
    'ceiling.engineer_load': '2.2 lb/ft2',
    'ceiling.engineer': 'R. Alder, engineer, 2026-11-02',
    line: { height: '20 ft' },
  });
  const { entries, left } = forAnotherHome(signed);

  test('has none of what was seen, done or signed at the first, and names it', () => {
    expect(left).toEqual([
      'the survey',
      'the machine’s figures',
      'the overhead line',
      'the heat of the day',
      'the fill log',
      'the receipt',
      'what an engineer wrote',
    ]);
    expect(Object.keys(entries).filter((group) => [...ALL, 'line'].includes(group))).toEqual([]);
    expect(entries.ceiling).toEqual(exampleEntries.ceiling);
    expect(verdictOf(entries)).toBe('not looked at everywhere');
  });

  test('has none of it under the name of a copy either, which makes no other home', () => {
    const named = ofThisHome({ ...entries, name: '14 Larkspur Lane (copy)' }, exampleEntries);
    expect(Object.keys(named).filter((group) => [...ALL, 'line'].includes(group))).toEqual([]);
    expect(verdictOf(named)).toBe('not looked at everywhere');
  });

  test('has all else as it was', () => {
    expect({ ...older, ...entries }).toEqual({ ...older, ...NONE_OF_EXAMPLE });
  });

  // A wood fibre panel has no published load: what an engineer wrote of the first ceiling says nothing of the second.
  test('holds again what an engineer’s letter of the first ceiling let pass', () => {
    const panel = { 'ceiling.board': 'wood-fibre panel' };
    const heldOf = (job: JobEntries) => planOf(job).load.verdict;
    const first = exampleWith({
      ...panel,
      'ceiling.engineer_load': '2.2 lb/ft2',
      'ceiling.engineer': 'R. Alder',
    });
    expect(heldOf(first)).toBe('carries it');
    expect(heldOf(forAnotherHome(first).entries)).not.toBe('carries it');
  });
});
