import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavityVentilation } from '../../../src/calc/before/cavity-ventilation-declaration.ts';
import { cavityVents, type Known, known, ventilationAsked } from '../../../src/calc/before/cavity-vents.ts';
import { answer } from '../../../src/calc/declare/calculation.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../../src/calc/declare/remark.ts';
import { amountIn, quantity } from '../../../src/quantity/quantity.ts';
import { openRulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import { complaints, printed } from '../told.ts';

const rules = openRulebook(theProject().data);

/** 24 CFR 3280.504(d)(2): a single section, a bare metal roof and sealed leaks, all three; else (d)(1). */
const single: readonly [bareMetal: Known, sealed: Known, verdict: string][] = [
  ['yes', 'yes', 'not asked for'],
  ['yes', 'no', 'asked for'],
  ['yes', 'not known', 'not known'],
  ['no', 'yes', 'asked for'],
  ['no', 'no', 'asked for'],
  ['no', 'not known', 'asked for'],
  ['not known', 'yes', 'not known'],
  ['not known', 'no', 'asked for'],
  ['not known', 'not known', 'not known'],
];

describe('whether vents are asked for', () => {
  test.each(single)('of a single section, bare metal %s, sealed %s: %s', (bareMetal, sealed, verdict) => {
    expect(ventilationAsked({ sections: 'single', bareMetal, sealed })).toBe(verdict);
  });

  test('of a double-section home always', () => {
    for (const bareMetal of known)
      for (const sealed of known)
        expect(ventilationAsked({ sections: 'double', bareMetal, sealed })).toBe('asked for');
  });
});

/** By hand: over 300; half; 40 %; times 0.02. */
const worked: readonly [floor: number, free: number, high: number, low: number, cfm: number][] = [
  [924, 3.08, 1.54, 1.232, 18.48],
  [300, 1, 0.5, 0.4, 6],
  [1500, 5, 2.5, 2, 30],
  [0, 0, 0, 0, 0],
];

describe('what is asked of the vents', () => {
  test.each(worked)(
    'of a floor of %d ft2: %d ft2 free, %d high, %d low, or %d cfm',
    (floor, free, high, low, cfm) => {
      const vents = cavityVents(quantity(floor, 'ft2'), rules);
      expect(amountIn(vents.free, 'ft2')).toBeCloseTo(free, 12);
      expect(amountIn(vents.high, 'ft2')).toBeCloseTo(high, 12);
      expect(amountIn(vents.low, 'ft2')).toBeCloseTo(low, 12);
      expect(amountIn(vents.mechanical, 'cfm')).toBeCloseTo(cfm, 12);
      expect(amountIn(vents.clearAbove, 'in')).toBe(1);
    },
  );

  test('never shrinks as the floor grows, and is the same in square metres', () => {
    const floor = fc.double({ min: 0, max: 10_000, noNaN: true });
    fc.assert(
      fc.property(floor, floor, (a, b) => {
        const free = (ft2: number) => amountIn(cavityVents(quantity(ft2, 'ft2'), rules).free, 'ft2');
        const metric = cavityVents(quantity(a * 0.09290304, 'm2'), rules);
        return (
          free(Math.max(a, b)) >= free(Math.min(a, b)) &&
          Math.abs(amountIn(metric.free, 'ft2') - free(a)) <= 1e-9 * Math.max(1, free(a)) &&
          Math.abs(amountIn(metric.mechanical, 'cfm') - 0.02 * a) <= 1e-9 * Math.max(1, a)
        );
      }),
    );
  });
});

const given = { sections: 'single', bare_metal: 'no', sealed: 'yes', area: '924 ft2' };
const answered = (more: Readonly<Record<string, unknown>> = {}) => {
  const read = answer(cavityVentilation, { ...given, ...more }, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
};

describe('a filled cavity', () => {
  const clears: readonly [clear: string | undefined, bare: string, warned: boolean][] = [
    ['0 in', 'no', true],
    ['7/8 in', 'no', true],
    ['1 in', 'no', false],
    ['25.4 mm', 'no', false],
    [undefined, 'no', false],
    ['0 in', 'yes', false],
  ];
  test.each(clears)('with %s clear, bare metal %s: warned of %s', (clear_above, bare_metal, warned) => {
    expect(
      answered({ clear_above, bare_metal }).cautions.includes('caution.ventilation.filled-to-roof'),
    ).toBe(warned);
  });

  test('whose clear height is not told is told what the section says', () => {
    expect(answered().remarks.map(remarkText).join(' ')).toMatch(
      /has no 1 in of clear passage.*local building authority decides/,
    );
  });

  test('that asks for no vents has no area of them', () => {
    expect(Object.keys(answered({ bare_metal: 'yes' }).figures)).toEqual(['verdict']);
  });
});

describe('bad entries come back as sentences', () => {
  const bad: readonly [string, Readonly<Record<string, unknown>>, RegExp][] = [
    [
      'an area beside a length',
      { length: '66 ft' },
      /^Floor of the cavity \(area\): found an area beside a length or width; expected the area, or length and width\.$/,
    ],
    ['a length alone', { area: '', length: '66 ft' }, /found neither an area nor both length and width/],
    ['nothing to go by', { area: '' }, /found neither an area nor both/],
    ['a floor of nothing', { area: '0 ft2' }, /expected more than 0, such as 924 ft²/],
    [
      'an answer that there is not',
      { sealed: 'partly' },
      /^Ceiling leaks sealed \(sealed\): found "partly"; expected one of: yes; no; not known\.$/,
    ],
  ];
  test.each(bad)('%s', (_, more, says) => {
    const read = answer(cavityVentilation, { ...given, ...more }, rules);
    expect(read.ok ? [] : read.problems.map(sentence)).toEqual([expect.stringMatching(says)]);
  });
});

describe('what is remarked of the ventilation', () => {
  const free = 'Free area is the open area';
  const passage = 'has no 1 in of clear passage';
  const cases: readonly [what: string, more: Readonly<Record<string, unknown>>, says: readonly string[]][] = [
    ['asked for, the clear height told', { clear_above: '2 in' }, [free]],
    ['asked for, the clear height not told', {}, [free, passage]],
    ['not asked for', { bare_metal: 'yes' }, []],
    [
      'leaks open under bare metal',
      { bare_metal: 'yes', sealed: 'no' },
      ['Once the ceiling leaks', free, passage],
    ],
    ['leaks open under a sheathed roof', { sealed: 'no' }, [free, passage]],
    [
      'leaks open in a double-section home',
      { sections: 'double', bare_metal: 'yes', sealed: 'no' },
      [free, passage],
    ],
    [
      'not known',
      { bare_metal: 'yes', sealed: 'not known' },
      ['What is not known decides it', free, passage],
    ],
  ];
  test.each(cases)('%s', (_, more, says) => {
    expect(printed(cavityVentilation, { ...given, ...more }).remarks).toEqual(
      says.map((words) => expect.stringMatching(words)),
    );
  });

  test.each([
    ['an area beside a length', { length: '66 ft' }],
    ['an area beside a width', { width: '14 ft' }],
    ['a length alone', { area: '', length: '66 ft' }],
    ['a width alone', { area: '', width: '14 ft' }],
    ['a width of more than 100 ft', { area: '', length: '66 ft', width: '101 ft' }],
  ])('%s is refused', (_, more) => {
    expect(complaints(cavityVentilation, { ...given, ...more })).toHaveLength(1);
  });
});
