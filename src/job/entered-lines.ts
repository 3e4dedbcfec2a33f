import type { Field, Fields } from '../calc/declare/field.ts';
import { onOneLine } from '../calc/declare/read-fields.ts';
import { jobFields } from './job-fields.ts';
import type { JobEntries } from './job-file.ts';
import { isSet } from './shape.ts';

/** Where an entry came from is no entry of a form. */
const { of_example: _ofExample, ...FORMS } = jobFields;

const isTyped = (value: unknown): value is string | number =>
  (typeof value === 'string' && value.trim() !== '') || typeof value === 'number';

/**
 * What was typed into a job, under the names that its forms give it: without it nobody can check the figures of a sheet, or work them again.
 * What was left empty is left out, and so is what no form asks for.
 *
 * @example enteredLines({ name: 'Lot 4', home: { length: '66 ft', width: '' } }) // => ['ENTERED', '  Job: Lot 4', '  The home', '    Length of the roof: 66 ft']
 */
export function enteredLines(entries: JobEntries): string[] {
  const lines = linesOf(FORMS, entries, '  ');
  return lines.length === 0 ? [] : ['ENTERED', ...lines];
}

const linesOf = (fields: Fields, entries: Readonly<Record<string, unknown>>, indent: string): string[] =>
  Object.entries(fields).flatMap(([name, field]) => fieldLines(field, entries[name], indent));

function fieldLines(field: Field, typed: unknown, indent: string): string[] {
  const inside = `${indent}  `;
  if (field.kind === 'group')
    return under(field, isSet(typed) ? linesOf(field.of, typed, inside) : [], indent);
  if (field.kind === 'list') {
    const rows = Array.isArray(typed) ? typed.filter(isSet) : [];
    const lines = rows.map((row) => linesOf(field.of, row, '').join('; '));
    return under(
      field,
      lines.flatMap((line, place) => (line === '' ? [] : [`${inside}${place + 1}: ${line}`])),
      indent,
    );
  }
  if (!isTyped(typed)) return [];
  // One entry, one line, whatever a file holds.
  return [`${indent}${field.label}${field.label.endsWith('?') ? '' : ':'} ${onOneLine(String(typed))}`];
}

/** A heading stands only over something. */
const under = ({ label }: Field, lines: readonly string[], indent: string): string[] =>
  lines.length === 0 ? [] : [`${indent}${label}`, ...lines];
