import {
  type Answer,
  type AnyCalculation,
  answer,
  cellValue,
} from '../../../src/calc/declare/calculation.ts';
import { sentence } from '../../../src/calc/declare/read-fields.ts';
import { amountIn, type Quantity } from '../../../src/quantity/quantity.ts';
import type { Rulebook } from '../../../src/rulebook/rulebook.ts';
import { type Entries, leadsSomewhere } from './entries.ts';

/** What may come out below nought: differences and flows that have a direction. A thermometer's reading always may. */
const mayBeNegative: readonly string[] = [
  'savings.net',
  'test-box.departure',
  'moisture.flow_in',
  'moisture.flow_out',
];

type Value = Quantity | string;

/** Every value of an answer, figures and tables, by its way. */
export function valuesOf({ figures, tables = {} }: Answer): Map<string, Value> {
  const all = new Map<string, Value>();
  for (const [name, { value }] of Object.entries(figures)) all.set(name, value);
  for (const [name, { rows }] of Object.entries(tables))
    for (const [place, row] of rows.entries())
      for (const [column, value] of Object.entries(row))
        all.set(`${name}.${place}.${column}`, cellValue(value));
  return all;
}

const NO_NUMBER = /NaN|Infinity|undefined|\[object/;
/** What arithmetic leaves where two equal amounts are taken from one another is less than this, in any unit: 5.33 × 10^-15. */
const LEFT_BY_ARITHMETIC = 1e-11;
/** Something so small was typed that a figure may be too. */
const TINY = /\.000/;

/** What is wrong with one value; empty where it is sound. */
function unsoundValue(name: string, way: string, value: Value, entries: Entries): string {
  if (typeof value === 'string') return NO_NUMBER.test(value) ? `${way}: ${value}` : '';
  const { amount, unit, dimension } = value;
  const left = amount !== 0 && Math.abs(amount) < LEFT_BY_ARITHMETIC && !TINY.test(JSON.stringify(entries));
  if (!Number.isFinite(amount) || left) return `${way}: ${amount} ${unit}`;
  const free = dimension === 'temperature reading' || mayBeNegative.includes(`${name}.${way}`);
  return amount < 0 && !free ? `${way}: ${amount} ${unit}` : '';
}

/** Does a calculation answer any entries with sound figures, or with sentences that name a field? What is wrong; empty where it does. */
export function unsound(one: AnyCalculation, entries: Entries, rules: Rulebook): string {
  try {
    const read = answer(one, entries, rules);
    if (read.ok)
      return [...valuesOf(read.value)]
        .map(([way, value]) => unsoundValue(one.name, way, value, entries))
        .filter(Boolean)
        .join('; ');
    return read.problems
      .filter(
        ({ field, label, found, expected }) =>
          !leadsSomewhere(one.fields, field.split('.')) ||
          // What was typed is told in quotes, whatever it was.
          [label, found, expected].some((part) => part === '' || NO_NUMBER.test(part.replace(/".*"/, ''))),
      )
      .map((problem) => `a poor sentence: ${sentence(problem)}`)
      .join(' ');
  } catch (error) {
    return `thrown: ${error instanceof Error ? `${error.name}: ${error.message}` : String(error)}`;
  }
}

const SAME = 1e-9;
/** Sums that come to nought leave floating noise, in the unit that they are given in. */
const NOISE = 1e-9;

const told = (value: Value | undefined): string =>
  value === undefined ? 'nothing' : typeof value === 'string' ? value : `${value.amount} ${value.unit}`;

/** What is left of large amounts taken from one another: a deviation of 0 among fills of a million pounds. */
const LEFT_OVER = 1e-13;

/** The largest amount in an answer that measures what another does, in its unit. */
const largestLike = (all: ReadonlyMap<string, Value>, q: Quantity): number =>
  Math.max(
    0,
    ...[...all.values()].flatMap((each) =>
      typeof each === 'string' || each.dimension !== q.dimension
        ? []
        : [Math.abs(amountIn(each, q.unit as never))],
    ),
  );

/** Are two values of one figure the same, in whatever unit each is given? */
function same(a: Value | undefined, b: Value | undefined, all: ReadonlyMap<string, Value>): boolean {
  if (a === undefined || b === undefined || typeof a === 'string' || typeof b === 'string') return a === b;
  if (a.dimension !== b.dimension) return false;
  const other = amountIn(b, a.unit as never);
  const share = SAME * Math.max(Math.abs(a.amount), Math.abs(other));
  return Math.abs(a.amount - other) <= share + NOISE + LEFT_OVER * largestLike(all, a);
}

/** What tells a length in a sentence tells it in the unit typed; the receipt prints what was typed, as it was typed. */
const echoes = (name: string, way: string): boolean =>
  (name === 'receipt' && way.startsWith('parts.')) ||
  (name === 'ways-in' && /\.(ruled_out|unknown)$/.test(way));

/** How do two answers differ? Empty where all figures, cells and cautions are the same. */
export function differences(name: string, a: Answer, b: Answer): string[] {
  const [left, right] = [valuesOf(a), valuesOf(b)];
  return [
    ...[...new Set([...left.keys(), ...right.keys()])]
      .filter((way) => !echoes(name, way) && !same(left.get(way), right.get(way), left))
      .map((way) => `${way}: ${told(left.get(way))} and ${told(right.get(way))}`),
    ...(a.cautions.join() === b.cautions.join() ? [] : [`cautions: ${a.cautions} and ${b.cautions}`]),
  ];
}
