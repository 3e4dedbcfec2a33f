import { readFileSync } from 'node:fs';
import { Ajv2020, type ErrorObject } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withEntry } from '../../src/calc/declare/entries.ts';
import { JOB_VERSION, readJobFile, writeJobFile } from '../../src/job/job-file.ts';
import { readJobs } from '../../src/job/jobs-file.ts';
import { jobSchema, jobsSchema } from '../../src/job/json-schema.ts';
import { builtJob, sillyJob } from './any-job.ts';
import { exampleText } from './entries.ts';

/** The validator is another's; strict, so that a word of the schema that means nothing is a mistake too. */
const validate = new Ajv2020({
  strict: true,
  // A year is a number, or its digits as a form keeps them.
  allowUnionTypes: true,
  allErrors: true,
  formats: { date: /^\d{4}-\d{2}-\d{2}$/ },
}).compile(jobSchema());

const complaints = (value: unknown): readonly ErrorObject[] =>
  validate(value) ? [] : (validate.errors ?? []);
const reads = (value: unknown): boolean => readJobFile(JSON.stringify(value)).ok;

const example = JSON.parse(exampleText) as Record<string, unknown>;

type Way = readonly string[];

/** The ways to every value in some entries, groups and lists among them, in order. */
const waysIn = (value: unknown, way: Way = []): Way[] =>
  value !== null && typeof value === 'object'
    ? [
        ...(way.length > 0 ? [way] : []),
        ...Object.entries(value).flatMap(([key, each]) => waysIn(each, [...way, key])),
      ]
    : [way];

const at = (value: unknown, way: Way): unknown =>
  way.reduce<unknown>((each, key) => (each as Record<string, unknown> | undefined)?.[key], value);

function without(value: unknown, way: Way): unknown {
  const [key, ...rest] = way;
  if (key === undefined) return undefined;
  if (rest.length > 0) return withEntry(value, [key], without(at(value, [key]), rest));
  return Object.fromEntries(Object.entries(value as object).filter(([name]) => name !== key));
}

const inList = (way: Way): boolean => /^\d+$/.test(way.at(-1) ?? '');
const shown = (way: Way): string => way.join('.');
const ways = waysIn(example);

/** Everything of the plan that the example job has and a job may leave out. */
const leftOut: readonly string[] = [
  'agency',
  'crew',
  'cavity.eave',
  'cavity.ridge',
  'roof.truss_spacing',
  'roof.first_truss',
  'roof.seam_spacing',
  'roof.first_seam',
  'roof.obstacles',
  'roof.obstacles.1.kind',
  'old',
  'old.depth',
  'log',
  'log.openings',
];

/** What the plan rests on; every other group is asked by parts of the job that wait while they lack an entry. */
const ofThePlan = [
  'format',
  'version',
  'name',
  'agency',
  'crew',
  'home',
  'cavity',
  'roof',
  'ceiling',
  'old',
  'fill',
  'log',
];

/** What an entry of a list can't do without, in the groups that may be left out. */
const neededInLists: readonly RegExp[] = [
  /^machine\.fills\.\d+\.(gross|tare)$/,
  /^air\.rooms\.\d+\.room$/,
  /^air\.ducts\.\d+\.(flow|size|kind|elbows)$/,
  /^noise\.periods\.\d+\.(level|time)$/,
];

const mayBeLeftOut = (name: string): boolean =>
  ofThePlan.includes(name.split('.')[0] ?? '')
    ? leftOut.includes(name)
    : !neededInLists.some((each) => each.test(name));

describe('the schema of a job file', () => {
  test('accepts the example job', () => {
    expect(complaints(example)).toEqual([]);
  });

  test('accepts a year and a count as a form keeps them, in digits', () => {
    const typed = withEntry(withEntry(example, ['home', 'built'], '1979'), ['air', 'bedrooms'], ' 3 ');
    expect(complaints(typed)).toEqual([]);
    expect(reads(typed)).toBe(true);
  });

  test.each([
    { kind: 'homes as they are built', jobs: builtJob },
    { kind: 'homes as odd as the fields allow', jobs: sillyJob },
  ])('accepts whatever is read of $kind', ({ jobs }) => {
    fc.assert(
      fc.property(jobs, (entries) => {
        const file = JSON.parse(writeJobFile(entries));
        fc.pre(reads(file));
        expect(complaints(file)).toEqual([]);
      }),
    );
  });

  const mayGo = ways.filter((way) => !inList(way)).map((way) => [shown(way), way] as const);
  test.each(mayGo)('says of %s whether it may be left out as the reader of files does', (name, way) => {
    const file = without(example, way);
    const found = complaints(file);
    expect(reads(file)).toBe(found.length === 0);
    expect(found.length === 0).toBe(mayBeLeftOut(name));
    if (found.length > 0) {
      expect(found[0]).toMatchObject({ keyword: 'required', params: { missingProperty: way.at(-1) } });
    }
  });

  const groups = [
    [],
    ...ways.filter((way) => typeof at(example, way) === 'object' && !Array.isArray(at(example, way))),
  ];
  test.each(groups.map((way) => [shown([...way, 'colour']), way] as const))(
    'refuses the unknown key %s, as the reader does',
    (_, way) => {
      const file = withEntry(example, [...way, 'colour'], 'blue');
      expect(complaints(file)).toMatchObject([
        { keyword: 'additionalProperties', params: { additionalProperty: 'colour' } },
      ]);
      expect(reads(file)).toBe(false);
    },
  );

  const wrong: readonly [what: string, value: unknown][] = [
    ['yes or no', true],
    ['a number', 7.5],
    ['a list of lists', [[]]],
    ['a set of other entries', { other: 'x' }],
    ['nothing said', null],
  ];
  test.each(wrong)('refuses %s in the place of any entry', (_, value) => {
    for (const way of ways) {
      const file = withEntry(example, way, value);
      expect(complaints(file).length, shown(way)).toBeGreaterThan(0);
      // A file may say in so many words that nothing is said where nothing need be; the schema is the stricter.
      if (value !== null) expect(reads(file), shown(way)).toBe(false);
    }
  });

  test.each([
    ['another format', 'format', 'a job'],
    ['a later version', 'version', 4],
    ['a version in quotes', 'version', '3'],
    ['an id that is none', 'id', 'My job'],
    ['a time that is none', 'changed', 'yesterday'],
    ['a year before there were such homes', 'home.built', 1899],
    ['a year far off', 'home.built', 2051],
    ['half a year', 'home.built', 1979.5],
    ['a choice that is none', 'home.sections', 'triple'],
    [
      'more vents than a roof has',
      'roof.obstacles',
      Array.from({ length: 41 }, () => at(example, ['roof', 'obstacles', '0'])),
    ],
    ['a name without end', 'name', 'x'.repeat(201)],
  ])('refuses %s, as the reader does', (_, name, value) => {
    const file = withEntry(example, name.split('.'), value);
    expect(complaints(file)).toHaveLength(1);
    expect(reads(file)).toBe(false);
  });

  test.each([[], 'a job', 7, null])('refuses %j in the place of a whole job', (value) => {
    expect(complaints(value)).toHaveLength(1);
    expect(reads(value)).toBe(false);
  });
});

describe('the schema of a file of all jobs', () => {
  const validateAll = new Ajv2020({
    strict: true,
    allowUnionTypes: true,
    allErrors: true,
  }).compile(jobsSchema());
  const older = JSON.parse(readFileSync('tests/job/fixtures/jobs-1/two-jobs.json', 'utf8'));
  // The schema tells what is written now.
  const kept = { ...older, jobs: older.jobs.map((job: object) => ({ ...job, version: JOB_VERSION })) };
  const [first, second] = kept.jobs;

  test('accepts one that was kept, with a half-typed job in it', () => {
    expect(validateAll(kept)).toBe(true);
  });

  test.each([
    ['another format', { ...kept, format: 'jobs' }],
    ['a later version', { ...kept, version: 2 }],
    ['no list', { ...kept, jobs: {} }],
    ['a job with an unknown key', { ...kept, jobs: [{ ...first, colour: 'blue' }, second] }],
    ['a job with an id that is none', { ...kept, jobs: [first, { ...second, id: 'x' }] }],
    ['a text in the place of a group', { ...kept, jobs: [{ ...first, home: 'here' }] }],
  ])('refuses %s, as the reader does', (_, file) => {
    expect(validateAll(file)).toBe(false);
    const read = readJobs(JSON.stringify(file));
    expect(read.ok && read.value.refused.length === 0).toBe(false);
  });
});
