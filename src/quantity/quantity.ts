import {
  type Dimension,
  isReading,
  type Product,
  productOf,
  type Quotient,
  quotientOf,
} from './dimension.ts';
import { type UnitName, type UnitOf, units, usualUnit } from './units.ts';

/** Where a quantity came from. */
export type Origin =
  /** Typed or measured by the person whose job it is. */
  | { readonly from: 'input'; readonly field: string }
  /** A value of the rulebook; `part` names an end of a range, or the cell of a table, `bound` what may not be undershot or passed. */
  | {
      readonly from: 'rule';
      readonly rule: string;
      readonly part?: string;
      readonly bound?: 'least' | 'most';
    }
  /** A plain number of arithmetic or geometry. */
  | { readonly from: 'constant' }
  /** Arithmetic on other quantities. */
  | { readonly from: 'operation'; readonly operator: Operator; readonly operands: readonly Quantity[] }
  /** One named step of a longer method (a search, a quadrature, a closed form), told in words or symbols. */
  | { readonly from: 'method'; readonly method: string; readonly operands: readonly Quantity[] };

export type Operator = '+' | '−' | '×' | '÷' | 'smaller of' | 'larger of' | 'rounded up';

/** A number, its unit, and where it came from. Immutable. */
export interface Quantity<D extends Dimension = Dimension> {
  readonly amount: number;
  readonly unit: UnitName;
  readonly dimension: D;
  readonly origin: Origin;
  /** The letter that stands for it in a working; a quantity without one is written out where it is used. */
  readonly symbol?: string;
  /** What it is, in words. */
  readonly label?: string;
}

/** Two quantities that can't be put together, or an amount that is no number. */
export class QuantityError extends Error {
  override name = 'QuantityError';
}

interface Naming {
  readonly symbol?: string;
  readonly label?: string;
}

/**
 * Makes a quantity. With no origin given it is a constant.
 * @throws QuantityError if the amount is NaN or infinite.
 * @example quantity(3.5, 'in').dimension // => 'length'
 */
export function quantity<U extends UnitName>(
  amount: number,
  unit: U,
  origin: Origin = { from: 'constant' },
  naming: Naming = {},
): Quantity<(typeof units)[U]['dimension']> {
  if (!Number.isFinite(amount)) {
    throw new QuantityError(`found ${amount} ${unit}, expected a finite number`);
  }
  return { amount, unit, dimension: units[unit].dimension, origin, ...naming };
}

/** A quantity the person typed. @example input(66, 'ft', 'home.length', { symbol: 'L' }).origin.from // => 'input' */
export const input = <U extends UnitName>(amount: number, unit: U, field: string, naming: Naming = {}) =>
  quantity(amount, unit, { from: 'input', field }, naming);

/** A pure number. @example number(2).unit // => '1' */
export const number = (amount: number, naming: Naming = {}): Quantity<'number'> =>
  quantity(amount, '1', { from: 'constant' }, naming);

/**
 * The amount of a quantity counted in a unit.
 * @throws QuantityError if the unit measures something else.
 * @example amountIn(quantity(2, 'ft'), 'in') // => 24
 */
export function amountIn<D extends Dimension>(q: Quantity<D>, unit: UnitOf<D>): number {
  if (q.unit === unit) return q.amount;
  const facts = units[unit];
  if (facts.dimension !== q.dimension) {
    throw new QuantityError(`found ${spoken(q)} (${q.dimension}), expected a ${facts.dimension} in ${unit}`);
  }
  if (facts.dimension === 'temperature reading') {
    const from: { readonly size: number; readonly zero?: number } = units[q.unit];
    const to: { readonly size: number; readonly zero?: number } = facts;
    return (q.amount * from.size + (from.zero ?? 0) - (to.zero ?? 0)) / to.size;
  }
  // A whole ratio of sizes (12 in to the foot) is multiplied or divided whole, so tape readings stay exact.
  const from = units[q.unit].size;
  return from >= facts.size ? q.amount * (from / facts.size) : q.amount / (facts.size / from);
}

/** A length as a plain number of inches, for arithmetic with places of the tape. @example inches(quantity(2, 'ft')) // => 24 */
export const inches = (length: Quantity<'length'>): number => amountIn(length, 'in');

/** The same quantity counted in another unit; its name and origin stay. @example inUnit(quantity(24, 'in'), 'ft').amount // => 2 */
export const inUnit = <D extends Dimension>(q: Quantity<D>, unit: UnitOf<D>): Quantity<D> => ({
  ...q,
  amount: amountIn(q, unit),
  unit,
});

/**
 * Gives a quantity its letter and its name, so that a working shows it on a line of its own.
 * @example named(quantity(66, 'ft'), 'L', 'Length').symbol // => 'L'
 */
export const named = <D extends Dimension>(q: Quantity<D>, symbol: string, label: string): Quantity<D> => ({
  ...q,
  symbol,
  label,
});

const spoken = (q: Quantity): string => `${q.label ? `${q.label} ` : ''}${q.amount} ${q.unit}`;

function operation<D extends Dimension>(
  amount: number,
  unit: UnitName,
  operator: Operator,
  operands: readonly Quantity[],
): Quantity<D> {
  return quantity(amount, unit, { from: 'operation', operator, operands }) as Quantity<D>;
}

/** Stops where two quantities of different dimension are compared or added; the type check stops most before this. */
function sameDimension(a: Quantity, b: Quantity, verb: string): void {
  if (a.dimension !== b.dimension) {
    throw new QuantityError(
      `can't ${verb} ${spoken(a)} (${a.dimension}) and ${spoken(b)} (${b.dimension}): both must measure the same thing`,
    );
  }
}

/** Stops where a thermometer's or a sound meter's reading is reckoned with as if it were an amount. */
function amounts(verb: string, ...all: readonly Quantity[]): void {
  const reading = all.find(({ dimension }) => isReading(dimension));
  if (reading) {
    throw new QuantityError(
      `can't ${verb} ${spoken(reading)}, which is a reading of a scale: take the difference of two readings`,
    );
  }
}

/**
 * How much warmer is a than b? The difference of two thermometer readings, in Fahrenheit degrees.
 * @example warmerBy(quantity(20, 'C'), quantity(50, 'F')).amount // => 18
 */
export const warmerBy = (
  a: Quantity<'temperature reading'>,
  b: Quantity<'temperature reading'>,
): Quantity<'temperature'> => operation(amountIn(a, 'F') - amountIn(b, 'F'), 'F difference', '−', [a, b]);

/** a + b, in the unit of a. @example plus(quantity(1, 'ft'), quantity(6, 'in')).amount // => 1.5 */
export function plus<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): Quantity<D> {
  sameDimension(a, b, 'add');
  amounts('add', a);
  return operation(a.amount + amountIn(b, a.unit as UnitOf<D>), a.unit, '+', [a, b]);
}

/** a − b, in the unit of a. @example minus(quantity(1, 'ft'), quantity(6, 'in')).amount // => 0.5 */
export function minus<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): Quantity<D> {
  sameDimension(a, b, 'subtract');
  amounts('subtract', a);
  return operation(a.amount - amountIn(b, a.unit as UnitOf<D>), a.unit, '−', [a, b]);
}

/**
 * How much more is a than b? a − b, in the unit of a, and nought where a is no more: also where floating noise alone sets two equal
 * amounts apart. Its working tells nought as the larger of 0 and the difference.
 * @example excess(quantity(1, 'ft'), quantity(30.48, 'cm')).amount // => 0
 */
export function excess<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): Quantity<D> {
  const more = minus(a, b);
  if (compare(a, b) > 0) return more;
  return { ...larger({ ...more, amount: 0, origin: { from: 'constant' } }, more), amount: 0 };
}

/**
 * All of them added up, in the unit of the first.
 * @throws QuantityError for an empty list.
 * @example total([quantity(1, 'ft'), quantity(6, 'in')]).amount // => 1.5
 */
export function total<D extends Dimension>(all: readonly Quantity<D>[]): Quantity<D> {
  const [first, ...rest] = all;
  if (!first) throw new QuantityError('found nothing to add up, expected one quantity or more');
  amounts('add', first);
  return rest.length === 0 ? first : operation(sum(first, all), first.unit, '+', all);
}

function sum(first: Quantity, all: readonly Quantity[]): number {
  return all.reduce((running, q) => {
    sameDimension(first, q, 'add');
    return running + amountIn(q, first.unit);
  }, 0);
}

/** The result of × or ÷: a pure number leaves the other's unit alone, else the dimension's usual unit serves. */
function combined<D extends Dimension>(
  a: Quantity,
  b: Quantity,
  operator: '×' | '÷',
  dimension: Dimension | undefined,
): Quantity<D> {
  const divide = operator === '÷';
  amounts(divide ? 'divide' : 'multiply', a, b);
  if (divide && b.amount === 0) {
    throw new QuantityError(`can't divide ${spoken(a)} by ${spoken(b)}: expected a divisor other than 0`);
  }
  const unit = dimension && usualUnit[dimension];
  if (!dimension || !unit) {
    throw new QuantityError(
      `can't ${divide ? 'divide' : 'multiply'} ${spoken(a)} (${a.dimension}) ${divide ? 'by' : 'and'} ${spoken(b)} (${b.dimension}): nothing here is measured that way`,
    );
  }
  if (b.dimension === 'number') {
    const factor = b.amount * units[b.unit].size;
    return operation(divide ? a.amount / factor : a.amount * factor, a.unit, operator, [a, b]);
  }
  if (a.dimension === 'number' && !divide) {
    return operation(a.amount * units[a.unit].size * b.amount, b.unit, operator, [a, b]);
  }
  const left = a.amount * units[a.unit].size;
  const right = b.amount * units[b.unit].size;
  return operation((divide ? left / right : left * right) / units[unit].size, unit, operator, [a, b]);
}

/** a × b. @throws QuantityError if nothing is measured that way. @example times(quantity(2, 'ft'), quantity(3, 'ft')).unit // => 'ft2' */
export const times = <A extends Dimension, B extends Dimension>(
  a: Quantity<A>,
  b: Quantity<B>,
): Quantity<Product<A, B>> => combined(a, b, '×', productOf(a.dimension, b.dimension));

/** a ÷ b. @throws QuantityError if b is 0 or nothing is measured that way. @example over(quantity(6, 'ft2'), quantity(2, 'ft')).amount // => 36 */
export const over = <A extends Dimension, B extends Dimension>(
  a: Quantity<A>,
  b: Quantity<B>,
): Quantity<Quotient<A, B>> => combined(a, b, '÷', quotientOf(a.dimension, b.dimension));

/** Two amounts nearer than this share of them are one amount told in two units: 10 in turned into feet and centimetres. */
const ONE_AMOUNT = 1e-9;

/**
 * Negative if a is less, positive if a is more, 0 if they are equal but for the noise of turning one unit into another.
 * @example compare(quantity(1, 'ft'), quantity(12, 'in')) // => 0
 * @example compare(quantity(24.13, 'cm'), quantity(9.5, 'in')) // => 0
 */
export function compare<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): number {
  sameDimension(a, b, 'compare');
  const other = amountIn(b, a.unit as UnitOf<D>);
  const more = a.amount - other;
  return Math.abs(more) <= ONE_AMOUNT * Math.max(Math.abs(a.amount), Math.abs(other)) ? 0 : more;
}

/** The smaller of two, in the unit of the first. @example smaller(quantity(1, 'ft'), quantity(6, 'in')).amount // => 0.5 */
export function smaller<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): Quantity<D> {
  return operation(compare(a, b) <= 0 ? a.amount : amountIn(b, a.unit as UnitOf<D>), a.unit, 'smaller of', [
    a,
    b,
  ]);
}

/** The larger of two, in the unit of the first. @example larger(quantity(1, 'ft'), quantity(6, 'in')).amount // => 1 */
export function larger<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): Quantity<D> {
  return operation(compare(a, b) >= 0 ? a.amount : amountIn(b, a.unit as UnitOf<D>), a.unit, 'larger of', [
    a,
    b,
  ]);
}

/**
 * The next whole multiple of a step, at or above: the rounding shows on a line of its own in the working.
 * A billionth of a step of floating noise is let pass, so that 7.0000000000001 bags stay 7; of many steps a trillionth of them.
 * @throws QuantityError if the step is not above 0.
 * @example roundedUp(quantity(6.2, 'bag'), quantity(1, 'bag')).amount // => 7
 */
export function roundedUp<D extends Dimension>(a: Quantity<D>, step: Quantity<NoInfer<D>>): Quantity<D> {
  sameDimension(a, step, 'round');
  const size = amountIn(step, a.unit as UnitOf<D>);
  if (!(size > 0)) throw new QuantityError(`found a rounding step of ${spoken(step)}, expected one above 0`);
  // Adding 0 turns the −0 that Math.ceil gives for a small negative into 0.
  const steps = a.amount / size;
  return operation(Math.ceil(steps - Math.max(1e-9, 1e-12 * steps)) * size + 0, a.unit, 'rounded up', [
    a,
    step,
  ]);
}

/**
 * One named step of a longer method: the method computes with plain numbers, and hands over amount, unit and
 * what it was worked from.
 * @example byMethod('half the width', [quantity(166, 'in')], 83, 'in').origin.from // => 'method'
 */
export const byMethod = <U extends UnitName>(
  method: string,
  operands: readonly Quantity[],
  amount: number,
  unit: U,
): Quantity<(typeof units)[U]['dimension']> => quantity(amount, unit, { from: 'method', method, operands });
