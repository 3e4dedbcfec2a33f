import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { cautionSentence } from '../../src/job/caution-sentence.ts';
import type { WorkedJob } from '../../src/job/planned.ts';
import { jobSheet } from '../../src/job/sheet.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { data, exampleEntries, exampleFlue, exampleWith, planOf, rules } from './entries.ts';

type Placed = WorkedJob['cautions'][number];

const placed = (plan: WorkedJob) => plan.cautions.map(({ id, at }) => `${at}: ${id}`);

/** Two skylights of 10 ft, one after the other: 20 ft without a hole, where holes may be 16 ft apart at the most. */
const skylights = ['25 ft', '35 ft'].map((along) => ({
  what: 'skylight',
  along,
  side: 'back',
  from_peak: '1 ft 6 in',
  across: '10 ft',
}));

describe('what is entered calls for its caution, at its place', () => {
  test.each<[what: string, changes: Record<string, unknown>, at: Placed['at'], id: Placed['id']]>([
    ['ducts overhead, all tight', { 'survey.ducts': 'all tight' }, 'fill', 'caution.ducts.pressed'],
    ['no truss told', { 'roof.truss_spacing': '' }, 'layout', 'caution.layout.trusses-unknown'],
    [
      'skylights longer than the spacing of holes',
      { 'roof.obstacles': [...skylights, exampleFlue] },
      'layout',
      'caution.layout.departs',
    ],
    [
      'skylights from end to end, which leave no room for a hole',
      {
        'roof.obstacles': ['5 ft', '15 ft', '25 ft', '35 ft', '45 ft', '55 ft', '65 ft'].map((along) => ({
          ...skylights[0],
          along,
        })),
        'survey.flues': 'none',
        'log.openings': [],
      },
      'layout',
      'caution.layout.departs',
    ],
    [
      'a seam every 8 in, under patches of 10 in',
      { 'roof.seam_spacing': '8 in' },
      'layout',
      'caution.layout.over-seam',
    ],
    [
      'a metal roof without a seam',
      { 'roof.seam_spacing': undefined, 'roof.first_seam': undefined },
      'layout',
      'caution.layout.seams-unknown',
    ],
    [
      'trusses whose first is not told',
      { 'roof.first_truss': undefined },
      'layout',
      'caution.layout.trusses-unknown',
    ],
    [
      'a single-wall connector, entered after a listed flue',
      { 'roof.obstacles': [exampleFlue, { ...exampleFlue, along: '20 ft', kind: 'connector, oil' }] },
      'layout',
      'caution.flue.connector',
    ],
    [
      'a flue whose kind nobody read, entered after a listed one',
      {
        'roof.obstacles': [
          exampleFlue,
          { ...exampleFlue, along: '20 ft', kind: undefined, listed: undefined },
        ],
      },
      'before',
      'caution.flue.kind-unknown',
    ],
    [
      'a light that is not rated, entered beside a flue',
      {
        'survey.lights': 'not rated, held clear',
        'ceiling.lights': [
          {
            kind: 'light, not rated for contact',
            along: '12 ft',
            side: 'back',
            from_eave: '4 ft',
            across: '7 in',
          },
        ],
      },
      'layout',
      'caution.before.lights',
    ],
    ['a skylight', { 'roof.obstacles': [...skylights, exampleFlue] }, 'before', 'caution.roof.skylight'],
    ['pests not looked for', { 'survey.pests': undefined }, 'before', 'caution.before.not-looked'],
    [
      'wiring told as not looked at',
      { 'survey.wiring': 'not looked at' },
      'before',
      'caution.before.not-looked',
    ],
    ['signs of pests', { 'survey.pests': 'signs of them' }, 'before', 'caution.before.pests'],
    ['a home of 1977', { 'home.built': 1977 }, 'before', 'caution.before.old-paint'],
    [
      'both halves of a double-section home as one cavity',
      { 'cavity.width': '28 ft' },
      'fill',
      'caution.fill.wide-section',
    ],
    [
      'a board that no limit is known of',
      { 'ceiling.board': 'gypsum 3/8 in' },
      'ceiling',
      'caution.ceiling.unrated',
    ],
  ])('%s', (_, changes, at, id) => {
    expect(placed(planOf(exampleEntries))).not.toContain(`${at}: ${id}`);
    expect(placed(planOf(exampleWith(changes)))).toContain(`${at}: ${id}`);
  });

  test('no caution stands twice at one place', () => {
    const all = placed(
      planOf(exampleWith({ 'roof.obstacles': [exampleFlue, { ...exampleFlue, along: '20 ft' }] })),
    );
    expect(all).toEqual([...new Set(all)]);
  });
});

test.each([
  'caution.before.seal-first',
  'caution.roof.carries-crew',
  'caution.roof.falls',
  'caution.before.wear',
])('every plan tells %s before the work begins', (id) => {
  expect(placed(planOf(exampleEntries))).toContain(`before: ${id}`);
});

test.each(['gable end', 'lifted roof edge'])(
  'filled by the %s, no hole is cut, and nothing is said of where it lies',
  (way) => {
    const all = placed(
      planOf(
        exampleWith({
          'ways.chosen': way,
          'roof.obstacles': [...skylights, exampleFlue],
          'roof.first_truss': undefined,
          'roof.first_seam': undefined,
        }),
      ),
    );
    for (const id of ['departs', 'over-seam', 'moved-far', 'trusses-unknown', 'seams-unknown'])
      expect(all).not.toContain(`layout: caution.layout.${id}`);
    expect(all).toContain('layout: caution.flue.keep-clear');
  },
);

test('a bag far from the usual weight is told beside the plan, since all bags go by it', () => {
  const said = (weight: string) =>
    planOf(exampleWith({ 'fill.bag_weight': weight }))
      .remarks.map(remarkText)
      .join(' ');
  expect(said('3 lb/bag')).toContain('look at the bag again');
  expect(said('30 lb/bag')).not.toContain('look at the bag again');
});

test('a hole that is moved by more than the usual 6 in is told, whichever way it is moved', () => {
  const vent = { what: 'plumbing vent', side: 'back', from_peak: '2 ft', across: '24 in' };
  const told = new Set<string>();
  for (let feet = 4; feet <= 62; feet += 1) {
    const plan = planOf(
      exampleWith({ 'roof.obstacles': [{ ...vent, along: `${feet} ft` }], 'survey.flues': 'none' }),
    );
    const holes = plan.rows.flatMap((row) => row.holes);
    for (const { moved, movedFar } of holes) {
      const inches = amountIn(moved, 'in');
      expect(movedFar).toBe(inches > 6 || inches < -6);
      if (movedFar) told.add(inches > 0 ? 'towards the far end' : 'towards the starting end');
    }
    expect(placed(plan).includes('layout: caution.layout.moved-far')).toBe(
      holes.some(({ movedFar }) => movedFar),
    );
  }
  expect([...told].sort()).toEqual(['towards the far end', 'towards the starting end']);
});

test('on the sheet each caution stands under the heading of its place, before anything else there', () => {
  // Too heavy for its ceiling, old enough for lead paint, and with a gap that no hole may span: something at every place.
  const plan = planOf(exampleWith({ 'fill.density': '2.5 lb/ft3', 'survey.ducts': 'all tight' }));
  const at = (place: Placed['at']) =>
    plan.cautions
      .filter((each) => each.at === place)
      .map(({ id }) => cautionSentence(data.cautions[id], rules));
  const sheet = jobSheet(plan, data.cautions, rules, true);
  for (const [place, heading] of [
    ['ceiling', 'to be talked over only:\n'],
    ['before', 'BEFORE YOU START'],
    ['layout', 'HOLES'],
    ['fill', 'FILL'],
  ] as const) {
    expect(at(place).length).toBeGreaterThan(0);
    const [, below = ''] = sheet.split(`\n${heading}\n`.replace(/^\nto be/, 'to be'));
    const [stood = ''] = /^(?:(?:STOP|WARN|NOTE): .*\n)*/.exec(below) ?? [];
    expect(stood.trimEnd().split('\n')).toEqual(at(place));
  }
});
