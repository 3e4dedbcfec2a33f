import { type FormatOptions, format, formatNumber } from './format.ts';
import type { Operator, Quantity } from './quantity.ts';

/** A value that went into a line of working, and whose it is. */
export interface WorkingInput {
  readonly symbol: string;
  readonly label: string;
  readonly text: string;
  /** `yours`: typed for this job. `rule`: out of the rulebook, under the id given. */
  readonly whose: 'yours' | 'rule';
  readonly rule?: string;
  readonly part?: string;
}

/** One line of a shown working: what it is, in symbols, in numbers with units, the result. */
export interface WorkingLine {
  readonly symbol: string;
  readonly label: string;
  readonly symbols: string;
  readonly numbers: string;
  readonly result: string;
  /** A line that rounds says so; rounding never hides inside another line. */
  readonly rounds: boolean;
  readonly inputs: readonly WorkingInput[];
}

const operandsOf = (q: Quantity): readonly Quantity[] =>
  q.origin.from === 'operation' || q.origin.from === 'method' ? q.origin.operands : [];

const isComputed = (q: Quantity): boolean => q.origin.from === 'operation' || q.origin.from === 'method';

const isRounding = (q: Quantity): boolean =>
  q.origin.from === 'operation' && q.origin.operator === 'rounded up';

/** A named result, a rounding and a method each stand on a line of their own; other arithmetic is written into its user's line. */
const hasOwnLine = (q: Quantity): boolean =>
  isComputed(q) && (q.symbol !== undefined || isRounding(q) || q.origin.from === 'method');

/** Everything that quantities were worked from, each once, the earliest first, each quantity itself behind what it rests on. */
function ancestry(...quantities: readonly Quantity[]): Quantity[] {
  const seen = new Set<Quantity>();
  const ordered: Quantity[] = [];
  const visit = (each: Quantity): void => {
    if (seen.has(each)) return;
    seen.add(each);
    for (const operand of operandsOf(each)) visit(operand);
    ordered.push(each);
  };
  quantities.forEach(visit);
  return ordered;
}

/**
 * Which rules does this quantity rest on? Ids in the order of their first use, each once.
 * @example rulesBehind(quantity(2, 'in', { from: 'rule', rule: 'access.hose.diameter' })) // => ['access.hose.diameter']
 */
export function rulesBehind(...quantities: readonly Quantity[]): string[] {
  const ids = ancestry(...quantities).flatMap((q) => (q.origin.from === 'rule' ? [q.origin.rule] : []));
  return [...new Set(ids)];
}

/** How tightly each operator holds together inside another, and what it asks of those inside it: what is looser gets brackets. */
const tightness: Readonly<Record<Operator, { readonly own: number; readonly asked: number }>> = {
  '+': { own: 1, asked: 1 },
  '−': { own: 1, asked: 1 },
  '×': { own: 2, asked: 2 },
  '÷': { own: 2, asked: 2 },
  'smaller of': { own: 0, asked: 1 },
  'larger of': { own: 0, asked: 1 },
  'rounded up': { own: 0, asked: 0 },
  ln: { own: 3, asked: 0 },
};

type Leaf = (q: Quantity) => string;

/** Writes a quantity's arithmetic with each leaf as `leaf` says, with no more brackets than needed. */
function written(q: Quantity, leaf: Leaf, top: boolean): string {
  if (!top && (hasOwnLine(q) || !isComputed(q))) return leaf(q);
  if (q.origin.from === 'method') return q.origin.method;
  if (q.origin.from !== 'operation') return leaf(q);
  const { operator, operands } = q.origin;
  const inner = operands.map((operand, place) => {
    const text = written(operand, leaf, false);
    const nested =
      !hasOwnLine(operand) && operand.origin.from === 'operation' ? operand.origin.operator : undefined;
    if (nested === undefined) return text;
    const looser = tightness[nested].own < tightness[operator].asked;
    const rightOfInverse =
      place > 0 &&
      (operator === '−' || operator === '÷') &&
      tightness[nested].own === tightness[operator].own;
    return looser || rightOfInverse ? `(${text})` : text;
  });
  switch (operator) {
    case 'smaller of':
    case 'larger of':
      return `${operator} ${inner.join(' and ')}`;
    case 'ln':
      return `ln(${inner[0]})`;
    case 'rounded up':
      return `${inner[0]}, rounded up to the next ${inner[1]}`;
    default:
      return inner.join(` ${operator} `);
  }
}

const plainText = (q: Quantity): string =>
  q.origin.from === 'constant' && q.unit === '1' ? formatNumber(q.amount, 6) : format(q);

const bySymbol: Leaf = (q) => q.symbol ?? plainText(q);

/** Numbers in a line of working carry their unit in its plain form, so that R-3.5 per in multiplies like the rest. */
const byNumber: Leaf = plainText;

/**
 * How was this quantity worked out? One line for each named step, in the order of the work; the last line is the quantity.
 * An input or a rule value has no working: the list is empty.
 * @example working(times(quantity(2, 'ft'), quantity(3, 'ft'))).at(-1)?.result // => '6 ft²'
 */
export function working(q: Quantity, options: FormatOptions = {}): WorkingLine[] {
  return ancestry(q)
    .filter((each) => hasOwnLine(each) || (each === q && isComputed(each)))
    .map((each) => ({
      symbol: each.symbol ?? '',
      label: each.label ?? '',
      symbols: written(each, bySymbol, true),
      numbers: each.origin.from === 'method' ? methodNumbers(each) : written(each, byNumber, true),
      result: each === q ? format(each, options) : format(each),
      rounds: isRounding(each),
      inputs: leaves(each).flatMap(asInput),
    }));
}

/** A method's numbers: each value it was given, with its letter. */
const methodNumbers = (q: Quantity): string =>
  operandsOf(q)
    .map((operand) => `${operand.symbol ? `${operand.symbol} = ` : ''}${plainText(operand)}`)
    .join(', ');

/** The values written into one line: its operands, and those of unnamed arithmetic inside it. */
function leaves(q: Quantity): Quantity[] {
  return operandsOf(q).flatMap((operand) =>
    isComputed(operand) && !hasOwnLine(operand) ? leaves(operand) : [operand],
  );
}

function asInput(q: Quantity): WorkingInput[] {
  const shown = { symbol: q.symbol ?? '', label: q.label ?? '', text: format(q) };
  if (q.origin.from === 'input') return [{ ...shown, whose: 'yours' }];
  if (q.origin.from !== 'rule') return [];
  const { rule, part } = q.origin;
  return [{ ...shown, whose: 'rule', rule, ...(part === undefined ? {} : { part }) }];
}
