import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fall } from '../../../src/calc/crew/fall/declaration.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { complaints, type Entries, figure, worked } from '../told.ts';

const roof: Entries = { height: '9 ft', rise: '3 in', width: '13 ft 10 in', roofing_work: 'no or not sure' };
const systems = (more: Entries): string[] => {
  const value = worked(fall, { ...roof, ...more }).figures.systems?.value;
  return typeof value === 'string' ? value.split('; ') : [];
};

const AT_ANY_EDGE = ['guardrail', 'safety net', 'personal fall arrest'];
const ON_STEEP = ['guardrail with toeboards', 'safety net', 'personal fall arrest'];

/** 29 CFR 1926.501(b)(10) and (11), read by hand as steps: due at all, steep, roofing work on a low slope, narrow enough. */
function byTheParagraphs(height: number, rise: number, width: number, roofing: boolean): string[] {
  if (height < 6) return [];
  if (rise > 4) return ON_STEEP;
  const warned = ['warning line', 'monitor'];
  return roofing ? [...AT_ANY_EDGE, ...warned.slice(0, width > 50 ? 1 : 2)] : AT_ANY_EDGE;
}

describe('which kinds serve', () => {
  test('follows from height, slope, width and work, and from nothing else', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 240 }),
        fc.integer({ min: 0, max: 96 }),
        fc.integer({ min: 120, max: 1200 }),
        fc.boolean(),
        (height, eighths, width, roofing) => {
          const more = {
            height: `${height} in`,
            rise: `${eighths / 8} in`,
            width: `${width} in`,
            roofing_work: roofing ? 'yes' : 'no or not sure',
          };
          const found = systems(more);
          const expected = byTheParagraphs(height / 12, eighths / 8, width / 12, roofing);
          expect(found.filter((each) => ON_STEEP.includes(each) || AT_ANY_EDGE.includes(each))).toEqual(
            expected.filter((each) => ON_STEEP.includes(each) || AT_ANY_EDGE.includes(each)),
          );
          expect(found.some((each) => each.startsWith('warning line'))).toBe(
            expected.includes('warning line'),
          );
          expect(found.includes('safety monitor alone')).toBe(expected.includes('monitor'));
          expect(worked(fall, { ...roof, ...more }).figures.verdict?.value).toBe(
            height >= 72 ? 'required' : 'not required by the height',
          );
        },
      ),
    );
  });

  /** Each border belongs to one side: at 6 ft protection is due, 4 in is still low, 50 ft still narrow; in metres too. */
  test.each([
    [{ height: '6 ft' }, true],
    [{ height: '1.8288 m' }, true],
    [{ height: '5 ft 11 7/8 in' }, false],
  ])('%j: due %s', (more, due) => {
    expect(systems(more).length > 0).toBe(due);
  });
  test.each([
    ['4 in', 'low slope'],
    ['10.16 cm', 'low slope'],
    ['4 1/8 in', 'steep'],
  ])('a rise of %s is %s', (rise, slope) => {
    expect(worked(fall, { ...roof, rise }).figures.slope?.value).toBe(slope);
  });
  test.each([
    ['50 ft', true],
    ['15.24 m', true],
    ['50 ft 1 in', false],
  ])('a low slope %s wide has a monitor alone: %s', (width, alone) => {
    expect(systems({ width, roofing_work: 'yes' }).includes('safety monitor alone')).toBe(alone);
  });

  test('never fewer kinds for roofing work, nor more for work that is not surely that', () => {
    fc.assert(
      fc.property(fc.integer({ min: 72, max: 240 }), fc.integer({ min: 0, max: 96 }), (height, eighths) => {
        const more = { height: `${height} in`, rise: `${eighths / 8} in` };
        const sure = systems({ ...more, roofing_work: 'yes' });
        expect(sure).toEqual(expect.arrayContaining(systems({ ...more, roofing_work: 'no or not sure' })));
      }),
    );
  });
});

describe('an anchor', () => {
  test.each([1, 2, 7, 10])('for %d people carries 5000 lb for each', (people) => {
    expect(figure(fall, { ...roof, people: String(people) }, 'anchor', 'lb')).toBe(5000 * people);
  });
  test('carries one where nobody is counted', () => {
    expect(figure(fall, roof, 'anchor', 'lb')).toBe(5000);
  });
});

test('a fall is cautioned of below the height too', () => {
  const { cautions, remarks } = worked(fall, { ...roof, height: '5 ft' });
  expect(cautions).toContain('caution.roof.falls');
  expect(remarks.map(remarkText).join(' ')).toMatch(/A lower fall can still cripple/);
});

const bad: readonly [title: string, more: Entries, says: RegExp][] = [
  ['no height', { height: '' }, /^Height of the edge \(height\): found nothing; expected text with a unit/],
  [
    'a height below the ground',
    { height: '-1 ft' },
    /^Height of the edge \(height\): found "-1 ft"; expected an amount above 0/,
  ],
  [
    'half a person',
    { people: '1.5' },
    /^People on one anchor \(people\): found "1\.5"; expected a whole number from 1 to 10, such as 1\.$/,
  ],
  [
    'nobody',
    { people: 0 },
    /^People on one anchor \(people\): found "0"; expected a whole number from 1 to 10/,
  ],
  [
    'a roof of no width',
    { width: '0 ft' },
    /^Width of the roof \(width\): found "0 ft"; expected more than 0/,
  ],
  [
    'an answer that is none',
    { roofing_work: 'maybe' },
    /\(roofing_work\): found "maybe"; expected one of: yes; no or not sure\.$/,
  ],
];

describe('bad entries come back as a sentence that names the field', () => {
  test.each(bad)('%s', (_, more, says) => {
    expect(complaints(fall, { ...roof, ...more })).toEqual([expect.stringMatching(says)]);
  });
});
