import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import { exampleWith, planOf, rules } from './entries.ts';

/** A double-section home with one edge lifted, of whichever section; what stands on its roof is given. */
const lifted = (obstacles: readonly Record<string, string>[]) => {
  const plan = planOf(
    exampleWith({
      'home.sections': 'double',
      'cavity.shape': 'one-slope',
      'cavity.eave': '4 1/2 in',
      'ways.chosen': 'lifted roof edge',
      'ways.edges': 'one edge',
      'hose.tube': '2 in',
      'roof.obstacles': obstacles,
      'survey.flues': obstacles.length > 0 ? 'all shielded' : 'none',
    }),
  );
  const [bays] = workParts(plan, rules, true).filter(({ name }) => name === 'edge-bays');
  if (bays?.state !== 'answered') throw new Error(`found bays that are ${bays?.state}, expected an answer`);
  return bays.answer;
};
const flue = (side: string) => ({
  what: 'furnace flue',
  along: '29 ft',
  side,
  from_peak: '6 ft',
  across: '12 in',
  listed: '2 in',
});
/** How far the tube goes into the bay from 28 to 30 ft, in inches. */
const tube = ({ tables }: ReturnType<typeof lifted>): number =>
  amountIn(tables?.bays?.rows[14]?.pushed_back as Quantity<'length'>, 'in');

describe('of a double-section home one edge is lifted, and nobody enters of which section', () => {
  // The flue stands 166 − 72 = 94 in from the eave: less half of 12 in, the 2 in of its listing, and half of the tube of 2 in.
  test.each(['back', 'front'])('a flue of the %s section stops the tube before its ring', (side) => {
    const answer = lifted([flue(side)]);
    expect(tube(answer)).toBeCloseTo(94 - 6 - 2 - 1, 6);
    expect(answer.cautions).toContain('caution.hose.flue-ahead');
    expect(answer.remarks.map(remarkText).join(' ')).toContain(`furnace flue at 29 ft, ${side} section`);
  });

  test('with nothing on either section the tube goes to the marriage line, and nothing is said of sections', () => {
    const answer = lifted([]);
    expect(tube(answer)).toBeCloseTo(166, 6);
    expect(answer.remarks.map(remarkText).join(' ')).not.toContain('either section');
  });
});
