import { changedRulebook, restingOn } from '../../rulebook/changed.ts';
import { openRulebook, type Rule, type RulebookData } from '../../rulebook/rulebook.ts';
import type { Check, RuleValue, TableValue } from '../../rulebook/schema.ts';
import { calculations } from '../calculations.ts';
import { answer } from '../declare/calculation.ts';
import { runCheck } from './run-check.ts';

/** A tenth more, a tenth less: enough that a careless slip of a digit is no smaller. */
const MOVES = [1.1, 0.9] as const;

/** One number of the rulebook, with the ways it is moved. */
export interface MovableValue {
  readonly rule: string;
  /** Which number of the rule: empty for the only one, "low", "high", or row and column of a table. */
  readonly part: string;
  readonly moves: readonly { readonly how: string; readonly value: RuleValue }[];
}

/** One number, and whether the checks notice each way of moving it. */
export interface MovedValue {
  readonly rule: string;
  readonly part: string;
  readonly published: boolean;
  /** The moves that no check noticed; none where the number is guarded. */
  readonly unnoticed: readonly string[];
}

/** The least share of values that the checks must guard; a reviewer may rely on it. */
export const LEAST_GUARDED = { published: 0.95, all: 0.9 } as const;

/**
 * How many of these do the checks guard against every move, and what share of them is that?
 * By hand: three of four.
 * @throws RangeError for none at all.
 * @example shareGuarded([{ unnoticed: [] }, { unnoticed: [] }, { unnoticed: [] }, { unnoticed: ['10 % more'] }]) // => { guarded: 3, share: 0.75 }
 */
export function shareGuarded(values: readonly Pick<MovedValue, 'unnoticed'>[]): {
  readonly guarded: number;
  readonly share: number;
} {
  if (values.length === 0)
    throw new RangeError('found no values, expected one or more that feed a calculation');
  const guarded = values.filter(({ unnoticed }) => unnoticed.length === 0).length;
  return { guarded, share: guarded / values.length };
}

const by = (factor: number): string => (factor > 1 ? '10 % more' : '10 % less');
/** Nothing times anything is nothing: a nought is moved by a tenth of a unit. */
const moved = (amount: number, factor: number): number => (amount === 0 ? factor - 1 : amount * factor);

/**
 * Every number of a rule, each with the ways it can be moved; a range is turned upside down too. Words, and values that a formula gives, have none:
 * those are moved with the rules they rest on.
 */
export function movableValues({ id, value }: Rule): MovableValue[] {
  const one = (part: string, make: (factor: number) => RuleValue): MovableValue => ({
    rule: id,
    part,
    moves: MOVES.map((factor) => ({ how: by(factor), value: make(factor) })),
  });
  switch (value.kind) {
    case 'one-of':
      return [];
    case 'table':
      return cellsOf(id, value);
    case 'between': {
      const swapped = { how: 'ends swapped', value: { ...value, low: value.high, high: value.low } };
      const ends = (['low', 'high'] as const).map((part) =>
        one(part, (factor) => ({ ...value, [part]: moved(value[part], factor) })),
      );
      return value.low === value.high
        ? ends
        : ends.map((end) => ({ ...end, moves: [...end.moves, swapped] }));
    }
    default: {
      const { number } = value;
      if (number === undefined || (value.kind === 'exact' && value.formula !== undefined)) return [];
      return [one('', (factor) => ({ ...value, number: moved(number, factor) }))];
    }
  }
}

function cellsOf(rule: string, table: TableValue): MovableValue[] {
  return table.rows.flatMap((row, line) =>
    row.flatMap((cell, place): MovableValue[] => {
      if (typeof cell === 'string') return [];
      const column = table.columns[place]?.name ?? String(place);
      const put = (next: number | [number, number]): RuleValue => ({
        ...table,
        rows: table.rows.map((each, at) =>
          at === line ? each.map((old, here) => (here === place ? next : old)) : each,
        ),
      });
      const name = `row ${line + 1}, ${column}`;
      const ways = (part: string, make: (factor: number) => number | [number, number]): MovableValue => ({
        rule,
        part,
        moves: MOVES.map((factor) => ({ how: by(factor), value: put(make(factor)) })),
      });
      if (typeof cell === 'number') return [ways(name, (factor) => moved(cell, factor))];
      const [low, high] = cell;
      return [
        ways(`${name}, low`, (factor) => [moved(low, factor), high]),
        ways(`${name}, high`, (factor) => [low, moved(high, factor)]),
      ];
    }),
  );
}

/** The rules that some work asks for, its own rulebook watched. */
function asking(data: RulebookData, work: (rules: ReturnType<typeof openRulebook>) => void): Set<string> {
  const asked = new Set<string>();
  work(openRulebook(data, (id) => asked.add(id)));
  return asked;
}

/** Which checks ask for a rule, itself or by way of a value derived from it? By the rule's id. */
export function checksByRule(
  data: RulebookData,
  checks: readonly Check[],
): ReadonlyMap<string, readonly Check[]> {
  const asked = checks.map((check) => ({ check, ids: asking(data, (rules) => runCheck(check, rules)) }));
  return new Map(
    Object.keys(data.rules).map((id) => {
      const resting = [...restingOn(data, id)];
      return [id, asked.filter(({ ids }) => resting.some((each) => ids.has(each))).map(({ check }) => check)];
    }),
  );
}

/** The rules that feed a calculation: asked for by one of the examples or by a check. */
function feedingRules(data: RulebookData, checks: readonly Check[]): ReadonlySet<string> {
  const asked = asking(data, (rules) => {
    for (const each of calculations) answer(each, each.example, rules);
    for (const check of checks) runCheck(check, rules);
  });
  return new Set(
    Object.keys(data.rules).filter((id) => [...restingOn(data, id)].some((each) => asked.has(each))),
  );
}

/**
 * Do the checks bite? Moves every number that feeds a calculation, one at a time, works everything derived from it again, and runs the checks
 * that ask for it. A move is noticed when a check fails, or when the calculation can't be worked any more.
 * @throws Error if a check fails before anything was moved: then nothing can be learnt from it.
 */
export function moveEveryValue(data: RulebookData, checks: readonly Check[]): MovedValue[] {
  const failing = checks.find((check) => !runCheck(check, openRulebook(data)).holds);
  if (failing) throw new Error(`the check "${failing.title}" fails as it is; mend it first`);
  const guards = checksByRule(data, checks);
  const feeding = feedingRules(data, checks);
  return Object.values(data.rules)
    .filter(({ id }) => feeding.has(id))
    .flatMap((rule) =>
      movableValues(rule).map(({ rule: id, part, moves }) => ({
        rule: id,
        part,
        published: rule.source.kind === 'document',
        unnoticed: moves
          .filter(({ value }) => !noticed(changedRulebook(data, { [id]: value }), guards.get(id) ?? []))
          .map(({ how }) => how),
      })),
    );
}

function noticed(data: RulebookData, checks: readonly Check[]): boolean {
  const rules = openRulebook(data);
  return checks.some((check) => {
    try {
      return !runCheck(check, rules).holds;
    } catch {
      // A value that no calculation can work with is noticed by whoever runs it.
      return true;
    }
  });
}
