import { type Answer, type AnyCalculation, answer, cellValue } from '../../src/calc/declare/calculation.ts';
import { sentence } from '../../src/calc/declare/read-fields.ts';
import { remarkText } from '../../src/calc/declare/remark.ts';
import { type FormatOptions, format } from '../../src/quantity/format.ts';
import { amountIn, type Quantity } from '../../src/quantity/quantity.ts';
import type { UnitName } from '../../src/quantity/units.ts';
import { openRulebook } from '../../src/rulebook/rulebook.ts';
import { theProject } from '../the-project.ts';

export const rules = openRulebook(theProject().data);

export type Entries = Readonly<Record<string, unknown>>;

/** The answer of a calculation; a complaint is thrown. */
export function worked(one: AnyCalculation, entries: Entries): Answer {
  const read = answer(one, entries, rules);
  if (!read.ok) throw new Error(read.problems.map(sentence).join(' '));
  return read.value;
}

/** A figure of it as a number in a unit. */
export function figure(one: AnyCalculation, entries: Entries, name: string, unit: UnitName): number {
  const value = worked(one, entries).figures[name]?.value;
  if (value === undefined || typeof value === 'string')
    throw new Error(`found ${String(value)} for ${name}, expected a quantity`);
  return amountIn(value as Quantity, unit as never);
}

/** What it complains of, a sentence each; empty where it answers. */
export function complaints(one: AnyCalculation, entries: Entries): string[] {
  const read = answer(one, entries, rules);
  return read.ok ? [] : read.problems.map(sentence);
}

/** What an answer says on paper: each figure, each row of a table with its cells between bars, cautions and remarks. */
export function printed(one: AnyCalculation, entries: Entries) {
  const { figures, tables = {}, cautions, remarks } = worked(one, entries);
  const text = (value: Quantity | string | undefined, options?: FormatOptions): string =>
    typeof value === 'object' ? format(value, options) : (value ?? '');
  return {
    figures: Object.fromEntries(
      Object.entries(figures).map(([name, each]) => [name, text(each.value, each.format)]),
    ),
    labels: Object.fromEntries(Object.entries(figures).map(([name, { label }]) => [name, label])),
    tables: Object.fromEntries(
      Object.entries(tables).map(([name, { columns, rows, format: formats }]) => [
        name,
        rows.map((row) =>
          Object.keys(columns)
            .map((column) => text(cellValue(row[column] ?? ''), formats?.[column]))
            .join(' | '),
        ),
      ]),
    ),
    cautions,
    remarks: remarks.map(remarkText),
  };
}

export const within = (share: number, found: number, expected: number): boolean =>
  Math.abs(found - expected) <= share * Math.max(1, Math.abs(expected));
