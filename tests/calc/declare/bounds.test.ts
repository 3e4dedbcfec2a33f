import { describe, expect, test } from 'vitest';
import {
  countField,
  dateField,
  type Field,
  lengthField,
  listField,
  quantityField,
  wordsField,
  yearField,
} from '../../../src/calc/declare/field.ts';
import { readFields, sentence } from '../../../src/calc/declare/read-fields.ts';

/** What one field reads, or the sentence that refuses it. */
function read(field: Field, given: unknown): unknown {
  const found = readFields({ it: field }, { it: given });
  return found.ok ? found.value.it : found.problems.map(sentence).join(' ');
}

const kinds = {
  year: yearField('Year', 'Of the plate.', '1979'),
  count: countField('Sections', 'Of the home.', '2', { least: 1, most: 20 }),
  'count of the usual bounds': countField('Caps', 'In the kit.', '12'),
  date: dateField('Day', 'Of the work.', '2026-10-05'),
  words: wordsField('Name', 'Of the job.', '14 Larkspur Lane'),
  list: listField('Marks', 'On the roof.', 'a mark', { name: wordsField('Name', 'Of it.', 'A') }, 2),
} as const;

// What is let through is by the kind of field: years of 1900 to 2050, 200 letters, whole numbers within the bounds given, days of the calendar.
describe('the ends of what a field takes are taken', () => {
  test.each<[keyof typeof kinds, string, unknown, unknown]>([
    ['year', 'the earliest', 1900, 1900],
    ['year', 'the latest, as text', '2050', 2050],
    ['count', 'the least', 1, 1],
    ['count', 'the most', 20, 20],
    ['count', 'as text with space about it', ' 12 ', 12],
    ['count of the usual bounds', 'none', 0, 0],
    ['count of the usual bounds', 'a thousand', '1000', 1000],
    ['date', 'the leap day of a leap year', '2024-02-29', '2024-02-29'],
    ['date', 'the last day of a year, with space about it', ' 2026-12-31 ', '2026-12-31'],
    ['words', 'two hundred letters', 'x'.repeat(200), 'x'.repeat(200)],
    ['list', 'as many as it may have', [{ name: 'A' }, { name: 'B' }], [{ name: 'A' }, { name: 'B' }]],
  ])('%s: %s', (kind, _, given, value) => {
    expect(read(kinds[kind], given)).toEqual(value);
  });
});

const aYear = 'expected a year such as 1979.';
const aCount = 'expected a whole number from 1 to 20, such as 2.';
const aDay = 'expected a day of the calendar written as 2026-10-05.';

describe('what lies beyond them is refused, with what was found', () => {
  test.each<[keyof typeof kinds, string, unknown, string]>([
    ['year', 'one too late', 2051, `"2051"; ${aYear}`],
    ['year', 'words before it', 'in 1979', `"in 1979"; ${aYear}`],
    ['year', 'words behind it', '1979 or so', `"1979 or so"; ${aYear}`],
    ['year', 'one for yes', true, `"true"; ${aYear}`],
    ['count', 'one too few', 0, `"0"; ${aCount}`],
    ['count', 'one too many', 21, `"21"; ${aCount}`],
    ['count', 'half a piece', 1.5, `"1.5"; ${aCount}`],
    ['count', 'no number', Number.NaN, `"NaN"; ${aCount}`],
    ['count', 'words before it', 'about 2', `"about 2"; ${aCount}`],
    ['count', 'words behind it', '2 or 3', `"2 or 3"; ${aCount}`],
    ['count', 'half a piece as text', '1.5', `"1.5"; ${aCount}`],
    ['count', 'a number in a list', ['2'], `a list; ${aCount}`],
    ['count', 'a sign for no', false, `"false"; ${aCount}`],
    ['count', 'left out', '', `nothing; ${aCount}`],
    ['date', 'the leap day of another year', '2026-02-29', `"2026-02-29"; ${aDay}`],
    ['date', 'a month that no year has', '2026-13-01', `"2026-13-01"; ${aDay}`],
    ['date', 'a day before the first', '2026-01-00', `"2026-01-00"; ${aDay}`],
    ['date', 'the day before the month', '05-10-2026', `"05-10-2026"; ${aDay}`],
    ['date', 'words before it', 'on 2026-10-05', `"on 2026-10-05"; ${aDay}`],
    ['date', 'an hour behind it', '2026-10-05T10', `"2026-10-05T10"; ${aDay}`],
    ['date', 'a number', 20_261_005, `"20261005"; ${aDay}`],
    ['date', 'left out', '   ', `nothing; ${aDay}`],
  ])('%s: %s', (kind, _, given, says) => {
    expect(read(kinds[kind], given)).toBe(`${kinds[kind].label} (it): found ${says}`);
  });
});

describe('a quantity that is counted', () => {
  const counted = {
    dimension: 'pieces',
    symbol: 'n',
    label: 'Bags',
    hint: 'On the truck.',
    example: '30 bags',
    zero: 'allowed',
  } as const;
  const bags = quantityField({ ...counted, beside: 'bag' });
  const pieces = quantityField(counted);

  test('takes its own pieces', () => {
    expect(read(bags, '12 bags')).toMatchObject({ amount: 12, unit: 'bag' });
  });
  test('refuses others, and repeats what was typed without the space about it', () => {
    expect(read(bags, ' 12 screws ')).toBe('Bags (it): found "12 screws"; expected a count such as 30 bags.');
  });
  test('takes any where none stands beside its box', () => {
    expect(read(pieces, '12 screws')).toMatchObject({ amount: 12, unit: 'screw' });
  });
});

describe('a length is repeated as it was typed, without the space about it', () => {
  const depth = lengthField('d', 'Depth', 'Down.', '2 in', { most: '6 ft' });
  test.each([
    [' -1 in ', '"-1 in"; expected an amount above 0, such as 2 in.'],
    [' 0 in ', '"0 in"; expected more than 0, such as 2 in.'],
    [' 7 ft ', '"7 ft"; expected 6 ft at most: this entry takes no more.'],
  ])('"%s"', (given, says) => {
    expect(read(depth, given)).toBe(`Depth (it): found ${says}`);
  });
  test('the most is told each time, not the first time alone', () => {
    expect(read(depth, '73 in')).toBe(
      'Depth (it): found "73 in"; expected 6 ft at most: this entry takes no more.',
    );
    expect(read(depth, '6 ft')).toMatchObject({ amount: 6, unit: 'ft' });
  });
});

test('what is said of forty letters says them all; of one more it leaves some out', () => {
  const choice = yearField('Year', 'Of the plate.', '1979');
  const forty = 'x'.repeat(40);
  expect(read(choice, forty)).toBe(`Year (it): found "${forty}"; ${aYear}`);
  expect(read(choice, `${forty}x`)).toBe(`Year (it): found "${'x'.repeat(37)}..."; ${aYear}`);
});
