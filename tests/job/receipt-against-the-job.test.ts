import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { receipt } from '../../src/calc/receipt/declaration.ts';
import { workParts } from '../../src/job/parts/parts.ts';
import { receiptValues } from '../../src/job/parts/receipt.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { worked } from '../calc/told.ts';
import { exampleWith, planOf, rules } from './entries.ts';

const said = (changes: Record<string, unknown>): string => {
  const [outcome] = workParts(planOf(exampleWith(changes)), rules).filter(({ name }) => name === 'receipt');
  return outcome?.state === 'answered' ? outcome.answer.remarks.map(remarkText).join(' ') : '';
};

/** The log of the example counts 10.25 bags in 2 of its 5 openings, one of them full; its plan asks for 35.8. */
describe('what is typed on the receipt is held against the job', () => {
  test.each<[string, Record<string, unknown>, readonly string[], readonly string[]]>([
    ['nothing typed', {}, [], ['fill log', 'the plan asks', 'measure again']],
    [
      'other bags than the log counts',
      { 'receipt.bags': '36 bags' },
      ['the fill log counts 10.25 bags', '4 of the 5 openings are not full'],
      ['the plan asks'],
    ],
    [
      'far fewer bags than planned, and no log',
      { 'receipt.bags': '20 bags', 'log.openings': [] },
      ['the plan asks for 35.8 bags'],
      ['fill log', 'in what is filled'],
    ],
    // Five times seven are 35, within a tenth of 35.8.
    [
      'as many bags as the log counts, every opening full',
      {
        'receipt.bags': '35 bags',
        'log.openings': [1, 2, 3, 4, 5].map((opening) => ({
          side: 'back',
          opening,
          bags: '7 bags',
          state: 'full',
        })),
      },
      [],
      ['fill log', 'the plan asks'],
    ],
    [
      'fewer bags than the log counts',
      { 'receipt.bags': '9 bags' },
      ['The receipt says 9 bags, the fill log counts 10.25 bags'],
      [],
    ],
    [
      'as many bags as the log counts',
      { 'receipt.bags': '10.25 bags' },
      ['4 of the 5 openings are not full'],
      ['the fill log counts'],
    ],
    // A tenth more than 35.83 is 39.4, a tenth less 32.3.
    [
      'far more bags than planned, and no log',
      { 'receipt.bags': '40 bags', 'log.openings': [] },
      ['the plan asks for 35.8 bags'],
      ['fill log'],
    ],
    [
      'bags within a tenth of the plan, and no log',
      { 'receipt.bags': '39 bags', 'log.openings': [] },
      [],
      ['the plan asks', 'fill log'],
    ],
    [
      'an opening that nothing more goes into is no longer waited for',
      { 'receipt.bags': '36 bags', 'log.openings.1.not_filled': 'neither hose nor tube goes in' },
      ['3 of the 5 openings are not full'],
      [],
    ],
    [
      'thicker than the cavity once settled',
      { 'receipt.settled_thickness': '14 in' },
      ['leaves 1 ft 1 1/2 in'],
      [],
    ],
    [
      'settled it fits, and was thicker than the cavity as it was blown',
      { 'receipt.settled_thickness': '13 in', 'receipt.initial_thickness': '14 in' },
      ['a thickness of 14 in'],
      [],
    ],
    // 15 in at the ridge, 1 1/2 in of it old insulation.
    ['as thick as the cavity', { 'receipt.initial_thickness': '13 1/2 in' }, [], ['measure again']],
    ['thicker than the cavity', { 'receipt.initial_thickness': '14 in' }, ['leaves 1 ft 1 1/2 in'], []],
  ])('%s', (_, changes, says, not) => {
    const words = said(changes);
    for (const each of says) expect(words).toContain(each);
    for (const each of not) expect(words).not.toContain(each);
  });
});

describe('an R that no fill has is told, and kept as it is', () => {
  const { parts, ...head } = receipt.example as unknown as { parts: Record<string, string>[] };
  const remarks = (more: Record<string, string>) =>
    worked(receipt, { ...head, parts: [{ ...parts[0], ...more }] })
      .remarks.map(remarkText)
      .join(' ');
  // The most that is published of loose-fill glass fibre is 4.12 an inch, and a tenth more is 4.532.
  test.each<[string, Record<string, string>, boolean]>([
    ['38 over 10 1/4 in', {}, false],
    ['60 over 3 in', { r_value: '60 h ft2 F/Btu', settled_thickness: '3 in' }, true],
    ['45.3 over 10 in', { r_value: '45.3 h ft2 F/Btu', settled_thickness: '10 in' }, false],
    ['45.4 over 10 in', { r_value: '45.4 h ft2 F/Btu', settled_thickness: '10 in' }, true],
    [
      'cellulose of 40 over 10 in, 3.7 published',
      { insulation: 'cellulose', r_value: '40 h ft2 F/Btu', settled_thickness: '10 in' },
      false,
    ],
    [
      'cellulose of 41 over 10 in',
      { insulation: 'cellulose', r_value: '41 h ft2 F/Btu', settled_thickness: '10 in' },
      true,
    ],
  ])('%s', (_, more, told) => {
    expect(remarks(more).includes('Read the maker’s paper again')).toBe(told);
  });
});

describe('the bags of the receipt', () => {
  const closed = [1, 2, 3, 4, 5].map((opening) => ({ side: 'back', opening, bags: '7 bags', state: 'full' }));
  const shut = { state: 'filling', not_filled: 'neither hose nor tube goes in' };
  const bagsOf = (changes: Record<string, unknown>) =>
    receiptValues(planOf(exampleWith(changes)), rules).parts[0]?.bags?.amount;
  test.each<[title: string, changes: Record<string, unknown>, bags: number | undefined]>([
    ['none is full', { 'log.openings': [] }, undefined],
    ['some are full', {}, undefined],
    ['all are full: five times seven', { 'log.openings': closed }, 35],
    [
      'all but one are full, and nothing more goes into that',
      { 'log.openings': closed.map((each, place) => (place === 4 ? { ...each, ...shut } : each)) },
      35,
    ],
    [
      'openings that are not known: nobody can tell whether they are full',
      { 'ways.chosen': 'gable end', 'hose.spread': '', 'log.openings': closed },
      undefined,
    ],
    [
      'as they were typed, whatever the log counts',
      { 'log.openings': closed, 'receipt.bags': '36 bags' },
      36,
    ],
  ])('%s', (_, changes, bags) => {
    expect(bagsOf(changes)).toBe(bags);
  });

  test('and its area is the one that was typed, before length times width: 66 ft × 13 ft 10 in', () => {
    const areaOf = (changes: Record<string, unknown>) => {
      const area = receiptValues(planOf(exampleWith(changes)), rules).parts[0]?.area;
      return area && amountIn(area, 'ft2');
    };
    expect(areaOf({})).toBeCloseTo(66 * (13 + 10 / 12), 9);
    expect(areaOf({ 'receipt.area': '900 ft2' })).toBe(900);
  });
});

/** By hand, from the example: its first hole takes 6.98 bags, and 8.75 are the most that its ceiling carries; within a tenth counts as planned. */
describe('the receipt goes by what the fill log says', () => {
  const first = (bags: string, state: string) => [{ side: 'back', opening: 1, bags, state }];
  test.each<[title: string, openings: readonly unknown[], says: string | undefined]>([
    ['no bag is in', [], undefined],
    ['the first hole is being filled', first('4 bags', 'filling'), 'nothing against it'],
    ['it took what was planned', first('7 bags', 'full'), 'nothing against it'],
    ['it is heavy, and the ceiling carries it', first('8.5 bags', 'full'), 'nothing against it'],
    ['it is light', first('4 bags', 'full'), 'an opening is light'],
    ['it is overloaded, full or not', first('9 bags', 'filling'), 'a ceiling is overloaded'],
    [
      'one is light and one overloaded',
      [...first('9 bags', 'full'), { side: 'back', opening: 2, bags: '3 bags', state: 'full' }],
      'a ceiling is overloaded',
    ],
  ])('%s', (_, openings, says) => {
    expect(receiptValues(planOf(exampleWith({ 'log.openings': openings })), rules).log_says).toBe(says);
  });
});
