import type { RuleValue, TableValue } from './schema.ts';
import { cellText, valueHeadline } from './value-text.ts';

/** The rows of a table that another has not, as text. */
function rowsOnlyIn(table: TableValue, other: TableValue): string {
  const known = new Set(other.rows.map((row) => JSON.stringify(row)));
  const rows = table.rows.filter((row) => !known.has(JSON.stringify(row)));
  if (rows.length === 0) return 'no such row';
  return rows
    .map((row) => row.map((cell, place) => cellText(cell, table.columns[place]?.unit)).join(', '))
    .join('; ');
}

/**
 * Two values of a rule that differ as texts that differ: of two tables the rows that differ; where that is the same, how each is made; else all
 * that the rulebook holds.
 * @example valuesApart(undefined, { kind: 'at-least', number: 3, unit: 'in' }) // => ['not there', 'at least 3 in']
 * @example valuesApart({ kind: 'exact', number: 6, unit: 'in' }, { kind: 'exact', number: 6, unit: 'in', formula: { rule: 'a.b' } })[1] // => '6 in, worked out by a formula'
 * @example valuesApart({ kind: 'table', columns: [{ name: 'fill', title: 'Fill' }, { name: 'weight', title: 'Weight', unit: 'lb' }], rows: [['wool', 40], ['paper', 20]] }, { kind: 'table', columns: [{ name: 'fill', title: 'Fill' }, { name: 'weight', title: 'Weight', unit: 'lb' }], rows: [['wool', 41], ['paper', 20]] }) // => ['wool, 40 lb', 'wool, 41 lb']
 */
export function valuesApart(
  before: RuleValue | undefined,
  after: RuleValue | undefined,
): readonly [before: string, after: string] {
  if (!before || !after) return [headline(before), headline(after)];
  const tables = before.kind === 'table' && after.kind === 'table';
  const told: readonly [string, string] = tables
    ? [rowsOnlyIn(before, after), rowsOnlyIn(after, before)]
    : [headline(before), headline(after)];
  if (told[0] !== told[1]) return told;
  const made: readonly [string, string] = [howMade(before), howMade(after)];
  return made[0] === made[1] ? [JSON.stringify(before), JSON.stringify(after)] : made;
}

/** The same number may be given, or worked out from others. */
const howMade = (value: RuleValue): string =>
  `${valueHeadline(value)}, ${'formula' in value && value.formula ? 'worked out by a formula' : 'given as a number'}`;

const headline = (value: RuleValue | undefined): string => (value ? valueHeadline(value) : 'not there');
