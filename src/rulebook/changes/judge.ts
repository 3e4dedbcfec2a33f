import type { Dimension } from '../../quantity/dimension.ts';
import { amountIn, quantity } from '../../quantity/quantity.ts';
import { isUnitName, type UnitName, type UnitOf, units } from '../../quantity/units.ts';
import type { RuleValue, TableValue } from '../schema.ts';

/** Which way a value went: a safety value allows more or less than it did; any other only changed, or can be compared with nothing. */
export type ValueChange = 'looser' | 'stricter' | 'value' | 'meaning';

/**
 * Everything of a value but its numbers; a unit counts as its dimension, since amounts are held against each other in one unit.
 * @example shapeOf({ kind: 'at-most', number: 2, unit: 'ft' }) // => { kind: 'at-most', unit: 'length' }
 */
export function shapeOf(value: RuleValue): unknown {
  const dimension = (unit: string | undefined) =>
    unit === undefined ? undefined : isUnitName(unit) ? units[unit].dimension : unit;
  if (value.kind === 'table')
    return {
      kind: value.kind,
      columns: value.columns.map((column) => ({ ...column, title: undefined, unit: dimension(column.unit) })),
    };
  return value.kind === 'one-of' ? { kind: value.kind } : { kind: value.kind, unit: dimension(value.unit) };
}

/**
 * Which way did the numbers of a value go? Undefined where they did not.
 * By hand: 1 ft is less than 13 in.
 * @example valueChange({ kind: 'at-most', number: 13, unit: 'in' }, { kind: 'at-most', number: 1, unit: 'ft' }, 'lower is stricter') // => 'stricter'
 */
export function valueChange(
  before: RuleValue,
  after: RuleValue,
  way: string | undefined,
): ValueChange | undefined {
  if (before.kind === 'one-of' && after.kind === 'one-of')
    return same(before.choices, after.choices) ? undefined : 'value';
  if (before.kind === 'table' && after.kind === 'table') return tableChange(before, after, way);
  const moved = endsOf(before).map((from, place) => movement(from, endsOf(after)[place]));
  return judged(moved, way, before.kind === 'between');
}

type Movement = 'up' | 'down' | 'none';

/** Amounts this near to each other are the same amount in two units. */
const SAME = 1e-9;

function movement(before: Amount | undefined, after: Amount | undefined): Movement {
  if (!before || !after) return 'none';
  const old = inUnit(before.amount, before.unit, after.unit);
  if (Math.abs(old - after.amount) <= SAME * Math.max(1, Math.abs(after.amount))) return 'none';
  return after.amount > old ? 'up' : 'down';
}

/** A number with the unit it is written in. */
interface Amount {
  readonly amount: number;
  readonly unit: string;
}

/** A number in another unit of its dimension; as it is where a unit is not in the list. @example inUnit(2, 'ft', 'in') // => 24 */
export const inUnit = (amount: number, from: string, to: string): number =>
  from !== to && isUnitName(from) && isUnitName(to)
    ? amountIn(quantity(amount, from as UnitName), to as UnitOf<Dimension>)
    : amount;

const endsOf = (value: RuleValue): Amount[] => {
  if (value.kind === 'one-of' || value.kind === 'table') return [];
  const { unit } = value;
  return value.kind === 'between'
    ? [
        { amount: value.low, unit },
        { amount: value.high, unit },
      ]
    : [{ amount: value.number ?? Number.NaN, unit }];
};

/**
 * The numbers of a value with their units, two together of a range; of a table those of each cell that no row is found by.
 * @example cellsOf({ kind: 'between', low: 6, high: 8, unit: 'ft' }) // => [[{ amount: 6, unit: 'ft' }, { amount: 8, unit: 'ft' }]]
 */
export const cellsOf = (value: RuleValue): Amount[][] =>
  value.kind === 'table'
    ? value.rows.flatMap((row) =>
        value.columns.flatMap(({ key }, place) => (key === undefined ? [amountsIn(row, value, place)] : [])),
      )
    : [endsOf(value)];

/** What a safety value's direction says of the ways its numbers went; of a range, whose first is the low end, "narrower" may be asked. */
function judged(
  moved: readonly Movement[],
  way: string | undefined,
  range: boolean,
): ValueChange | undefined {
  if (moved.every((each) => each === 'none')) return undefined;
  const inward = moved.map(
    (each, place): Movement => (place === 0 ? each : each === 'up' ? 'down' : each === 'down' ? 'up' : each),
  );
  const towards = way === 'narrower is stricter' && range ? inward : moved;
  const strict: Movement | undefined =
    way === 'lower is stricter'
      ? 'down'
      : way === 'higher is stricter' || (way === 'narrower is stricter' && range)
        ? 'up'
        : undefined;
  if (!strict) return 'value';
  return towards.every((each) => each === 'none' || each === strict) ? 'stricter' : 'looser';
}

/** The cells that a row is found by, with their units: the same number in another unit finds another row. */
const keysOf = ({ columns, rows }: TableValue): string[] =>
  rows.map((row) =>
    JSON.stringify(
      columns.flatMap(({ key, unit }, place) =>
        key === undefined ? [] : [row[place] ?? null, unit ?? null],
      ),
    ),
  );

function tableChange(
  before: TableValue,
  after: TableValue,
  way: string | undefined,
): ValueChange | undefined {
  if (same(before.rows, after.rows) && same(before.columns, after.columns)) return undefined;
  const [old, now] = [keysOf(before), keysOf(after)];
  const moved = before.rows.flatMap((row, line) => {
    const other = after.rows[now.indexOf(old[line] ?? '')];
    return other ? rowMovements([row, before], [other, after]) : [];
  });
  const numbers = judged(moved, way, false);
  if (same(old, now) || numbers === 'looser') return numbers;
  // Rows that came, went or answer to other keys: what is stricter can't be told from the numbers of the others alone.
  return 'meaning';
}

type TableRow = TableValue['rows'][number];

/** Which way did each number of a row go? A word that is another goes both ways: neither is stricter. */
const rowMovements = (
  [row, before]: readonly [TableRow, TableValue],
  [other, after]: readonly [TableRow, TableValue],
): Movement[] =>
  row.flatMap((cell, place): Movement[] => {
    const [from, to] = [amountsIn(row, before, place), amountsIn(other, after, place)];
    if ((typeof cell === 'string' && cell !== other[place]) || from.length !== to.length)
      return ['up', 'down'];
    return from.map((each, end) => movement(each, to[end]));
  });

/** The numbers of a cell, in the unit of its column: none of a word, two of a range. */
function amountsIn(row: TableRow, table: TableValue, place: number): Amount[] {
  const [cell, unit] = [row[place], table.columns[place]?.unit ?? '1'];
  if (typeof cell === 'number') return [{ amount: cell, unit }];
  return Array.isArray(cell) ? cell.map((amount) => ({ amount, unit })) : [];
}

/**
 * Are two plain values alike, written out?
 * @example same([1, 2], [2, 1]) // => false
 */
export const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
