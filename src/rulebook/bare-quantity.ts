import { signs, type UnitName, units } from '../quantity/units.ts';

/** A number with a unit that stands in prose without a rule behind it. */
export interface BareQuantity {
  readonly text: string;
  readonly at: number;
}

/** The last word of a number: of "twenty-five pounds" five, of "two thousand pounds" thousand. */
const NUMBER_WORDS =
  'zero|nought|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|dozen|half|quarter|(?:half|quarter|third) (?:of )?an?';
/** Units that the table has only by their sign, or not at all, and that people write out all the same. */
const ALSO = [
  'yard',
  'yd',
  'mile',
  'ton',
  'quart',
  'pint',
  'litre',
  'liter',
  'meter',
  'centimeter',
  'millimeter',
  'amp',
  'watt',
  'kilowatt-hour',
  'kilowatt',
  'pascal',
];

/** What stands after a number and is no unit there. */
const NO_UNIT: Readonly<Record<string, string>> = {
  "'": 'ends a quotation, or a decade: 1970’s',
  "''": 'ends a quotation',
  '’': 'ends a quotation, or a decade: 1970’s',
  '”': 'ends a quotation',
  s: 'makes a decade: the 1970s',
  R: 'stands before its number: R-19',
  $: 'stands before its number: $1800',
  fluid: 'is the first word of an ounce',
  fiber: 'is counted',
};

/** Holes, screws and pushes are counted, and a count is no measure; bags are what fill is sold and told by. */
const isCounted = (name: UnitName): boolean => units[name].dimension === 'pieces' && name !== 'bag';

const writings = [
  ...(Object.keys(units) as UnitName[])
    .filter((name) => name !== '1' && !isCounted(name))
    .flatMap((name) => [name, units[name].sign, ...units[name].written]),
  ...Object.keys(signs),
  ...ALSO,
  '°',
].filter((written) => !Object.hasOwn(NO_UNIT, written) && !written.startsWith('$'));

/** The longest first, so that a pound in a cubic foot is not told as a pound; a word may stand in the plural. */
const oneOf = (words: readonly string[]): string =>
  [...new Set(words)]
    .sort((a, b) => b.length - a.length)
    .map(
      (word) =>
        word.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&').replace(/ /g, '[ -]') +
        (/[a-z]{2}$/i.test(word) ? '(?:e?s)?' : ''),
    )
    .join('|');

const byLetters = (few: boolean) => writings.filter((word) => /^[a-z]$/i.test(word) === few);
const NUMBER = String.raw`(?<![\w.])(?:\d[\d,./ -]*|[½¼¾⅛⅜⅝⅞])\s*-?`;
const inDigits = new RegExp(String.raw`${NUMBER}(?:${oneOf(byLetters(false))})(?!\w)`, 'gi');
/** A unit of one letter is told by its size: 24 V, 3 h. */
const byOneLetter = new RegExp(String.raw`${NUMBER}(?:${oneOf(byLetters(true))})(?![\w’'])`, 'g');
/** "in" after a number word is nearly always the preposition ("one in the middle"), so words take the longer units only. */
const inWords = new RegExp(
  String.raw`\b(?:${NUMBER_WORDS})[ -](?:${oneOf(byLetters(false).filter((word) => /^[a-z][a-z -]+$/i.test(word) && word !== 'in'))})\b`,
  'gi',
);
const money = /\$\s*\d[\d,.]*/g;
const rValue = /\bR-?\d+(?:\.\d+)?\b/g;

/**
 * Which numbers with a unit stand in this text?
 * @example bareQuantitiesIn('cut a 6 in hole').map(({ text }) => text) // => ['6 in']
 */
export function bareQuantitiesIn(text: string): BareQuantity[] {
  return [inDigits, byOneLetter, inWords, rValue, money]
    .flatMap((pattern) =>
      [...text.matchAll(pattern)].map((match) => ({ text: match[0].trim(), at: match.index })),
    )
    .sort((a, b) => a.at - b.at || b.text.length - a.text.length)
    .filter(({ at }, place, all) => at !== all[place - 1]?.at);
}
