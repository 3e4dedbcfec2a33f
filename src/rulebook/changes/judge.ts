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
      : way === 'higher is stricter' || way === 'narrower is stricter'
        ? 'up'
        : undefined;
  if (!strict) return 'value';
  return towards.every((each) => each === 'none' || each === strict) ? 'stricter' : 'looser';
}

function tableChange(
  before: TableValue,
  after: TableValue,
  way: string | undefined,
): ValueChange | undefined {
  if (same(before.rows, after.rows) && same(before.columns, after.columns)) return undefined;
  const keys = (table: TableValue) =>
    table.rows.map((row) => row.filter((_, place) => table.columns[place]?.key !== undefined));
  // Rows that came, went or answer to other keys: what is stricter can't be told from the numbers alone.
  if (!same(keys(before), keys(after))) return 'meaning';
  const moved = before.rows.flatMap((row, line) =>
    row.flatMap((cell, place) => {
      const other = after.rows[line]?.[place];
      const unit = (table: TableValue) => table.columns[place]?.unit ?? '1';
      const amounts = (value: typeof cell | undefined, table: TableValue): Amount[] =>
        typeof value === 'number'
          ? [{ amount: value, unit: unit(table) }]
          : Array.isArray(value)
            ? value.map((amount) => ({ amount, unit: unit(table) }))
            : [];
      const [from, to] = [amounts(cell, before), amounts(other, after)];
      if (typeof cell === 'string' && cell !== other) return ['up', 'down'] as Movement[];
      return from.length === to.length
        ? from.map((each, end) => movement(each, to[end]))
        : (['up', 'down'] as Movement[]);
    }),
  );
  return judged(moved, way, false);
}

/**
 * Are two plain values alike, written out?
 * @example same([1, 2], [2, 1]) // => false
 */
export const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
