import type { Answer, AnswerTable, Cell, Figure } from '../../calc/declare/calculation.ts';
import type { Origin, Quantity } from '../../quantity/quantity.ts';

/** Where what the plan found comes from, by the field of the calculation that would ask for it. */
export type FoundByPlan = Readonly<Record<string, Origin>>;

/**
 * An answer whose figures, and tables, rest on what the plan found. A calculation by itself takes a count for an entry; in a job nobody typed it, and
 * its working must not say so.
 */
export function restingOnPlan(answer: Answer, found: FoundByPlan): Answer {
  const known = new Map<Quantity, Quantity>();
  const rested = (q: Quantity): Quantity => {
    const before = known.get(q);
    if (before) return before;
    const { origin } = q;
    const other = origin.from === 'input' ? found[origin.field] : withOperands(origin);
    const now = other === undefined || other === origin ? q : { ...q, origin: other };
    known.set(q, now);
    return now;
  };
  const withOperands = (origin: Origin): Origin => {
    if (origin.from !== 'operation' && origin.from !== 'method') return origin;
    const operands = origin.operands.map(rested);
    return operands.every((each, place) => each === origin.operands[place])
      ? origin
      : { ...origin, operands };
  };
  const cell = <C extends Cell>(value: C): C | Quantity =>
    typeof value === 'object' && 'origin' in value ? rested(value) : value;
  const figure = (each: Figure): Figure => ({ ...each, value: cell(each.value) });
  const table = (each: AnswerTable): AnswerTable => ({
    ...each,
    rows: each.rows.map((row) => mapped(row, cell)),
  });
  return {
    ...answer,
    figures: mapped(answer.figures, figure),
    ...(answer.tables ? { tables: mapped(answer.tables, table) } : {}),
  };
}

const mapped = <V, W>(all: Readonly<Record<string, V>>, change: (value: V) => W): Record<string, W> =>
  Object.fromEntries(Object.entries(all).map(([name, value]) => [name, change(value)]));
