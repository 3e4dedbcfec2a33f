import { amountIn, type Quantity } from './quantity.ts';
import { type UnitName, type UnitOf, units } from './units.ts';

/** The smallest mark read on the tape, as a fraction of an inch. */
export type TapeMark = 8 | 16;

export interface FormatOptions {
  /** Count in this unit; by default the quantity's own. Ignored by a tape reading. */
  readonly unit?: UnitName;
  /** Lengths only: feet, inches and fractions, to the nearest 1/8 or 1/16 in. */
  readonly tape?: TapeMark;
  /** Significant figures, 4 by default. */
  readonly figures?: number;
  /** Towards 0 instead of to the nearest: for a greatest value, which a rounding up would pass. */
  readonly round?: 'down';
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
  round === 'down' ? Math.floor(size * (1 + NOISE)) : Math.round(size);

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
  const fixed = (round === 'down' ? whole(size * scale, round) / scale : size).toFixed(decimals);
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
  const inchText = [ofInches === 0 && fraction !== '' ? '' : String(ofInches), fraction]
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
 * A quantity as it is printed: number, space, unit sign.
 * @example format(quantity(1.5, 'lb/ft3')) // => '1.5 lb/ft³'
 */
export function format(q: Quantity, options: FormatOptions = {}): string {
  const text = main(q, options);
  const metric = options.metric ? metricUnit[q.dimension] : undefined;
  if (!metric || metric === q.unit) return text;
  return `${text} (${main(q, { unit: metric, figures: options.figures ?? 4, ...(options.round ? { round: options.round } : {}) })})`;
}

function main(q: Quantity, options: FormatOptions): string {
  if (options.tape && q.dimension === 'length')
    return formatTape(q as Quantity<'length'>, options.tape, options.round);
  const unit = options.unit ?? q.unit;
  const amount = amountIn(q, unit as UnitOf<Quantity['dimension']>);
  const cents = isMoney(q) && options.figures === undefined && Math.abs(amount) < CENTS_BELOW;
  return withSign(
    cents && Math.abs(amount) >= 0.01 ? money(amount) : formatNumber(amount, options.figures, options.round),
    unit,
  );
}

/** Dollars below this are printed with their cents; a price of heat or volume may need more places than two. */
const CENTS_BELOW = 100;
const isMoney = ({ dimension }: Quantity): boolean => dimension === 'money' || dimension === 'money rate';
const money = (amount: number): string => `${amount < 0 ? MINUS : ''}${Math.abs(amount).toFixed(2)}`;

/**
 * A printed number with its unit's sign; one bag is not "1 bags".
 * @example withSign('1', 'bag') // => '1 bag'
 */
export function withSign(digits: string, unit: UnitName): string {
  const { sign } = units[unit];
  if (sign === '') return digits;
  if (digits === '1' && (sign === `${unit}s` || sign === `${unit}es`)) return `1 ${unit}`;
  if (sign.startsWith('$'))
    return (digits.startsWith(MINUS) ? `${MINUS}$${digits.slice(1)}` : `$${digits}`) + sign.slice(1);
  if (unit === 'h ft2 F/Btu') return `R-${digits}`;
  if (unit === 'h ft2 F/(Btu in)') return `R-${digits} per in`;
  return `${digits} ${sign}`;
}
