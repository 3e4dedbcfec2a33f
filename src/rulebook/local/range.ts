import type { RuleValue } from '../schema.ts';

/** The ends of a range, or of one in a table, whose lower is not below its upper; undefined where there is none. */
export function rangeProblem(value: RuleValue): string | undefined {
  if (value.kind === 'between') return value.low < value.high ? undefined : `${value.low} to ${value.high}`;
  if (value.kind !== 'table') return undefined;
  const cell = value.rows.flat().find((each) => Array.isArray(each) && each[0] > each[1]);
  return cell === undefined ? undefined : `[${String(cell)}]`;
}
