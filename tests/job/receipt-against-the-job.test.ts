import { describe, expect, test } from 'vitest';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { receipt } from '../../src/calc/receipt/declaration.ts';
import { workParts } from '../../src/job/parts/parts.ts';
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
      ['fill log'],
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
