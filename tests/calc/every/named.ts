import type { MovableValue } from '../../../src/calc/checks/moved-values.ts';
import { type Answer, cellValue } from '../../../src/calc/declare/calculation.ts';
import type { Quantity } from '../../../src/quantity/quantity.ts';
import { changedRulebook, restingOn } from '../../../src/rulebook/changed.ts';
import { openRulebook, type Rulebook } from '../../../src/rulebook/rulebook.ts';
import { theProject } from '../../the-project.ts';
import { type Entries, type Leaf, movedBy, withAt } from './entries.ts';

const { data } = theProject();

/** Amounts that an answer shows with their working, by name. */
export type Figures = ReadonlyMap<string, Quantity>;

/** The amounts that an answer shows with their working, those in cells of its tables too, by name. */
export function amountsIn({ figures, tables = {} }: Answer): [name: string, amount: Quantity][] {
  const cells = Object.entries(tables).flatMap(([table, { rows }]) =>
    rows.flatMap((row, place) =>
      Object.entries(row).map(([column, cell]) => [`${table}.${place}.${column}`, cellValue(cell)] as const),
    ),
  );
  const plain = Object.entries(figures).map(([name, { value }]) => [name, value] as const);
  return [...plain, ...cells].flatMap(([name, value]) => (typeof value === 'string' ? [] : [[name, value]]));
}

/** So much more and less of an entry: enough to be no rounding error. */
const SHARES = [1.02, 0.98];
const SAME = 1e-9;

/** What a figure's working names: entries by their ways, rules by their ids, rows of tables by id and row. */
export function namedBy(figure: Quantity): ReadonlySet<string> {
  const seen = new Set<Quantity>();
  const named = new Set<string>();
  const visit = (each: Quantity): void => {
    if (seen.has(each)) return;
    seen.add(each);
    const { origin } = each;
    if (origin.from === 'input') named.add(origin.field);
    if (origin.from === 'rule') named.add(origin.rule);
    if (origin.from === 'rule' && origin.part !== undefined) named.add(`${origin.rule} ${origin.part}`);
    if (origin.from === 'operation' || origin.from === 'method') origin.operands.forEach(visit);
  };
  visit(figure);
  return named;
}

/** Figures that differ, though no working of them, before or after, names one of these. A row that is looked up is told by its name. */
function untold(before: Figures, after: Figures, names: readonly string[], what: string): string[] {
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

/** Which figures move with an entry, a little more of it or a little less, and do not name it? An entry that is no amount moves none. */
export function untoldOfEntry(
  before: Figures,
  entries: Entries,
  { way, field, given }: Leaf,
  figuresOf: (entries: Entries) => Figures,
): string[] {
  if (field.kind !== 'quantity') return [];
  const name = way.join('.');
  const moved = SHARES.map((share) => figuresOf(withAt(entries, way, movedBy(field, given, share))));
  return [...new Set(moved.flatMap((after) => untold(before, after, [name], name)))];
}

/** Which figures move with a number of a rule, and name neither it nor a rule that rests on it? */
export function untoldOfRule(
  before: Figures,
  { rule, part, moves }: MovableValue,
  figuresBy: (rules: Rulebook) => Figures,
): string[] {
  // A range that is upside down is refused, and rightly.
  const moved = moves
    .filter(({ how }) => how !== 'ends swapped')
    .map(({ value }) => figuresBy(openRulebook(changedRulebook(data, { [rule]: value }))));
  const names = [...restingOn(data, rule)];
  return [...new Set(moved.flatMap((after) => untold(before, after, names, `${rule} ${part}`)))];
}
