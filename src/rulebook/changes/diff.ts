import type { Dimension } from '../../quantity/dimension.ts';
import { amountIn, quantity } from '../../quantity/quantity.ts';
import { isUnitName, type UnitName, type UnitOf, units } from '../../quantity/units.ts';
import type { Rule, RulebookData } from '../rulebook.ts';
import type { RuleValue, TableValue } from '../schema.ts';

/** What kind of change a rule underwent, the gravest that applies. */
export const changeKinds = [
  'looser',
  'stricter',
  'value',
  'meaning',
  'source',
  'wording',
  'new',
  'gone',
] as const;
export type ChangeKind = (typeof changeKinds)[number];

/** What each word means, to a reader. */
export const changeMeaning: Readonly<Record<ChangeKind, string>> = {
  looser: 'A safety value allows more than it did.',
  stricter: 'A safety value allows less than it did.',
  value: 'A number or word that is no safety value, or can be called neither stricter nor looser.',
  meaning: 'What the value is or what it applies to: its kind, its unit, its scope, which way is stricter.',
  source: 'Where it comes from, or how it was read.',
  wording: 'Words only.',
  new: 'A rule that was not there.',
  gone: 'A rule that is there no more.',
};

/** One rule that differs between two rulebooks. */
export interface RuleChange {
  readonly id: string;
  readonly kind: ChangeKind;
  readonly before: Rule | undefined;
  readonly after: Rule | undefined;
}

/**
 * What changed from one rulebook to another? One change a rule, in the order of ids; a rule that was renamed is followed by its aliases.
 * @example diffRulebooks(data, data) // => []
 */
export function diffRulebooks(before: RulebookData, after: RulebookData): RuleChange[] {
  const renamed = new Map(
    Object.values(after.rules).flatMap(({ id, aliases = [] }) =>
      aliases.map((old): [string, string] => [old, id]),
    ),
  );
  const now = (id: string): string => (after.rules[id] ? id : (renamed.get(id) ?? id));
  const old = new Map(Object.values(before.rules).map((rule): [string, Rule] => [now(rule.id), rule]));
  return [...new Set([...old.keys(), ...Object.keys(after.rules)])].sort().flatMap((id): RuleChange[] => {
    const [from, to] = [old.get(id), after.rules[id]];
    const kind = changeOf(from, to);
    return kind ? [{ id, kind, before: from, after: to }] : [];
  });
}

function changeOf(before: Rule | undefined, after: Rule | undefined): ChangeKind | undefined {
  if (!before || !after) return before ? 'gone' : after ? 'new' : undefined;
  const way = after.safety ?? before.safety;
  if (!same(shapeOf(before.value), shapeOf(after.value)) || before.safety !== after.safety) return 'meaning';
  const value = valueChange(before.value, after.value, way);
  if (value) return value;
  if (before.applies_to !== after.applies_to) return 'meaning';
  if (!same(before.source, after.source)) return 'source';
  return before.title === after.title && before.says === after.says && before.symbol === after.symbol
    ? undefined
    : 'wording';
}

/** Everything of a value but its numbers; a unit counts as its dimension, since amounts are held against each other in one unit. */
function shapeOf(value: RuleValue): unknown {
  const dimension = (unit: string | undefined) =>
    unit === undefined ? undefined : isUnitName(unit) ? units[unit].dimension : unit;
  if (value.kind === 'table')
    return {
      kind: value.kind,
      columns: value.columns.map((column) => ({ ...column, title: undefined, unit: dimension(column.unit) })),
    };
  return value.kind === 'one-of' ? { kind: value.kind } : { kind: value.kind, unit: dimension(value.unit) };
}

/** Which way did the numbers of a value go? Undefined where they did not. */
function valueChange(before: RuleValue, after: RuleValue, way: string | undefined): ChangeKind | undefined {
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
  const old = inUnitOf(before, after);
  if (Math.abs(old - after.amount) <= SAME * Math.max(1, Math.abs(after.amount))) return 'none';
  return after.amount > old ? 'up' : 'down';
}

interface Amount {
  readonly amount: number;
  readonly unit: string;
}

const inUnitOf = (from: Amount, to: Amount): number =>
  isUnitName(from.unit) && isUnitName(to.unit)
    ? amountIn(quantity(from.amount, from.unit as UnitName), to.unit as UnitOf<Dimension>)
    : from.amount;

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
function judged(moved: readonly Movement[], way: string | undefined, range: boolean): ChangeKind | undefined {
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

function tableChange(before: TableValue, after: TableValue, way: string | undefined): ChangeKind | undefined {
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

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
