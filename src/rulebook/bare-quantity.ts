/** A number with a unit that stands in prose without a rule behind it. */
export interface BareQuantity {
  readonly text: string;
  readonly at: number;
}

const NUMBER_WORDS =
  'one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|sixteen|twenty|thirty|forty|fifty|sixty|hundred|half';
const UNIT_WORDS = [
  'inches',
  'inch',
  'in',
  'feet',
  'foot',
  'ft',
  'yards?',
  'millimetres?',
  'mm',
  'centimetres?',
  'cm',
  'metres?',
  'pounds?',
  'lbs?',
  'ounces?',
  'oz',
  'kilograms?',
  'kg',
  'bags?',
  'percent',
  'per cent',
  'degrees?',
  'cfm',
  'psi',
  'psf',
  'pcf',
  'minutes?',
  'hours?',
  'days?',
  'years?',
  'seconds?',
  'volts?',
  'amps?',
  'dBA?',
  'Btu',
  'gallons?',
].join('|');

/** "in" after a number word is nearly always the preposition ("one in the middle"), so words take the long units only. */
const inDigits = new RegExp(
  String.raw`(?<![\w.])(?:\d[\d,./ -]*|[½¼¾⅛⅜⅝⅞])\s*-?(?:(?:${UNIT_WORDS})\b|%|°|["′″](?!\w))`,
  'gi',
);
const inWords = new RegExp(String.raw`\b(?:${NUMBER_WORDS})[ -](?:(?!in\b)(?:${UNIT_WORDS}))\b`, 'gi');
const rValue = /\bR-?\d+(?:\.\d+)?\b/g;

/**
 * Which numbers with a unit stand in this text?
 * @example bareQuantitiesIn('cut a 6 in hole').map(({ text }) => text) // => ['6 in']
 */
export function bareQuantitiesIn(text: string): BareQuantity[] {
  return [inDigits, inWords, rValue]
    .flatMap((pattern) =>
      [...text.matchAll(pattern)].map((match) => ({ text: match[0].trim(), at: match.index })),
    )
    .sort((a, b) => a.at - b.at);
}
