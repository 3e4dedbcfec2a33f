import { ParseError } from './parse.ts';

/** The larger unit before the smaller, which may go without its name, as inches after feet do. Written out, so that a page that reads no time leaves them out. */
const pairs = [
  {
    both: /^(\d+)\s*h(?:(?:ou)?rs?)?\.?,?\s*(\d+(?:\.\d+)?)\s*(?:m(?:in(?:ute)?s?)?\.?)?$/i,
    larger: 'hours',
    unit: 'min',
  },
  {
    both: /^(\d+)\s*m(?:in(?:ute)?s?)?\.?,?\s*(\d+(?:\.\d+)?)\s*(?:s(?:ec(?:ond)?s?)?\.?)?$/i,
    larger: 'minutes',
    unit: 's',
  },
];

const IN_A_LARGER_ONE = 60;

/** 1:30 on a clock or a stopwatch. */
const WITH_COLON = /^(\d+):(\d+(?:\.\d+)?)$/;

/**
 * What time is meant by hours with minutes, or minutes with seconds, told in the smaller unit? All else comes back as it was written.
 * @throws ParseError for `1:30`, which is 1 h 30 min on a clock and 1 min 30 s on a stopwatch, and for 60 or more of the smaller unit.
 * @example timeInOneUnit('1 h 30 min') // => '90 min'
 * @example timeInOneUnit('2.5 min') // => '2.5 min'
 */
export function timeInOneUnit(written: string): string {
  const text = written.trim();
  const [, first, second] = WITH_COLON.exec(text) ?? [];
  if (first)
    throw new ParseError(
      `"${text}", which could mean two things`,
      `${first} h ${second} min or ${first} min ${second} s`,
    );
  for (const { both, larger, unit } of pairs) {
    const [, whole, rest] = both.exec(text) ?? [];
    if (!whole) continue;
    if (Number(rest) >= IN_A_LARGER_ONE)
      throw new ParseError(`"${text}"`, `less than ${IN_A_LARGER_ONE} ${unit} after the ${larger}`);
    return `${Number(whole) * IN_A_LARGER_ONE + Number(rest)} ${unit}`;
  }
  return written;
}
