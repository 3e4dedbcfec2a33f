import type { Dimension } from '../quantity/dimension.ts';
import { signs, type UnitName, units, unitWritten } from '../quantity/units.ts';

/** A number with a unit that stands in prose without a rule behind it. */
export interface BareQuantity {
  readonly text: string;
  readonly at: number;
  /** What it measures; undefined where no value of the rulebook can be of that kind. */
  readonly dimension: Dimension | undefined;
}

/** The last word of a number: of "twenty-five pounds" five, of "two thousand pounds" thousand. */
const NUMBER_WORDS =
  'zero|nought|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|dozen|half|quarter|(?:half|quarter|third) (?:of )?an?';
/** Units that the table has only by their sign, or not at all, and that people write out all the same, with what they measure. */
const ALSO: Readonly<Record<string, Dimension | undefined>> = {
  mil: 'length',
  yard: 'length',
  yd: 'length',
  mile: 'length',
  meter: 'length',
  centimeter: 'length',
  millimeter: 'length',
  oz: 'weight',
  ounce: 'weight',
  ton: 'weight',
  quart: 'volume',
  pint: 'volume',
  litre: 'volume',
  liter: 'volume',
  amp: undefined,
  watt: 'heat flow',
  kw: 'heat flow',
  'kilowatt-hour': 'heat',
  kilowatt: 'heat flow',
  pascal: 'load',
  // What the table takes for straight marks.
  '″': 'length',
  '′': 'length',
};

/** What stands after a number and is no unit there. */
const NO_UNIT: Readonly<Record<string, string>> = {
  "'": 'ends a quotation, or a decade: 1970’s',
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
  ...Object.keys(ALSO),
  '°',
  '#',
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
const DIGIT = String.raw`\d¼-¾⅐-⅞`;
const NUMBER = String.raw`(?<![\w.])\.?[${DIGIT}][${DIGIT},./⁄\s-]*`;
const inDigits = new RegExp(String.raw`${NUMBER}(?<unit>${oneOf(byLetters(false))})(?!\w)`, 'gi');
/** A unit of one letter is told by its size: 24 V, 3 h. */
const byOneLetter = new RegExp(String.raw`${NUMBER}(?<unit>${oneOf(byLetters(true))})(?![\w’'])`, 'g');
/** "A" is a word too, so no stop may part it from its number: "until 1976. A home". An extinguisher is rated 2-A:10-B:C. */
const inAmperes = /(?<![\w.])\.?\d+(?:[.,]\d+)*\s*-?(?<unit>A)(?![\w’':])/g;
/** "in" after a number word is nearly always the preposition ("one in the middle"), so words take the longer units only. */
const inWords = new RegExp(
  String.raw`\b(?:${NUMBER_WORDS})[\s-]+(?<unit>${oneOf(byLetters(false).filter((word) => /^[a-z][a-z -]+$/i.test(word) && word !== 'in'))})\b`,
  'gi',
);
const money = /(?<unit>\$)\s*\d[\d,.]*/g;
const rValue = /\b(?<unit>R)(?:[\s-]+values?)?(?:\s+of)?[\s-]*\d+(?:\.\d+)?\b/g;

/** How far a sign of full width stands above the usual one. */
const WIDER = '０'.charCodeAt(0) - '0'.charCodeAt(0);

/** The same text, as long, with digits, hyphens and spaces of one kind and without marks of emphasis: what looks like a number is read as one. */
const plainly = (text: string): string =>
  text
    .replace(/[！-～]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - WIDER))
    .replace(/[‐‑]|(?<=\S)[–−](?=\S)/g, '-')
    .replace(/&#?\w+;|[*_~`]/g, (mark) => ' '.repeat(mark.length));

const dimensionOf = (written: string): Dimension | undefined => {
  const unit = unitWritten(written);
  return unit === undefined ? ALSO[written.toLowerCase().replace(/s$/, '')] : units[unit].dimension;
};

/**
 * Which numbers with a unit stand in this text, and what does each measure?
 * @example bareQuantitiesIn('cut a 6 in hole').map(({ text }) => text) // => ['6 in']
 */
export function bareQuantitiesIn(text: string): BareQuantity[] {
  const plain = plainly(text);
  return [inDigits, byOneLetter, inAmperes, inWords, rValue, money]
    .flatMap((pattern) =>
      [...plain.matchAll(pattern)].map(({ 0: { length }, index: at, groups }) => ({
        text: text.slice(at, at + length),
        at,
        dimension: dimensionOf(groups?.unit ?? ''),
      })),
    )
    .sort((a, b) => a.at - b.at || b.text.length - a.text.length)
    .filter(({ at }, place, all) => at !== all[place - 1]?.at);
}
