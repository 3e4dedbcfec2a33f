import { describe, expect, test } from 'vitest';
import type { JobEntries } from '../../src/job/job-file.ts';
import { beforeParts } from '../../src/job/parts/before.ts';
import { workPart } from '../../src/job/parts/part.ts';
import { readyEarly } from '../../src/job/parts/ready-early.ts';
import { exampleEntries, exampleWith, planOf, rules } from './entries.ts';

const verdict = (entries: JobEntries): unknown => {
  const outcome = readyEarly(entries, rules);
  return outcome?.state === 'answered' ? outcome.answer.figures.verdict?.value : outcome;
};

describe('a home is told not ready before anything of it is measured', () => {
  test.each<[string, JobEntries, string]>([
    ['nothing answered', {}, 'not looked at everywhere'],
    ['leaks', { survey: { leaks: 'leaks found' } }, 'not ready'],
    [
      'an answer that no list holds counts as none',
      { survey: { leaks: 'some' } },
      'not looked at everywhere',
    ],
    [
      'leaks, beside an answer that no list holds and a year that is none',
      { survey: { leaks: 'leaks found', pests: 'some' }, home: { built: 'old' } },
      'not ready',
    ],
    ['holes in a roof that nobody goes on', { survey: { roof_carries: 'nobody goes on it' } }, 'not ready'],
    [
      'such a roof, and no hole in it',
      { survey: { roof_carries: 'nobody goes on it' }, ways: { chosen: 'gable end' } },
      'not looked at everywhere',
    ],
    [
      'a flue that is half entered',
      { roof: { obstacles: [{ what: 'furnace flue' }] } },
      'not looked at everywhere',
    ],
    [
      'lights that cellulose would touch',
      { survey: { lights: 'all rated for contact' }, fill: { material: 'cellulose' } },
      'not ready',
    ],
    ['the example’s survey', exampleEntries, 'ready'],
  ])('%s', (_, entries, expected) => {
    expect(verdict(entries)).toBe(expected);
  });
});

test.each<[string, JobEntries]>([
  ['the example', exampleEntries],
  ['leaks', exampleWith({ 'survey.leaks': 'leaks found' })],
])('it is what the plan tells once there is one: %s', (_, entries) => {
  const [ready] = beforeParts.flatMap((each) => workPart(each, planOf(entries), rules));
  const early = readyEarly(entries, rules);
  if (ready?.state !== 'answered' || early?.state !== 'answered') throw new Error('found no answer');
  const { figures, cautions, remarks } = ready.answer;
  expect(early.answer).toMatchObject({ cautions, remarks });
  expect(early.answer.figures.verdict).toEqual(figures.verdict);
});
