import { describe, expect, test } from 'vitest';
import type { Field, Fields } from '../../src/calc/declare/field.ts';
import { jobFields } from '../../src/job/job-fields.ts';
import { asksFor, workPart } from '../../src/job/parts/part.ts';
import { jobParts } from '../../src/job/parts/parts.ts';
import { type Entries, fieldsFrom, type Leaf, leadsSomewhere, withAt } from '../calc/every/entries.ts';
import { exampleWith, rules, told, workEntries } from './entries.ts';

/** Every field with the value that it gives as its example; of a choice the first. */
const filled = (fields: Fields): Entries =>
  Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, exampleOf(field)]));
const exampleOf = (field: Field): unknown => {
  if (field.kind === 'group') return filled(field.of);
  if (field.kind === 'list') return [filled(field.of)];
  return field.kind === 'choice' ? field.choices[0] : field.example;
};

const light = {
  kind: 'light, not rated for contact',
  along: '4 ft',
  side: 'back',
  from_eave: '4 ft',
  across: '7 in',
};
const connector = {
  what: 'furnace flue',
  along: '9 ft',
  side: 'back',
  from_peak: '4 ft',
  across: '6 in',
  kind: 'connector, solid fuel',
  listed: '18 in',
};
/** A home of few holes, so that the walk takes no minutes. */
const short = { 'home.length': '24 ft', 'roof.obstacles': [], 'survey.flues': 'none', 'log.openings': [] };
const withAll = (entries: Entries, changes: Readonly<Record<string, unknown>>): Entries =>
  Object.entries(changes).reduce((all, [way, value]) => withAt(all, way.split('.'), value), entries);
const bare = exampleWith(short);
/** All groups filled in, of which the plan’s own are the example’s. */
const full = withAll(
  { ...filled(jobFields), ...bare },
  {
    'roof.obstacles': [connector],
    'roof.trusses_measured': [{ at: '2 ft' }, { at: '4 ft' }],
    'survey.flues': 'all shielded',
    'survey.lights': 'not rated, held clear',
    'ceiling.lights': [light],
  },
);
const double = withAll(full, {
  'home.sections': 'double',
  'cavity.shape': 'one-slope',
  'ways.edges': 'both edges',
});

/** What no home has, though each is read: none, hardly any, and the most that the field takes. */
function oddFor({ field }: Leaf): readonly unknown[] {
  if (field.kind === 'choice') return field.choices;
  if (field.kind !== 'quantity') return [undefined, '1', '99', '1901'];
  const unit = field.beside ?? 'in';
  return [undefined, `0 ${unit}`, `0.001 ${unit}`, ...(field.most ? [field.most] : [`5000 ${unit}`])];
}

/** The fields that the problems of a job are told at: the plan’s own, and those of the parts that ask for an entry. */
function toldAt(entries: Entries, way: string): string[] {
  const plan = workEntries(entries);
  if (!plan.ok) return plan.problems.map(({ field }) => field);
  return jobParts
    .filter((each) => asksFor(each, way))
    .flatMap((each) => workPart(each, plan.value, rules))
    .flatMap((each) => (each.state === 'wrong' ? [each.problem.field] : []));
}

describe('whatever clashes is told at a field of the job, so that a box is marked', () => {
  test.each([
    ['a bare roof', bare],
    ['all groups filled in', full],
    ['a double-section home', double],
  ])('%s, one entry at a time', (_, entries) => {
    expect(told(entries)).toEqual([]);
    const found = fieldsFrom(jobFields, entries).flatMap((leaf) =>
      oddFor(leaf).flatMap((value) =>
        toldAt(withAt(entries, leaf.way, value), leaf.way.join('.'))
          .filter((field) => !leadsSomewhere(jobFields, field.split('.')))
          .map((field) => `${leaf.way.join('.')}: ${value} is told at ${field}`),
      ),
    );
    expect(found).toEqual([]);
  });

  /** The vent comes before the flue on the roof, and the flue before the light where both are hot: neither place counts. */
  test.each([
    [
      'a connector listed for contact',
      { 'roof.obstacles.1.kind': 'connector, solid fuel', 'roof.obstacles.1.listed': '0 in' },
      'roof.obstacles.1.listed',
    ],
    [
      'a roof shorter than a hole',
      { 'home.length': '5 in', 'roof.obstacles': [], 'survey.flues': 'none' },
      'home.length',
    ],
    ['a vent beyond the end of the roof', { 'roof.obstacles.0.along': '67 ft' }, 'roof.obstacles.0.along'],
    [
      'a light beyond the end of the roof',
      {
        'survey.lights': 'all rated for contact',
        'ceiling.lights': [{ ...light, kind: 'light, rated for contact and airtight', along: '67 ft' }],
      },
      'ceiling.lights.0.along',
    ],
  ])('%s', (_, changes, field) => {
    expect(told(exampleWith(changes))).toEqual([expect.stringContaining(`(${field}): `)]);
  });
});
