import type { Quantity } from '../../../src/quantity/quantity.ts';

/** Amounts that an answer shows with their working, by name. */
export type Figures = ReadonlyMap<string, Quantity>;

/** So much more and less of an entry: enough to be no rounding error. */
export const SHARES = [1.02, 0.98];
const SAME = 1e-9;

/** What a figure's working names: entries by their ways, rules by their ids, rows of tables by id and row. */
function namedBy(figure: Quantity): ReadonlySet<string> {
  const seen = new Set<Quantity>();
  const named = new Set<string>();
  const visit = (each: Quantity): void => {
    if (seen.has(each)) return;
    seen.add(each);
    const { origin } = each;
    if (origin.from === 'input') named.add(origin.field);
    if (origin.from === 'rule') named.add(origin.rule).add(`${origin.rule} ${origin.part ?? ''}`);
    if (origin.from === 'operation' || origin.from === 'method') origin.operands.forEach(visit);
  };
  visit(figure);
  return named;
}

/** Figures that differ, though no working of them, before or after, names one of these. A row that is looked up is told by its name. */
export function untold(before: Figures, after: Figures, names: readonly string[], what: string): string[] {
  return [...before].flatMap(([name, figure]) => {
    const other = after.get(name);
    if (!other || Math.abs(figure.amount - other.amount) <= SAME * Math.abs(figure.amount)) return [];
    const [then, now] = [namedBy(figure), namedBy(other)];
    const otherRow = [...now].some((each) => each.includes(' ') && !then.has(each));
    return otherRow || names.some((each) => then.has(each) || now.has(each))
      ? []
      : [`${name} moves with ${what}, and does not name it`];
  });
}
