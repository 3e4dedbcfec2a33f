import { inUnit, same, shapeOf, valueChange } from '../changes/judge.ts';
import type { RuleValue, TableValue } from '../schema.ts';

/** Why a local value can't be held against the rulebook's at all; undefined where it can. */
export function notComparable(
  base: RuleValue,
  local: RuleValue,
): { found: string; expected: string } | undefined {
  if (base.kind !== local.kind)
    return { found: `the kind "${local.kind}"`, expected: `the kind "${base.kind}", as in the rulebook` };
  if (base.kind === 'one-of' || local.kind === 'one-of')
    return {
      found: 'other words for a choice',
      expected: 'a number: calculations know the words of a choice by name',
    };
  if (base.kind === 'table' && local.kind === 'table') {
    if (!same(base.columns, local.columns))
      return { found: 'other columns', expected: 'the columns of the rulebook, word for word' };
    return same(keyCells(base), keyCells(local)) && sameForm(base, local)
      ? undefined
      : {
          found: 'other rows',
          expected: 'the rows of the rulebook, in their order, with other numbers in them',
        };
  }
  if (local.kind === 'exact' && (local.formula !== undefined || local.number === undefined))
    return { found: local.formula === undefined ? 'no number' : 'a formula', expected: 'a number' };
  return same(shapeOf(base), shapeOf(local))
    ? undefined
    : {
        found: `the unit "${'unit' in local ? local.unit : ''}"`,
        expected: `"${'unit' in base ? base.unit : ''}", or another unit for the same`,
      };
}

const keyCells = ({ columns, rows }: TableValue) =>
  rows.map((row) => row.filter((_, place) => columns[place]?.key !== undefined));

/** Words stay as they are, a number a number, two ends two ends. */
const sameForm = (base: TableValue, local: TableValue): boolean =>
  base.rows.every((row, line) => {
    const other = local.rows[line] ?? [];
    return (
      row.length === other.length &&
      row.every((cell, place) =>
        typeof cell === 'string'
          ? cell === other[place]
          : typeof cell === typeof other[place] && typeof other[place] !== 'string',
      )
    );
  });

type Pick = (numbers: readonly number[]) => number;
const least: Pick = (numbers) => Math.min(...numbers);
const most: Pick = (numbers) => Math.max(...numbers);

/**
 * The strictest of some values for one rule, all of one form: of a limit the lowest, of a clearance the greatest, of a range the part that all share.
 * It stands as it was written where one of them is it; a range with ends from several, in the unit they are all written in, else in the first's, the
 * rulebook's. Their order does not matter but for that first one.
 * Undefined where the rule says no way that is stricter: then there is none.
 * @example strictest({ kind: 'at-least', number: 2, unit: 'in' }, [{ kind: 'at-least', number: 3, unit: 'in' }], 'higher is stricter') // => { kind: 'at-least', number: 3, unit: 'in' }
 */
export function strictest(
  base: RuleValue,
  locals: readonly RuleValue[],
  way: string | undefined,
): RuleValue | undefined {
  const pick =
    way === 'lower is stricter'
      ? least
      : way === 'higher is stricter' || way === 'narrower is stricter'
        ? most
        : undefined;
  if (!pick || base.kind === 'one-of') return undefined;
  if (base.kind === 'table') {
    const tables = [base, ...locals] as TableValue[];
    const ends = (line: number, place: number, end: number): number[] =>
      tables.map(({ rows }) => {
        const cell = rows[line]?.[place];
        return Array.isArray(cell) ? (cell[end] ?? Number.NaN) : Number(cell);
      });
    return {
      ...base,
      rows: base.rows.map((row, line) =>
        row.map((cell, place) => {
          if (typeof cell === 'string') return cell;
          return typeof cell === 'number'
            ? pick(ends(line, place, 0))
            : [pick(ends(line, place, 0)), pick(ends(line, place, 1))];
        }),
      ),
    };
  }
  const written = new Set(locals.flatMap((each) => ('unit' in each ? [each.unit] : [])));
  const [unit] = written.size === 1 ? written : [base.unit];
  const all = [base, ...locals];
  if (base.kind === 'between') {
    const end = (part: 'low' | 'high') =>
      all.flatMap((each) => (each.kind === 'between' ? [inUnit(each[part], each.unit, unit as string)] : []));
    return asWritten(
      {
        kind: 'between',
        low: pick(end('low')),
        high: (way === 'narrower is stricter' ? least : pick)(end('high')),
        unit: unit as string,
      },
      all,
    );
  }
  const numbers = all.flatMap((each) =>
    'number' in each ? [inUnit(each.number ?? Number.NaN, each.unit, unit as string)] : [],
  );
  return asWritten({ kind: base.kind, number: pick(numbers), unit: unit as string }, all);
}

/** A value as it was written by one that set it, in its own unit where several did; as it is where it was worked out of several. */
function asWritten<T extends RuleValue & { readonly unit: string }>(
  value: T,
  all: readonly RuleValue[],
): RuleValue {
  const same = all.filter(
    (each): each is T => 'unit' in each && valueChange(each, value, undefined) === undefined,
  );
  const units = [value.unit, ...same.map(({ unit }) => unit).sort()];
  return units.map((each) => same.find(({ unit }) => unit === each)).find(Boolean) ?? value;
}
