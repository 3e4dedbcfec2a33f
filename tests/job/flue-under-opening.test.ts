import { expect, test } from 'vitest';
import { marksPart } from '../../src/job/parts/marks.ts';
import { type PartOutcome, workPart } from '../../src/job/parts/part.ts';
import { exampleWith, planOf, rules } from './entries.ts';

/** The openings of the example lie 5 ft 7 in from their eave; the third 32 ft 5 in along. */
const light = {
  kind: 'light, not rated for contact',
  along: '32 ft 5 in',
  side: 'back',
  from_eave: '5 ft 7 in',
  across: '7 in',
};

const held = { 'survey.lights': 'not rated, held clear' };
const cards = (changes: Readonly<Record<string, unknown>>): readonly PartOutcome[] =>
  workPart(marksPart, planOf(exampleWith(changes)), rules);
const states = (all: readonly PartOutcome[]) => all.map(({ state }) => state);

test('an opening over a light has no marks, and says so at the light; the others keep theirs', () => {
  const all = cards({ ...held, 'ceiling.lights': [{ ...light, along: '4 ft' }, light] });
  expect(states(all)).toEqual(['answered', 'answered', 'wrong', 'answered', 'answered']);
  expect(all[2]?.title).toBe('Opening 3');
  expect(all[2]?.state === 'wrong' && all[2].problem).toEqual({
    field: 'ceiling.lights.1.along',
    label: 'Place along the roof (recessed light 2)',
    found: 'the opening inside the ring kept open about it',
    expected: 'a place clear of the opening',
  });
});

test('the flue behind which another opening blows is told of still', () => {
  const before = cards({});
  const after = cards({ ...held, 'ceiling.lights': [light] });
  const remarks = (each: PartOutcome | undefined) => each?.state === 'answered' && each.answer.remarks;
  for (const place of [3, 4]) expect(remarks(after[place])).toEqual(remarks(before[place]));
});
