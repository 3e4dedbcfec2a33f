import { describe, expect, test } from 'vitest';
import { ParseError, parseQuantity } from '../../src/quantity/parse.ts';
import { amountIn } from '../../src/quantity/quantity.ts';
import { timeInOneUnit } from '../../src/quantity/time-in-two-units.ts';

/** By hand: sixty minutes in an hour, sixty seconds in a minute. */
const times: readonly [written: string, minutes: number][] = [
  ['1 h 30 min', 90],
  ['1h30', 90],
  ['1h 30m', 90],
  ['1 hr, 30 mins', 90],
  ['1 hrs. 30 min.', 90],
  ['2 hours 5 minutes', 125],
  [' 10 HOURS 0 MIN ', 600],
  ['0 h 45 min', 45],
  ['1 h 59.5 min', 119.5],
  ['2 min 30 s', 2.5],
  ['2m30s', 2.5],
  ['2 minutes, 30 seconds', 2.5],
  ['0 min 6 sec', 0.1],
  ['90 min', 90],
  ['1.5 h', 90],
  ['1 1/2 h', 90],
  ['45 s', 0.75],
];

describe('a time is read as people write it', () => {
  test.each(times)('"%s"', (written, minutes) => {
    const read = parseQuantity(timeInOneUnit(written), { dimension: 'time' });
    expect(amountIn(read, 'min')).toBeCloseTo(minutes, 12);
  });
});

describe('what could be mistaken for another time is refused', () => {
  test.each([
    ['1:30', 'found "1:30", which could mean two things, expected 1 h 30 min or 1 min 30 s'],
    [' 0:45 ', 'found "0:45", which could mean two things, expected 0 h 45 min or 0 min 45 s'],
    ['1 h 60 min', 'found "1 h 60 min", expected less than 60 min after the hours'],
    ['1h90', 'found "1h90", expected less than 60 min after the hours'],
    ['2 min 75 s', 'found "2 min 75 s", expected less than 60 s after the minutes'],
    // A tenth of an hour before minutes is a slip, as a tenth of a foot before inches is; and an hour has no inches.
    ['1.5 h 30 min', 'found "1.5 h 30 min" with the unknown unit "h 30 min", expected a time'],
    ['30 min 1 h', 'found "30 min 1 h" with the unknown unit "min 1 h", expected a time'],
    ['1 h 30 in', 'found "1 h 30 in" with the unknown unit "h 30 in", expected a time'],
    ['1 h 30 min 5 s', 'found "1 h 30 min 5 s" with the unknown unit "h 30 min 5 s", expected a time'],
    ['30 m', 'found "30 m" (length), expected a time'],
    [
      '1 h -30 min',
      'found "1 h -30 min", which could mean two things, expected a time, with no comma or loose hyphen',
    ],
  ])('"%s"', (written, message) => {
    const attempt = () => parseQuantity(timeInOneUnit(written), { dimension: 'time' });
    expect(attempt).toThrow(ParseError);
    expect(attempt).toThrow(message);
  });
});
