import fc from 'fast-check';
import type { Fields, QuantityField } from '../../../src/calc/declare/field.ts';
import { type FieldProblem, sentence } from '../../../src/calc/declare/read-fields.ts';
import { inTime } from '../../in-time.ts';
import { type Entries, fieldsFrom, type Leaf, unitsOf, withAt } from './entries.ts';

/** What programs trip over, whoever types it and wherever: numbers that are none, other writing, marks that nobody sees, script. */
export const hostile: readonly string[] = [
  '1e309',
  '-1e309',
  '-0',
  '0',
  '٣',
  '٣ ft',
  '१२',
  '½',
  '1/0',
  '0x10',
  '1e5',
  'NaN',
  'Infinity',
  'undefined',
  'null',
  '__proto__',
  'constructor',
  '[object Object]',
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  'javascript:alert(1)',
  '$1',
  '{{1}}',
  '\u202e12 ft',
  '\u200b3\u200d ft',
  '\u0000',
  '\ud800',
  'a\u0301'.repeat(60),
  '🙂'.repeat(80),
  'x'.repeat(5000),
  '9'.repeat(400),
  `0.${'0'.repeat(400)}1`,
  '(((((((((('.repeat(50),
  '1 ft 2 ft 3 ft',
  "3'-4 1/2''",
  '--3 ft',
  '3 ft lb h F',
  '\n\n3 ft\n',
];

/** Words that say what a broken program says are looked for in what is shown, so nobody types them where words are shown as typed. */
const sayable = (words: string): boolean => !/NaN|Infinity|undefined|\[object/.test(words);
export const shownAsTyped = hostile.filter(sayable);

const numbers = [
  '1e308',
  '-0',
  '0',
  '1e-320',
  '99999999999999999999',
  '0.1',
  '3',
  '-3',
  '1e309',
  '٣',
  '7/8',
  '1 1/2',
];

/** Something hostile, or nearly right, for a field of this kind. */
export function hostileFor({ field, given }: Leaf): fc.Arbitrary<unknown> {
  const anything = fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom<unknown>(...hostile) },
    fc.string({ maxLength: 12 }),
    fc.string({ maxLength: 12, unit: 'binary' }),
    fc.double().map(String),
    fc.constantFrom<unknown>(0, -0, 1e308, Number.NaN, true, null, [], {}, [[]], { toString: 1 }),
  );
  switch (field.kind) {
    case 'quantity':
      return fc.oneof(
        anything,
        fc
          .tuple(fc.constantFrom(...numbers), fc.constantFrom(...unitsOf(field as QuantityField)))
          .map((each) => each.join(' ')),
        harmed(String(given ?? field.example)),
      );
    case 'choice':
      return fc.oneof(
        anything,
        fc.constantFrom(...field.choices),
        fc.constantFrom(...field.choices).chain(harmed),
      );
    case 'count':
    case 'year':
    case 'date':
      return fc.oneof(anything, fc.constantFrom(...numbers), harmed(String(given ?? field.example)));
    case 'words':
      return fc.oneof(
        fc.constantFrom<unknown>(...shownAsTyped, 0, true, null, [], {}),
        // Names out of the language itself come up among these too.
        fc.string({ maxLength: 40 }).filter(sayable),
      );
    default:
      return anything;
  }
}

/** Entries with up to three of their fields, given or left out, typed anew; now and then a whole list or group is something else. */
export const typedAnew = (fields: Fields, bases: readonly Entries[]): fc.Arbitrary<Entries> =>
  fc.constantFrom(...bases).chain((entries) => {
    const leaves = fieldsFrom(fields, entries);
    const whole = fc
      .tuple(
        fc.constantFrom(...Object.keys(fields), '__proto__', 'nmae'),
        fc.constantFrom<unknown>(...shownAsTyped, [], {}, [{}], [[]], [null], 0, true),
      )
      .map(([name, value]): Entries => ({ ...entries, [name]: value }));
    const some = fc
      .uniqueArray(fc.nat(Math.max(0, leaves.length - 1)), { minLength: 1, maxLength: 3 })
      .chain((places) => {
        const chosen = places.flatMap((place) => leaves[place] ?? []);
        return fc
          .tuple(...chosen.map(hostileFor))
          .map((values) => chosen.reduce((all, { way }, place) => withAt(all, way, values[place]), entries));
      });
    return fc.oneof({ weight: 12, arbitrary: some }, whole);
  });

/** How many cases in all; more by `npm run fuzz -- NUMBER`. */
export const CASES = Number(process.env.FUZZ_CASES ?? 10_000);
/** However many cases: a machine that others use too does a few hundred a second. */
export const PATIENCE = 60_000 + CASES * 20;

const LONGEST_WAIT = 100;

/** Does some work, which must be over before anybody notices. */
export const timed = <T>(work: () => T): T => inTime(LONGEST_WAIT, work);

const SENTENCE = /^.+: found .+; expected .+\.$/;
const NO_NUMBER = /NaN|Infinity|undefined|\[object|\n/;

/** One sentence for each field that is wrong, and each clear: what is poor about them. */
export function poorSentences(problems: readonly FieldProblem[]): string[] {
  if (problems.length === 0) return ['refused without a sentence'];
  const told = problems.map((each) => each.field + each.label);
  return [
    ...(new Set(told).size < told.length ? [`one field told twice: ${told.join(', ')}`] : []),
    ...problems
      .map(sentence)
      // What was typed is told in quotes, whatever it was.
      .filter(
        (each) => !SENTENCE.test(each) || NO_NUMBER.test(each.replace(/".*"/, '')) || each.length > 1000,
      ),
  ];
}

/** Texts that show what no number is. */
export const noNumbers = (texts: readonly string[]): string[] => texts.filter((each) => NO_NUMBER.test(each));

/** A text that was right, with a piece cut out or put in. */
const harmed = (text: string): fc.Arbitrary<string> =>
  fc
    .tuple(fc.nat(text.length), fc.nat(2), fc.oneof(fc.constantFrom(...hostile), fc.string({ maxLength: 2 })))
    .map(([at, cut, put]) => text.slice(0, at) + put + text.slice(at + cut));
