import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WorkedJob } from '../../src/job/planned.ts';
import { builtJob, sillyJob } from '../job/any-job.ts';
import { exampleEntries, planOf, rules, workEntries } from '../job/entries.ts';
import { jobs, sheetsOf } from './sheets.ts';
import { type Element, everyElement, wordsOf } from './xml.ts';

/** Attributes that name another element of the same drawing. */
const namesIn = ({ attributes }: Element): string[] => [
  ...Object.values(attributes).flatMap((value) =>
    [...value.matchAll(/url\(#([^)]*)\)/g)].map(([, id = '']) => id),
  ),
  ...['aria-labelledby', 'aria-describedby'].flatMap((name) => attributes[name]?.split(' ') ?? []),
  ...['href', 'xlink:href'].flatMap((name) => attributes[name]?.replace(/^#/, '') ?? []),
];

const NUMBERS = [
  'x',
  'y',
  'x1',
  'y1',
  'x2',
  'y2',
  'cx',
  'cy',
  'r',
  'width',
  'height',
  'font-size',
  'stroke-width',
];
const NUMBER = '-?\\d+(?:\\.\\d+)?(?:e-?\\d+)?';
const PATH = new RegExp(`^(?:[ML]${NUMBER} ${NUMBER})+Z?$`);

/** Everything that is wrong with the drawings of one page, each in a line. An empty list is a page of sound drawings. */
function wrongWith(plan: WorkedJob): string[] {
  const sheets = sheetsOf(plan, rules);
  const ids = sheets.flatMap(everyElement).flatMap(({ attributes }) => attributes.id ?? []);
  const twice = ids.filter((id, place) => ids.indexOf(id) !== place);
  return [
    ...twice.map((id) => `the id ${id} twice on a page`),
    ...sheets.flatMap((root) => {
      const all = everyElement(root);
      const own = all.flatMap(({ attributes }) => attributes.id ?? []);
      const [title, description] = root.children as Element[];
      return [
        ...all.flatMap(namesIn).flatMap((id) => (own.includes(id) ? [] : [`${id}, which is not there`])),
        ...(title?.name === 'title' && wordsOf(title) !== '' ? [] : ['no title']),
        ...(description?.name === 'desc' && wordsOf(description) !== '' ? [] : ['no description']),
        ...all.flatMap(numbersWrong),
        ...(/\b(?:NaN|undefined|Infinity|null|object Object)\b/.test(
          [wordsOf(root), ...all.flatMap(({ attributes }) => Object.values(attributes))].join(' '),
        )
          ? ['a figure that is none']
          : []),
      ];
    }),
  ];
}

function numbersWrong({ name, attributes }: Element): string[] {
  const numbers = NUMBERS.flatMap((key) => {
    const value = attributes[key];
    const sound = value === undefined || Number.isFinite(Number.parseFloat(value));
    const negative = ['r', 'width', 'height'].includes(key) && Number.parseFloat(value ?? '0') < 0;
    return sound && !negative ? [] : [`${key} of ${value} in ${name}`];
  });
  const path = name !== 'path' || PATH.test(attributes.d ?? '');
  return path ? numbers : [...numbers, `the path ${attributes.d}`];
}

describe('every drawing is sound XML, named, described, with ids of its own that all lead somewhere', () => {
  test.each(jobs)('%s', (_, entries) => {
    expect(wrongWith(planOf(entries))).toEqual([]);
  });

  test.each([
    { kind: 'homes as they are built', jobs: builtJob, least: 60 },
    { kind: 'homes as odd as the fields allow', jobs: sillyJob, least: 5 },
  ])('$kind', ({ jobs: any, least }) => {
    let drawn = 0;
    fc.assert(
      fc.property(any, (entries) => {
        const read = workEntries(entries);
        if (!read.ok) return;
        drawn += 1;
        expect(wrongWith(read.value)).toEqual([]);
      }),
      { numRuns: least === 5 ? 300 : 100 },
    );
    expect(drawn).toBeGreaterThan(least);
  });

  test('a job whose name would be markup', () => {
    const name = '</title><script>alert(1)</script>"&';
    const plan = planOf({ ...exampleEntries, name, agency: name, crew: name });
    expect(wrongWith(plan)).toEqual([]);
    expect(
      sheetsOf(plan, rules)
        .flatMap(everyElement)
        .map((each) => each.name),
    ).not.toContain('script');
  });
});
