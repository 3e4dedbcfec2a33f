import { type Dimension, isReading } from './dimension.ts';
import { type Quantity, QuantityError, quantity } from './quantity.ts';
import { type UnitName, type UnitOf, units, unitWritten, usualUnit } from './units.ts';

/** What was written can't be read as the quantity asked for; says what was found and what is expected. */
export class ParseError extends QuantityError {
  override name = 'ParseError';
  readonly found: string;
  readonly expected: string;
  constructor(found: string, expected: string) {
    super(`found ${found}, expected ${expected}`);
    this.found = found;
    this.expected = expected;
  }
}

export interface Asked<D extends Dimension> {
  readonly dimension: D;
  /** The unit of a number written without one; where absent, a unit must be written. */
  readonly assume?: UnitOf<D>;
  /** An example for the error message, as a person would write it. */
  readonly example?: string;
}

/** ½ and its like, which Unicode takes apart into figures and a stroke of their own. */
const ONE_CHARACTER = /[¼-¾⅐-⅞]/g;

/** An unsigned number as people write it: 12, 2.5, .5, 1/2, 10 1/2, 10-1/2. */
const NUMBER = String.raw`(?:\d+[ -]+\d+\/\d+|\d+\/\d+|\d+\.?\d*|\.\d+)`;
const bareNumber = new RegExp(`^[-+]? ?${NUMBER}$`);
const FEET = String.raw`(?:feet|foot|ft\.?|')`;
const INCHES = String.raw`(?:inches|inch|ins|in\.?|")`;
const feetAndInches = new RegExp(`^(${NUMBER})\\s*${FEET}\\s*[-,]?\\s*(${NUMBER})\\s*${INCHES}?$`, 'i');
const numberAndUnit = new RegExp(`^(${NUMBER})\\s*(.*)$`);
/** 1,500 and 12,345.6, as the tapes, bags and bills of the States have them: a comma before each three figures, and no nought first. */
const GROUPED = /^[-+]? ?\$? ?[1-9]\d{0,2}(?:,\d{3})+(?![,\d])/;
/** 1,5 in is 15 or 1.5; 13 ft -2 in is a range, a difference or 13 ft 2 in. */
const twoMeanings = /\d,\d| -/;
/** 13.10 ft may be 13.1 ft or, as some write it, 13 ft 10 in; 13-8 is 13 ft 8 in to a carpenter, and a range to others. */
const asFeetAndInches = new RegExp(`^(\\d+)(?:\\.10\\s*${FEET}|-(\\d|1[01]))$`, 'i');
/** How framing is named: 16 in on center. */
const ON_CENTRE = /\s*\b(?:o\.? ?c\.?|on cent(?:er|re)s?)$/i;
/** An R as it stands on a bag: R-19, R 3.7. */
const LEADING_R = /^R[- ]?(?=[\d.])/i;
/** A price as it is printed: $1800, −$0.12 per kWh. */
const leadingDollar = new RegExp(`^([-+]?) ?\\$ ?(${NUMBER})`);

/**
 * The value of an unsigned number as matched by NUMBER, which may follow feet; not finite where a fraction has no size (1/0, 0/0), and
 * where one of a whole or more stands behind a whole number (1 3/2) or behind feet.
 */
function amountOf(text: string, follows = ''): number {
  const fraction = /^(?:(\d+)[ -]+)?(\d+)\/(\d+)$/.exec(text);
  if (!fraction) return Number(text);
  const [, whole = follows, over, under] = fraction;
  const part = Number(over) / Number(under);
  return whole && part >= 1 ? Number(text) : Number(whole) + part;
}

/**
 * What was written, with one sign for all that keyboards, phones and other programs write for it (a phone makes straight marks curly, and
 * dashes of hyphens), one space where there were several, and no commas between thousands.
 */
const plainly = (written: string): string =>
  written
    .replace(ONE_CHARACTER, (fraction) => ` ${fraction.normalize('NFKD')}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/[‐-–−]/g, '-')
    .replace(/[‘’′´]/g, "'")
    .replace(/[“”″]|''/g, '"')
    .replace(/[º˚]/g, '°')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(GROUPED, (thousands) => thousands.replace(/,/g, ''));

/** Is this a number without a unit? @example isBareNumber('2 1/2') // => true */
export const isBareNumber = (text: string): boolean => bareNumber.test(plainly(text));

const MOST_CHARACTERS = 60;

/**
 * What quantity did somebody write?
 * Understands `13 ft 10 in`, `13' 10 1/2"`, `3 1/2 in`, `10½ in`, `1.5 lb/ft3`, `-2 in`, `R-19`, `16" o.c.`, `$2.50 per gal`, `2.5` where a
 * unit is assumed, and `0` of all that is not read off a scale; what a piece weighs or measures may be written without the piece, `28 lb`: it
 * is that of the example. Commas between thousands, curly marks, primes and dashes are read as what they stand for: `1,500 ft`, `5’-6”`.
 * Odd cases: nothing written, any other comma between digits (1,5 may mean 15 or 1.5), a hyphen behind a space, `13.10 ft` (13.1 ft or 13 ft
 * 10 in), 13-8 for 13 ft 8 in, tenths of a foot before inches, a fraction over 0, one of a whole or more behind a whole number, a unit of another kind, a missing
 * unit and more than 60 characters are each refused; inches in a feet-and-inches reading stay below 12.
 * @throws ParseError with what was found and what is expected.
 * @example parseQuantity('13 ft 10 in', { dimension: 'length' }).amount // => 166
 */
export function parseQuantity<D extends Dimension>(written: string, asked: Asked<D>): Quantity<D> {
  const expected = expectation(asked);
  const text = plainly(written);
  if (text === '') throw new ParseError('nothing', expected);
  if (text.length > MOST_CHARACTERS) throw new ParseError(`${text.length} characters`, expected);
  const twofold = (wanted: string): never => {
    throw new ParseError(`"${written.trim()}", which could mean two things`, wanted);
  };
  if (twoMeanings.test(text)) twofold(`${expected}, with no comma or loose hyphen`);
  const asR = /resistance/.test(asked.dimension) && LEADING_R.test(text);
  const isLength = asked.dimension === 'length';
  const plain = (asR ? text.replace(LEADING_R, '') : isLength ? text.replace(ON_CENTRE, '') : text).replace(
    leadingDollar,
    '$1$2 $$',
  );
  const unsigned = plain.replace(/^[-+] ?/, '');
  const sign = plain[0] === '-' ? -1 : 1;
  const refuse = (): never => {
    throw new ParseError(`"${written.trim()}"`, expected);
  };

  const [either, feet, inches] = asFeetAndInches.exec(unsigned) ?? [];
  if (isLength && either) twofold(`${inches ? '' : `${feet}.1 ft or `}${feet} ft ${inches ?? 10} in`);
  const tape = feetAndInches.exec(unsigned);
  if (tape && isLength) {
    const [, whole = '', rest = ''] = tape;
    const over = amountOf(rest, '0');
    const all = amountOf(whole) * 12 + over;
    if (!Number.isFinite(all)) return refuse();
    if (/^\d*\.\d/.test(unsigned)) twofold('whole feet before the inches');
    if (over >= 12) throw new ParseError(`"${written.trim()}"`, 'less than 12 in after the feet');
    return made(sign * all, 'in', asked);
  }

  const [, digits = '', unitText = ''] = numberAndUnit.exec(unsigned) ?? refuse();
  const amount = amountOf(digits);
  if (!Number.isFinite(amount)) return refuse();
  if (unitText === '') {
    const unit =
      asked.assume ??
      // An R by itself is that of a whole layer: R-7 is no R per inch.
      ((asR && asked.dimension === 'thermal resistance') ||
      asked.dimension === 'number' ||
      // Nothing is as much in every unit, but for what is read off a scale: 0 °F is not 0 °C.
      (amount === 0 && !isReading(asked.dimension))
        ? usualUnit[asked.dimension]
        : undefined);
    if (!unit) throw new ParseError(`"${written.trim()}", a number with no unit`, expected);
    return made(sign * amount, unit as UnitName, asked);
  }
  const unit = unitWritten(unitText + pieceOf(asked)) ?? unitWritten(unitText);
  if (!unit) throw new ParseError(`"${written.trim()}" with the unknown unit "${unitText}"`, expected);
  if (units[unit].dimension !== asked.dimension) {
    throw new ParseError(`"${written.trim()}" (${units[unit].dimension})`, expected);
  }
  return made(sign * amount, unit, asked);
}

const made = <D extends Dimension>(amount: number, unit: UnitName, asked: Asked<D>): Quantity<D> => {
  if (units[unit].dimension !== asked.dimension)
    throw new ParseError(`${amount} ${unit}`, expectation(asked));
  return quantity(amount, unit) as Quantity as Quantity<D>;
};

/** Which piece is a weight or a size of? That of the example: "/roll". */
const pieceOf = ({ dimension, example = usualUnit[dimension] }: Omit<Asked<Dimension>, 'assume'>): string =>
  (/ of a piece$/.test(dimension) && /\/\w+$/.exec(example ?? '')?.[0]) || '';

const kinds: { readonly [D in Dimension]?: string } = {
  pieces: 'a count',
  money: 'an amount of money',
  'degree-days': 'degree-days',
};

function expectation<D extends Dimension>(asked: Asked<D>): string {
  const article = /^[aeiou]/.test(asked.dimension) ? 'an' : 'a';
  const kind = kinds[asked.dimension] ?? `${article} ${asked.dimension}`;
  return asked.example ? `${kind} such as ${asked.example}` : kind;
}
