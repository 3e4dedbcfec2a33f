import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { ofMarriageLine } from '../../src/job/over-the-line.ts';
import { marksPart } from '../../src/job/parts/marks.ts';
import { workPart } from '../../src/job/parts/part.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { inches, quantity } from '../../src/quantity/quantity.ts';
import { data, exampleWith, planOf, rules } from './entries.ts';

/** 12 in wide and 2 in kept clear: the ring is 16 in across, 8 in to each side of its middle. */
const flue = (side: string, from_peak: string, along = '29 ft') => ({
  what: 'furnace flue',
  along,
  side,
  from_peak,
  across: '12 in',
  listed: '2 in',
});

const double = (...obstacles: readonly ReturnType<typeof flue>[]) =>
  planOf(
    exampleWith({
      'home.sections': 'double',
      'cavity.shape': 'one-slope',
      'cavity.eave': '4 1/2 in',
      'roof.obstacles': obstacles,
      'survey.flues': 'all shielded',
    }),
  );

describe('a ring that reaches over the marriage line of a double home', () => {
  test.each([
    ['its middle 5 in from the line reaches 3 in over it', [flue('back', '5 in')], ['3 in']],
    // 8 in less 4.95 in are 3.05 in, told upwards: of a ring that is kept too small nobody is warned.
    [
      'its middle 4.95 in from the line reaches more than 3 in over it',
      [flue('back', '4.95 in')],
      ['3 1/8 in'],
    ],
    ['its middle at the line reaches 8 in over it', [flue('front', '0 in')], ['8 in']],
    ['its middle 8 in from the line touches it, and no more', [flue('back', '8 in')], []],
    ['its middle 6 ft from the line stays in its section', [flue('back', '6 ft')], []],
    ['entered for both sections, it is told to both', [flue('back', '5 in'), flue('front', '0 in')], []],
    [
      'one far along on the other side is another flue',
      [flue('back', '5 in'), flue('front', '6 ft', '50 ft')],
      ['3 in'],
    ],
    [
      'and so is one beside it that stays 6 ft from the line',
      [flue('back', '5 in'), flue('front', '6 ft')],
      ['3 in'],
    ],
  ] as const)('%s', (_, flues, over) => {
    const said = ofMarriageLine(double(...flues)).map(remarkText);
    expect(said.map((each) => / reaches (.*?) over the marriage line/.exec(each)?.[1])).toEqual([...over]);
  });

  test('names the side that it is to be entered for', () => {
    const side = (of: string) => ofMarriageLine(double(flue(of, '5 in'))).map(remarkText);
    expect(side('back')[0]).toContain('Enter it for the front side too');
    expect(side('front')[0]).toContain('Enter it for the back side too');
  });

  test('is told with both openings of the other section where it stands beside the border of their stretches', () => {
    const [, front] = double(flue('back', '5 in')).rows;
    const border = inches(front?.holes[0]?.to ?? quantity(0, 'in'));
    const plan = double(flue('back', '5 in', `${border} in`));
    const [, others] = plan.rows;
    // 8 in to either side of the border.
    for (const place of [0, 1]) {
      const hole = others?.holes[place];
      expect(hole && inches(hole.from) < border + 8 && inches(hole.to) > border - 8).toBe(true);
      expect(hole && ofMarriageLine(plan, { side: 'front', ...hole }).map(remarkText)).toEqual([
        expect.stringContaining('reaches 3 in over the marriage line'),
      ]);
    }
    const third = others?.holes[2];
    expect(third && ofMarriageLine(plan, { side: 'front', ...third })).toEqual([]);
  });

  test('is told on the sheet, and with the openings of the other section whose stretch it is beside', () => {
    const plan = double(flue('back', '5 in'));
    expect(plan.remarks.map(remarkText)).toEqual(
      expect.arrayContaining([expect.stringContaining('reaches 3 in over the marriage line')]),
    );
    expect(jobSheet(plan, data.cautions, rules)).toContain('over the marriage line');
    const told = workPart(marksPart, plan, rules).map((outcome) => [
      outcome.title,
      outcome.state === 'answered' &&
        outcome.answer.remarks.some((each) => remarkText(each).includes('over the marriage line')),
    ]);
    // The ring lies from 28 ft 4 in to 29 ft 8 in.
    const beside = plan.rows.flatMap(({ side, holes }) =>
      holes.map(({ from, to }) => {
        const feet = (q: typeof from) => (q.unit === 'in' ? q.amount / 12 : q.amount);
        return side === 'front' && feet(from) < 29 + 8 / 12 && feet(to) > 28 + 4 / 12;
      }),
    );
    expect(told.map(([, is]) => is)).toEqual(beside);
    expect(beside.filter(Boolean).length).toBeGreaterThan(0);
  });
});

test('a single home has no such line', () => {
  expect(ofMarriageLine(planOf(exampleWith({})))).toEqual([]);
  // Nor where a ring reaches over its far eave: 83 in from the peak to it, and 80 + 8 to the ring's edge.
  const atTheEave = exampleWith({ 'roof.obstacles': [flue('front', '6 ft 8 in')] });
  expect(ofMarriageLine(planOf(atTheEave))).toEqual([]);
});
