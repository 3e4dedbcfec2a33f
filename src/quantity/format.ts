import { amountIn, type Quantity } from './quantity.ts';
import { type UnitName, type UnitOf, units } from './units.ts';

/** The smallest mark read on the tape, as a fraction of an inch. */
export type TapeMark = 8 | 16;

export interface FormatOptions {
  /** Count in this unit; by default the quantity's own. Ignored by a tape reading. */
  readonly unit?: UnitName;
  /** Lengths only: feet, inches and fractions, to the nearest 1/8 or 1/16 in. */
  readonly tape?: TapeMark;
  /** Significant figures, 4 by default. A sum of money has its own, cents or whole dollars, up to 6. */
  readonly figures?: number;
  /** Towards 0 instead of to the nearest: for a greatest value, which a rounding up would pass. Away from 0 for a least value. Nothing below a millionth, and no sum of money, is rounded so. */
  readonly round?: 'down' | 'up';
  /** Adds the metric reading in brackets. */
  readonly metric?: boolean;
}

const metricUnit: Partial<Record<Quantity['dimension'], UnitName>> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  weight: 'kg',
  density: 'kg/m3',
  load: 'kg/m2',
  'thermal resistance': 'm2 K/W',
  'thermal transmittance': 'W/(m2 K)',
};

const MINUS = '−';
const SMALLEST_PLAIN = 1e-6;

/** Floating arithmetic makes 2.2 a trillionth less here and there; rounding down lets that pass. */
const NOISE = 1e-9;
const whole = (size: number, round: FormatOptions['round']): number =>
  round === 'down'
    ? Math.floor(size * (1 + NOISE))
    : round === 'up'
      ? Math.ceil(size * (1 - NOISE))
      : Math.round(size);

/**
 * A number to so many significant figures, without trailing zeros, and never 0 unless it is 0.
 * @example formatNumber(0.00012349) // => '0.0001235'
 */
export function formatNumber(amount: number, figures = 4, round?: FormatOptions['round']): string {
  if (amount === 0) return '0';
  const sign = amount < 0 ? MINUS : '';
  const size = Math.abs(amount);
  if (size < SMALLEST_PLAIN) {
    const [digits, exponent] = size.toExponential(figures - 1).split('e');
    return `${sign}${Number(digits)} × 10^${exponent}`;
  }
  // Whole digits left of the point are all kept: 12,345 bags to four figures would mislead.
  const decimals = Math.min(20, Math.max(0, figures - 1 - Math.floor(Math.log10(size))));
  const scale = 10 ** decimals;
  const fixed = (round ? whole(size * scale, round) / scale : size).toFixed(decimals);
  return sign + (fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed);
}

/**
 * A length as read off a tape: `13 ft 10 1/2 in`.
 * A length too short for the smallest mark, but not 0, is given in decimals instead of as 0.
 * @example formatTape(quantity(166.5, 'in')) // => '13 ft 10 1/2 in'
 */
export function formatTape(
  length: Quantity<'length'>,
  mark: TapeMark = 8,
  round?: FormatOptions['round'],
): string {
  const inches = amountIn(length, 'in');
  const marks = whole(Math.abs(inches) * mark, round);
  if (marks === 0) return `${formatNumber(inches, 2, round)} in`;
  const feet = Math.floor(marks / (12 * mark));
  const ofInches = Math.floor((marks % (12 * mark)) / mark);
  const rest = marks % mark;
  const fraction = rest === 0 ? '' : reduced(rest, mark);
  // Behind feet a nought is told: "13 ft 5/8 in" is read as 13 ft 5 and something.
  const inchText = [ofInches === 0 && fraction !== '' && feet === 0 ? '' : String(ofInches), fraction]
    .filter(Boolean)
    .join(' ');
  const parts = [feet > 0 ? `${feet} ft` : '', inchText === '0' ? '' : `${inchText} in`];
  return (inches < 0 ? MINUS : '') + parts.filter(Boolean).join(' ');
}

function reduced(over: number, under: number): string {
  let [top, bottom] = [over, under];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

/**
 * A quantity as it is printed: number, space, unit sign. A metric length of the rulebook has its tape reading beside it, on the side on which a bound holds.
 * @example format(quantity(1.5, 'lb/ft3')) // => '1.5 lb/ft³'
 * @example format(quantity(9, 'cm', { from: 'rule', rule: 'a.b', bound: 'least' })) // => '9 cm (3 9/16 in)'
 * @example format(quantity(0.375, 'in', { from: 'rule', rule: 'a.b' })) // => '3/8 in'
 */
export function format(q: Quantity, options: FormatOptions = {}): string {
  const text = main(q, options);
  const metric = options.metric ? metricUnit[q.dimension] : undefined;
  if (!metric || metric === q.unit || tapeBeside(q) !== undefined) return text;
  return `${text} (${main(q, { unit: metric, figures: options.figures ?? 4, ...(options.round ? { round: options.round } : {}) })})`;
}

/** The side on which a bound of the rulebook still holds; undefined for what is no bound, which goes to the nearest. */
const safeSide = ({ origin }: Quantity): FormatOptions['round'] =>
  origin.from !== 'rule' || origin.bound === undefined ? undefined : origin.bound === 'least' ? 'up' : 'down';

/** No tape of a crew has these. */
const offTheTape: readonly UnitName[] = ['mm', 'cm', 'm'];

/**
 * What a tape reads in the place of a metric length of the rulebook, on the side on which a bound still holds; undefined for any other quantity.
 * @example tapeBeside(quantity(9, 'cm', { from: 'rule', rule: 'a.b', bound: 'most' })) // => '3 1/2 in'
 */
export const tapeBeside = (q: Quantity, round?: FormatOptions['round']): string | undefined =>
  q.origin.from === 'rule' && offTheTape.includes(q.unit)
    ? formatTape(q as Quantity<'length'>, 16, round ?? safeSide(q))
    : undefined;

function main(q: Quantity, options: FormatOptions): string {
  if (options.tape && q.dimension === 'length')
    return formatTape(q as Quantity<'length'>, options.tape, options.round ?? safeSide(q));
  // Inches of the rulebook that a tape has a mark for; what it has none for keeps its decimals.
  if (!options.unit && q.unit === 'in' && q.origin.from === 'rule' && q.amount % 1 && !((q.amount * 16) % 1))
    return formatTape(q as Quantity<'length'>, 16);
  const beside = options.unit === undefined ? tapeBeside(q, options.round) : undefined;
  if (beside !== undefined) return `${main(q, { ...options, unit: q.unit })} (${beside})`;
  const unit = options.unit ?? q.unit;
  const amount = amountIn(q, unit as UnitOf<Quantity['dimension']>);
  return withSign(
    money(q, amount, options.figures) ?? formatNumber(amount, options.figures, options.round),
    unit,
  );
}

/** From here a sum that was worked out is printed in whole dollars. */
const WHOLE_DOLLARS = 100;

/** Who asks for more figures than this has two sums to tell apart. */
const FIGURES_OF_MONEY = 6;

/** Dollars and cents, or whole dollars; undefined for what is no sum of money, and for less than a cent. */
function money({ dimension, origin: { from } }: Quantity, amount: number, figures = 0): string | undefined {
  const size = Math.abs(amount);
  if (!/^money( rate)?$/.test(dimension) || size < 0.01 || figures > FIGURES_OF_MONEY) return undefined;
  const whole =
    size >= WHOLE_DOLLARS && (from === 'operation' || from === 'method' || Number.isInteger(size));
  return (amount < 0 ? MINUS : '') + size.toFixed(whole ? 0 : 2);
}

/**
 * A printed number with its unit's sign; one bag is not "1 bags".
 * @example withSign('1', 'bag') // => '1 bag'
 */
export function withSign(digits: string, unit: UnitName): string {
  const { sign } = units[unit];
  if (sign === '') return digits;
  if (digits === '1' && (sign === `${unit}s` || sign === `${unit}es`)) return `1 ${unit}`;
  // A price may need more places than two, but never one.
  if (sign.startsWith('$')) return digits.replace(/\d.*/, '$$$&').replace(/\.\d$/, '$&0') + sign.slice(1);
  if (unit === 'h ft2 F/Btu') return `R-${digits}`;
  if (unit === 'h ft2 F/(Btu in)') return `R-${digits} per in`;
  return `${digits} ${sign}`;
}
