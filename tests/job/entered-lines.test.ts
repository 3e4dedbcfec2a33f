import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { enteredLines } from '../../src/job/entered-lines.ts';

/** Whatever stands at the ends of a file, found without knowing what it is of. */
const ends = (value: unknown): string[] =>
  value !== null && typeof value === 'object' ? Object.values(value).flatMap(ends) : [String(value)];

describe('what was typed into a job, as lines', () => {
  test('every entry of the example job is told, each as it was typed', () => {
    const { format, version, of_example, ...entries } = JSON.parse(
      readFileSync('public/example-job.json', 'utf8'),
    );
    const typed = ends(entries);
    const told = enteredLines({ ...entries, of_example }).flatMap((line) => line.split('; '));
    expect(typed.length).toBeGreaterThan(90);
    expect(typed.filter((each) => !told.some((line) => line.endsWith(` ${each}`)))).toEqual([]);
    expect(told.filter((line) => /[:?] /.test(line))).toHaveLength(typed.length);
  });

  test.each([
    ['nothing typed, nothing told', {}, []],
    ['a group with nothing in it has no heading', { home: { length: ' ' }, roof: { obstacles: [] } }, []],
    [
      'a row that was left empty keeps its place in the count',
      { roof: { obstacles: [{ along: '' }, { along: '3 ft' }] } },
      [
        'ENTERED',
        '  The roof, from above',
        '    Vents, flues and skylights',
        '      2: Place along the roof: 3 ft',
      ],
    ],
    ['what no form asks for is left out', { colour: 'green', home: { colour: 'red' } }, []],
    [
      'entries of another shape are left out',
      { name: ['a'], home: 'x', roof: { obstacles: { along: '1' } } },
      [],
    ],
    [
      'an entry of two lines is told in one',
      { name: 'Lot 4\nCEILING: carries it' },
      ['ENTERED', '  Job: Lot 4 CEILING: carries it'],
    ],
    [
      'a number of a file is told like a text',
      { home: { built: 1979 } },
      ['ENTERED', '  The home', '    Year built: 1979'],
    ],
  ])('%s', (_, entries, expected) => {
    expect(enteredLines(entries)).toEqual(expected);
  });
});
