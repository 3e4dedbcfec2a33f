import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { heldBy } from '../../src/job/cautions.ts';
import { ofUntoldFlues } from '../../src/job/hot-flues.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { settling } from '../../src/job/settling.ts';
import { exampleWith, planOf, rules } from './entries.ts';

const flueWith = (more: Readonly<Record<string, string>>) => ({
  what: 'furnace flue',
  along: '46 ft 6 in',
  side: 'back',
  from_peak: '2 ft',
  across: '12 in',
  ...more,
});
const vent = flueWith({ what: 'plumbing vent', along: '4 ft' });

/** Which flue is told of one whose kind nobody read, and which hold the plan: one whose label gave its kind, or its listing, is known. */
describe('a flue of which nobody read what it is', () => {
  test.each<[title: string, flue: Readonly<Record<string, string>>, known: boolean]>([
    ['whose kind and listing are empty', flueWith({}), false],
    ['that is another hot one', flueWith({ what: 'other hot flue' }), false],
    [
      'whose listing is 0, which nobody may go by before its kind is known',
      flueWith({ listed: '0 in' }),
      false,
    ],
    ['whose kind was entered', flueWith({ kind: 'masonry chimney' }), true],
    ['whose listing was entered, so that its label was read', flueWith({ listed: '1 in' }), true],
    ['that is no hot one', vent, true],
  ])('one %s', (_, flue, known) => {
    const plan = planOf(
      exampleWith({ 'roof.obstacles': [flueWith({ along: '20 ft', kind: 'masonry chimney' }), flue] }),
    );
    const said = ofUntoldFlues(plan.job).map(remarkText);
    expect(said).toEqual(
      known
        ? []
        : [
            expect.stringMatching(
              /^Nobody said of what kind the .* flue at 46 ft 6 in is: .* listed double-wall/,
            ),
          ],
    );
    expect(plan.remarks.map(remarkText)).toEqual(expect.arrayContaining(said));
    expect(heldBy(plan).map(({ id }) => id)).toEqual(known ? [] : ['caution.flue.kind-unknown']);
    expect(plan.readiness.verdict).toBe(known ? 'ready' : 'not ready');
  });

  test('holds the plan until its kind is entered, and leads to that entry', () => {
    const plan = planOf(exampleWith({ 'roof.obstacles': [vent, flueWith({})] }));
    expect(settling(plan, rules)).toEqual([
      {
        id: 'caution.flue.kind-unknown',
        entries: [{ field: 'roof.obstacles.1.kind', label: 'Kind of flue (vent, flue or skylight 2)' }],
      },
    ]);
    // The sheet of the survey tells the same.
    const [outcome] = workParts(plan, rules).filter(({ name }) => name === 'readiness');
    const { verdict, stops } = (outcome?.state === 'answered' && outcome.answer.figures) || {};
    expect([verdict?.value, stops?.value]).toEqual(['not ready', expect.objectContaining({ amount: 1 })]);
  });
});
