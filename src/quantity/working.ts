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

/** Was it worked out? What was typed, read off a rule or counted has no working. @example isComputed(quantity(1, 'ft')) // => false */
export const isComputed = (q: Quantity): boolean =>
  q.origin.from === 'operation' || q.origin.from === 'method';

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

/** How tightly an operator holds together inside another: what is looser than that asks gets brackets. */
const tightness = (operator: Operator): number =>
  '×÷'.includes(operator) ? 2 : '+−'.includes(operator) ? 1 : 0;
const asks = (operator: Operator): number => (/ of$/.test(operator) ? 1 : tightness(operator));

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
    const looser = tightness(nested) < asks(operator);
    const rightOfInverse =
      place > 0 && (operator === '−' || operator === '÷') && tightness(nested) === tightness(operator);
    return looser || rightOfInverse ? `(${text})` : text;
  });
  switch (operator) {
    case 'smaller of':
    case 'larger of':
      return `${operator} ${inner.join(' and ')}`;
    case 'rounded up':
      return `${inner[0]}, rounded up to the next ${inner[1]}`;
    default:
      return inner.join(` ${operator} `);
  }
}

const plainText = (q: Quantity): string =>
  q.origin.from === 'constant' && q.unit === '1' ? formatNumber(q.amount, 6) : format(q);

const bySymbol: Leaf = (q) => q.symbol ?? plainText(q);

/** The quantities that a working gives a line to, in the order of the work. */
const stepsOf = (q: Quantity): Quantity[] =>
  ancestry(q).filter((each) => hasOwnLine(each) || (each === q && isComputed(each)));

const lineOf = (q: Quantity, options: FormatOptions): WorkingLine => ({
  symbol: q.symbol ?? '',
  label: q.label ?? '',
  symbols: written(q, bySymbol, true),
  numbers: q.origin.from === 'method' ? methodNumbers(q) : written(q, plainText, true),
  result: format(q, options),
  rounds: isRounding(q),
  inputs: leaves(q).flatMap(asInput),
});

/**
 * How was this quantity worked out? One line for each named step, in the order of the work; the last line is the quantity.
 * An input or a rule value has no working: the list is empty.
 * @example working(times(quantity(2, 'ft'), quantity(3, 'ft'))).at(-1)?.result // => '6 ft²'
 */
export const working = (q: Quantity, options: FormatOptions = {}): WorkingLine[] =>
  eachInputOnce(stepsOf(q).map((each) => lineOf(each, each === q ? options : {})));

/** The same lines, each input told with the first line that it went into. */
function eachInputOnce(lines: readonly WorkingLine[]): WorkingLine[] {
  const told = new Set<string>();
  const isFirst = (input: WorkingInput): boolean => {
    const reads = JSON.stringify(input);
    const first = !told.has(reads);
    told.add(reads);
    return first;
  };
  return lines.map((line) => ({ ...line, inputs: line.inputs.filter(isFirst) }));
}

/** A figure with the title that its working stands under. */
export interface Titled {
  readonly title: string;
  readonly value: Quantity;
  readonly format?: FormatOptions;
}

/** One of several workings: the steps that it is the first to tell, and what it takes from those before it. */
export interface WorkedOut {
  readonly lines: readonly WorkingLine[];
  readonly above: readonly { readonly under: string; readonly line: WorkingLine }[];
}

/**
 * How were these quantities worked out, told one after the other? Each step is told once: a working names what it takes from one before
 * it, and under which title that stands.
 * @example workings([{ title: 'One', value: plus(number(1), number(2)) }, { title: 'Two', value: plus(number(1), number(2)) }])[1]?.above[0]?.under // => 'One'
 */
export function workings(all: readonly Titled[]): WorkedOut[] {
  const toldUnder = new Map<string, string>();
  return all.map(({ title, value, format: options = {} }) => {
    const steps = stepsOf(value).map((step) => {
      const line = lineOf(step, step === value ? options : {});
      return { step, line, reads: JSON.stringify(line) };
    });
    const fresh = new Map(steps.flatMap((each) => (toldUnder.has(each.reads) ? [] : [[each.reads, each]])));
    const taken = new Set([value, ...[...fresh.values()].flatMap(({ step }) => leaves(step))]);
    const above = new Map<string, WorkedOut['above'][number]>();
    for (const { step, line, reads } of steps) {
      const under = toldUnder.get(reads);
      if (under !== undefined && taken.has(step)) above.set(reads, { under, line });
    }
    for (const reads of fresh.keys()) toldUnder.set(reads, title);
    return {
      lines: eachInputOnce([...fresh.values()].map(({ line }) => line)),
      above: [...above.values()],
    };
  });
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
