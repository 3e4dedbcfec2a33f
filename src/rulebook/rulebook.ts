import type { RuleTypes } from '../generated/rule-types.ts';
import type { Dimension } from '../quantity/dimension.ts';
import { amountIn, type Quantity, quantity } from '../quantity/quantity.ts';
import type { UnitName, UnitOf } from '../quantity/units.ts';
import type { Caution, Column, RuleSource, RuleValue, SourceDocument, TableValue } from './schema.ts';
import { type Asked, findRow } from './table.ts';

/** A rule as the loader hands it on: checked, its formula worked out, with its id and its place in the files. */
export interface Rule {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly symbol?: string | undefined;
  readonly value: RuleValue;
  readonly source: RuleSource;
  readonly applies_to: string;
  readonly safety?: string | undefined;
  readonly aliases?: readonly string[] | undefined;
  /** Whose value it is, in a few words, where it is not the rulebook's own: an agency's, or one that follows from an agency's. */
  readonly by?: string;
  /** Where no one folder gave the value whole: whose each of its figures is, with its own source. `source` is then that of the first. */
  readonly mixed?: readonly FiguresFrom[];
  readonly file: string;
  readonly line: number;
}

/** Some figures of a value, whose they are, and where from. */
export interface FiguresFrom {
  /** As they are printed: "40 in". */
  readonly figures: string;
  readonly by: string;
  readonly source: RuleSource;
}

/** What a calculation needs of a rule: small enough to be sent to every phone. */
export type RuleForCalculation = Pick<Rule, 'title' | 'symbol' | 'value' | 'by'>;

/** A caution of an agency's own, in its words. */
export type CautionBeside = Pick<Caution, 'level' | 'says' | 'do'> & {
  readonly agency: string;
  /** What it rests on, in a few words. */
  readonly from: string;
};

export interface LoadedCaution extends Caution {
  readonly id: string;
  readonly file: string;
  readonly line: number;
  /** What agencies say beside it, wherever it stands; none in the rulebook as it was published. */
  readonly beside?: readonly CautionBeside[];
}

/** What a reader is told by a caution. */
export type CautionWords = Pick<LoadedCaution, 'level' | 'says' | 'do' | 'beside'>;

/** A caution as it is sent to a browser: its words, and what it rests on, in a few. */
export type SentCaution = CautionWords & { readonly from: string };

/** A part of the rulebook as it is sent to a browser: some rules, some cautions. */
export interface SentRules {
  readonly version: string;
  readonly rules: Readonly<Record<string, RuleForCalculation>>;
  readonly cautions: Readonly<Record<string, SentCaution>>;
}

/** The whole rulebook as plain data. */
export interface RulebookData {
  readonly version: string;
  readonly rules: Readonly<Record<string, Rule>>;
  readonly documents: Readonly<Record<string, SourceDocument>>;
  readonly cautions: Readonly<Record<string, LoadedCaution>>;
}

export type RuleId = keyof RuleTypes;
type OfKind<K> = { [I in RuleId]: RuleTypes[I] extends { kind: K } ? I : never }[RuleId];
export type SingleId = OfKind<'exact' | 'at-least' | 'at-most'>;
export type RangeId = OfKind<'between'>;
export type ChoiceId = OfKind<'one-of'>;
export type TableId = OfKind<'table'>;
type DimensionOf<I extends RuleId> = RuleTypes[I] extends { dimension: infer D extends Dimension }
  ? D
  : never;
export type ColumnsOf<I extends TableId> = RuleTypes[I] extends { columns: infer C } ? C : never;
type KeysOf<I extends TableId> = RuleTypes[I] extends { keys: infer K extends string } ? K : never;
type Cell<T> = T extends 'word' ? string : T extends Dimension ? Quantity<T> : never;

/** Two ends of a range. */
export interface QuantityRange<D extends Dimension> {
  readonly low: Quantity<D>;
  readonly high: Quantity<D>;
}

/** What a cell of a table holds: a quantity, or the two ends of a range (both the same where it is one value). */
export type Found<D extends Dimension> = QuantityRange<D>;

/**
 * The rulebook as calculations ask it: values come out as quantities that know the rule they are from.
 * A wrong id, or a range asked for as one value, fails the type check; at run time it throws an Error that names the id.
 */
export interface Rulebook {
  readonly version: string;
  /** The value of an exact rule, or the bound of an at-least or at-most rule. */
  readonly value: <I extends SingleId>(id: I) => Quantity<DimensionOf<I>>;
  /** The two ends of a range. */
  readonly range: <I extends RangeId>(id: I) => QuantityRange<DimensionOf<I>>;
  /** The words of a choice. */
  readonly choices: (id: ChoiceId) => readonly string[];
  /** The cell of a table in the row that the keys lead to; undefined where no row answers. A key's own column tells which row that is. */
  readonly find: <I extends TableId, C extends keyof ColumnsOf<I>>(
    id: I,
    keys: { readonly [K in KeysOf<I>]: K extends keyof ColumnsOf<I> ? Cell<ColumnsOf<I>[K]> : never },
    column: C,
  ) => ColumnsOf<I>[C] extends Dimension
    ? Found<ColumnsOf<I>[C]> | undefined
    : ColumnsOf<I>[C] extends { of: infer D extends Dimension; or: infer W }
      ? Found<D> | W | undefined
      : string | undefined;
  /** Whose the value is, where it is not the rulebook's own: the name of an agency. It asks for no value. */
  readonly whose: (id: string) => string | undefined;
  /** A table as it is written, for what asks of all its rows. */
  readonly table: (id: TableId) => TableValue;
}

/**
 * Opens plain rule data for calculations. `seen`, if given, is told each id as it is asked for.
 * @example openRulebook(data).value('access.roof-holes.diameter').amount // => 6
 */
export function openRulebook(
  data: { readonly version: string; readonly rules: Readonly<Record<string, RuleForCalculation>> },
  seen?: (id: string) => void,
): Rulebook {
  const get = (id: string): RuleForCalculation => {
    const rule = data.rules[id];
    if (!rule) throw new Error(`found no rule "${id}" in rulebook ${data.version}, expected one by that id`);
    seen?.(id);
    return rule;
  };
  const wrongKind = (id: string, found: string, expected: string): never => {
    throw new Error(`found rule "${id}" of kind ${found}, expected ${expected}`);
  };
  const tableOf = (id: string): TableValue => {
    const { value } = get(id);
    return value.kind === 'table' ? value : wrongKind(id, value.kind, 'a table');
  };
  return {
    version: data.version,
    value: (id) => {
      const { value, symbol, title } = get(id);
      if (value.kind !== 'exact' && value.kind !== 'at-least' && value.kind !== 'at-most') {
        return wrongKind(id, value.kind, 'one value');
      }
      return fromRule(
        id,
        value.number ?? Number.NaN,
        value.unit,
        symbol,
        title,
        undefined,
        boundOf(value.kind),
      );
    },
    range: (id) => {
      const { value, symbol, title } = get(id);
      if (value.kind !== 'between') return wrongKind(id, value.kind, 'a range');
      return {
        low: fromRule(id, value.low, value.unit, symbol && `${symbol} least`, title, 'low', 'least'),
        high: fromRule(id, value.high, value.unit, symbol && `${symbol} most`, title, 'high', 'most'),
      };
    },
    choices: (id) => {
      const { value } = get(id);
      return value.kind === 'one-of' ? value.choices : wrongKind(id, value.kind, 'a choice');
    },
    whose: (id) => data.rules[id]?.by,
    table: tableOf,
    find: (id, keys, column) => {
      const { symbol, title } = get(id);
      const table = tableOf(id);
      const cell = findRow(
        table,
        askedOf(table.columns, keys as Readonly<Record<string, Quantity | string>>),
        String(column),
      );
      if (cell === undefined || typeof cell === 'string') return cell as never;
      const unit = table.columns.find(({ name }) => name === column)?.unit ?? '1';
      const row = Object.entries(keys as Record<string, Quantity | string>)
        .map(([name, key]) => `${name} ${typeof key === 'string' ? key : `${key.amount} ${key.unit}`}`)
        .join(', ');
      const [low, high] = typeof cell === 'number' ? [cell, cell] : cell;
      return {
        low: fromRule(id, low, unit, symbol, title, row),
        high: fromRule(id, high, unit, symbol, title, row),
      } as never;
    },
  };
}

const boundOf = (kind: RuleValue['kind']): 'least' | 'most' | undefined =>
  kind === 'at-least' ? 'least' : kind === 'at-most' ? 'most' : undefined;

/** A number of a rule as a quantity that knows the rule. */
export function fromRule<D extends Dimension>(
  rule: string,
  amount: number,
  unit: string,
  symbol: string | undefined,
  label: string,
  part?: string,
  bound?: 'least' | 'most',
): Quantity<D> {
  return quantity(
    amount,
    unit as UnitName,
    {
      from: 'rule',
      rule,
      ...(part === undefined ? {} : { part }),
      ...(bound === undefined ? {} : { bound }),
    },
    symbol === undefined ? { label } : { symbol, label },
  ) as Quantity as Quantity<D>;
}

function askedOf(
  columns: readonly Column[],
  keys: Readonly<Record<string, Quantity | string>>,
): Record<string, Asked> {
  return Object.fromEntries(
    Object.entries(keys).map(([name, key]) => {
      if (typeof key === 'string') return [name, key];
      const unit = columns.find((column) => column.name === name)?.unit ?? '1';
      return [name, amountIn(key, unit as UnitOf<Dimension>)];
    }),
  );
}
