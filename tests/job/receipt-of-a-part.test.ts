import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { exampleWith, planOf, rules } from './entries.ts';

/** What the receipt of a job tells in its first part, and what is said beside it. */
function receiptOf(changes: Readonly<Record<string, unknown>>) {
  const [found] = workParts(planOf(exampleWith(changes)), rules, true).filter(
    ({ name }) => name === 'receipt',
  );
  if (found?.state !== 'answered')
    throw new Error(`found a receipt that is ${found?.state}, expected an answer`);
  const { tables, remarks } = found.answer;
  const told = (item: string) => tables?.parts?.rows.find((row) => row.item === item)?.part_1;
  return {
    bags: told('Number of bags'),
    area: told('Coverage area'),
    density: told('Installed density'),
    said: remarks.map(remarkText).join(' '),
  };
}

type Entry = readonly [opening: number, bags: number, notFilled?: string];
const log = (way: string | undefined, ...entries: readonly Entry[]) =>
  entries.map(([opening, bags, why]) => ({
    ...(way ? { way } : {}),
    side: 'back',
    opening,
    bags: `${bags} bags`,
    ...(why ? { state: 'filling', not_filled: why } : { state: 'full' }),
  }));
const holes = (...entries: readonly Entry[]) => ({ 'log.openings': log(undefined, ...entries) });

describe('the receipt tells area and density only where all of the cavity is filled', () => {
  // By hand (example.test.ts) the plan is 716.68947 ft3: 36 bags of 30 lb make 1.50693 lb/ft3 of it. 66 ft by 13 ft 10 in are 913 ft2.
  test.each<[string, readonly Entry[]]>([
    [
      'every hole is full',
      [
        [1, 7.25],
        [2, 7.25],
        [3, 7.25],
        [4, 7.25],
        [5, 7],
      ],
    ],
    [
      'one is filled from another',
      [
        [1, 7],
        [2, 7],
        [3, 7],
        [4, 15],
        [5, 0, 'filled from another opening'],
      ],
    ],
  ])('%s', (_, entries) => {
    const { bags, area, density, said } = receiptOf(holes(...entries));
    expect([bags, area]).toEqual(['36 bags', '913 ft²']);
    expect(density).toBe('1.507 lb/ft³');
    expect(said).not.toContain('Part of the cavity');
  });

  test.each(['left empty on purpose', 'neither hose nor tube goes in'])('four holes are %s', (why) => {
    const { bags, area, density, said } = receiptOf(
      holes([1, 7], [2, 0, why], [3, 0, why], [4, 0, why], [5, 0, why]),
    );
    expect([bags, area, density]).toEqual(['7 bags', 'missing', 'missing']);
    expect(said).toContain('4 of the 5 openings are not filled');
    // By hand (log-limits.test.ts) the first hole fills 139.649200 ft3: 7 bags of 30 lb make 1.50377 lb/ft3 of it.
    expect(said).toContain('1.504 lb/ft³');
  });

  test('what the crew enters for what is filled stands', () => {
    const { area, density, said } = receiptOf({
      ...holes([1, 7], [2, 7], [3, 7], [4, 7], [5, 0, 'left empty on purpose']),
      'receipt.area': '700 ft2',
      'receipt.installed_density': '1.4 lb/ft3',
    });
    expect([area, density]).toEqual(['700 ft²', '1.4 lb/ft³']);
    expect(said).toContain('1 of the 5 openings is not filled');
  });
});

/**
 * By hand: 12 in less two chords of 1 1/2 in over 1 1/2 of every 24 in are 11.8125 in; × 10 ft × 40 ft = 393.75 ft3, at 1.5 lb/ft3
 * 19.6875 bags of 30 lb. From either gable the hose comes 10 ft: it fills half of that, 9.84375 bags; in three lanes, 3.28125 each.
 */
describe('of a home that the hose reaches half of', () => {
  const half = {
    'home.length': '40 ft',
    cavity: { shape: 'level', width: '10 ft', eave: '12 in' },
    old: {},
    heat: {},
    'roof.obstacles': [],
    'survey.flues': 'none',
    'ways.chosen': 'gable end',
    'ways.gables': 'both ends',
    'hose.reach': '10 ft',
    'hose.spread': '2 ft',
  };
  const lanes = { 'log.openings': log('gable end', [1, 3.25], [2, 3.25], [3, 3.25]) };

  test('every lane is full, and the receipt claims nothing of the whole', () => {
    const { bags, area, density, said } = receiptOf({ ...half, ...lanes });
    expect([bags, area, density]).toEqual(['9.75 bags', 'missing', 'missing']);
    expect(said).toContain('9.84 bags of the plan are for what none of the openings reaches');
    // 9.75 · 30 lb over 196.875 ft3 = 1.48571 lb/ft3.
    expect(said).toContain('1.486 lb/ft³');
  });

  test('what is typed is held against what the lanes take, not against the whole plan', () => {
    expect(receiptOf({ ...half, ...lanes, 'receipt.bags': '9.75 bags' }).said).not.toContain('the plan asks');
    expect(receiptOf({ ...half, ...lanes, 'receipt.bags': '19.75 bags' }).said).toContain(
      'the plan asks for 9.84 bags in what is filled',
    );
  });

  test('while the lanes are not known, nothing is claimed either', () => {
    const { area, density, said } = receiptOf({ ...half, 'hose.spread': '', 'receipt.bags': '10 bags' });
    expect([area, density]).toEqual(['missing', 'missing']);
    expect(said).toContain('Which part of the cavity is filled is not known');
  });
});
