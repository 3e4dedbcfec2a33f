import { describe, expect, test } from 'vitest';
import { openingAcross } from '../../src/calc/cavity/opening.ts';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { saidOfMarks } from '../../src/job/parts/marked-openings.ts';
import { roomOnPushes } from '../../src/job/room-on-pushes.ts';
import { exampleWith, planOf, rules } from './entries.ts';

const bare = { 'hose.stand_off': '6 in' };
/** The fill presses the old insulation no lower. */
const asDeep = { 'heat.pressed_depth': '3 in' };
const slopes = (eave: string, ridge: string) => ({
  cavity: { shape: 'two-slope', width: '14 ft', eave, ridge },
});

function said(changes: Readonly<Record<string, unknown>>): string[] {
  const plan = planOf(exampleWith({ ...bare, ...changes }));
  const double = plan.rows.length > 1;
  const across = openingAcross(plan.section, rules, double ? plan.section.width : undefined);
  return roomOnPushes(plan, across, rules).map(remarkText);
}

/**
 * By hand, in inches; the hose is 2 wide, the chords 1.5 high, the tip stops 6 from the eave. Two slopes over 168 rise to 84.
 * From 0 to 12 the depth is 1/7 of the place. Over 3 of old insulation 2 + 3 = 5 stand at 35; across a truss 2 + 1.5 + 3 = 6.5 at 45.5.
 */
describe('where the hose of an opening has no room, nearer to an eave than its mark sends it', () => {
  test('is told for both eaves at once where they are alike, between trusses and across them', () => {
    const [between = '', across = '', ...more] = said({
      ...slopes('0 in', '12 in'),
      'old.depth': '3 in',
      ...asDeep,
    });
    expect(more).toEqual([]);
    expect(between).toMatch(/^Nearer than 2 ft 11 in to either eave the hose, 2 in wide, has no room over/);
    expect(across).toMatch(/^Across a truss the hose, 2 in wide, .* no nearer than 3 ft 9 1\/2 in to either/);
  });

  test('stands beside the marks of every opening', () => {
    const plan = planOf(
      exampleWith({
        ...bare,
        ...slopes('0 in', '12 in'),
        'old.depth': '3 in',
        ...asDeep,
        'roof.obstacles': [],
        'survey.flues': 'none',
      }),
    );
    const beside = saidOfMarks(plan, rules).map((remarks) => remarks.map(remarkText));
    expect(beside.length).toBe(plan.rows[0]?.holes.length);
    for (const [between, across] of beside) {
      expect(between).toMatch(/^Nearer than 2 ft 11 in to either eave/);
      expect(across).toMatch(/^Across a truss the hose/);
    }
  });

  // 9 in at the eave are more than 6.5.
  test('is told of nothing where the cavity is deep to the tip', () =>
    expect(said({ ...slopes('9 in', '16 in'), 'old.depth': '3 in', ...asDeep })).toEqual([]));

  // 15 deep at 108 from the back eave and at 60 from the front one, 3 at both: 12/108 and 12/60 up an inch; 6.5 at 31.5 and at 17.5.
  test('is told for each eave by itself where they differ', () => {
    const points = [
      { from_eave: '0 in', depth: '3 in' },
      { from_eave: '9 ft', depth: '15 in' },
      { from_eave: '14 ft', depth: '3 in' },
    ];
    const found = said({
      cavity: { shape: 'measured', width: '14 ft', points },
      'old.depth': '3 in',
      ...asDeep,
    });
    expect(found.filter((each) => each.startsWith('Across a truss'))).toEqual([
      expect.stringMatching(/no nearer than 2 ft 7 1\/2 in to the eave on the back side/),
      expect.stringMatching(/no nearer than 1 ft 5 1\/2 in to the eave on the front side/),
    ]);
  });

  // One slope over 168 rises by 1/14 of the place: 5 stand at 70, 6.5 at 91. At the marriage line it is deep.
  test('of a section of a double home is told for its one eave', () =>
    expect(
      said({
        'home.sections': 'double',
        cavity: { shape: 'one-slope', width: '14 ft', eave: '0 in', ridge: '12 in' },
        'old.depth': '3 in',
        ...asDeep,
      }),
    ).toEqual([
      expect.stringMatching(/^Nearer than 5 ft 10 in to the eave the hose, 2 in wide, has no room over/),
      expect.stringMatching(/^Across a truss .* no nearer than 7 ft 7 in to the eave: /),
    ]));

  // The tip stops 36 from the eave, which the room between trusses comes up to at 35, and that across a truss at 45.5.
  test('is told of what lies before the tip alone', () =>
    expect(
      said({
        ...slopes('0 in', '12 in'),
        'old.depth': '3 in',
        'hose.stream_reach': '4 ft',
        'hose.stand_off': '3 ft',
        ...asDeep,
      }),
    ).toEqual([expect.stringMatching(/^Across a truss .* no nearer than 3 ft 9 1\/2 in to either/)]));

  const low = (from_eave: string) => ({ from_eave, depth: '4 in' });
  const deep = (from_eave: string, depth = '12 in') => ({ from_eave, depth });
  test.each([
    {
      title: 'a low place lies between the opening and an eave that has room',
      // 4 deep at 36, 15 at 72: 11/36 up an inch, so 5 stand at 39.27, which a tape shows as 39 3/8. On the way out the roof rises again.
      points: [deep('0 in'), low('3 ft'), deep('6 ft', '15 in'), deep('14 ft')],
      begins: '3 ft 3 3/8 in',
    },
    {
      title: 'the first of two low places begins, on the way from the opening',
      // 4 deep at 48, 15 at 84: 11/36 up an inch, so 5 stand at 51.27. Nearer to the eave there is room again, and none again at 12.
      points: [
        deep('0 in'),
        low('12 in'),
        deep('24 in'),
        low('48 in'),
        deep('84 in', '15 in'),
        deep('14 ft'),
      ],
      begins: '4 ft 3 3/8 in',
    },
  ])('is told where $title', ({ points, begins }) => {
    const [between] = said({
      cavity: { shape: 'measured', width: '14 ft', points },
      'roof.obstacles': [],
      'survey.flues': 'none',
      'old.depth': '3 in',
      ...asDeep,
    });
    expect(between).toContain(
      `Nearer than ${begins} to the eave on the back side the hose, 2 in wide, has no`,
    );
  });

  // 16 down from the peak, 68 across: 68/7 = 9.7 deep at most 12; over 9 of old insulation 0.7 is left.
  test('is told at the opening itself where not even that has room', () =>
    expect(said({ ...slopes('0 in', '12 in'), 'old.depth': '9 in', 'heat.pressed_depth': '9 in' })).toEqual([
      expect.stringMatching(
        /^At the opening itself the hose, 2 in wide, has no room over the old insulation/,
      ),
      expect.stringMatching(
        /^Across a truss the hose, 2 in wide, has no room between the chords, not even at/,
      ),
    ]));
});
