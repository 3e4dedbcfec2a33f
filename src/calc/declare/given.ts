import type { Entries } from './entries.ts';
import type { Fields } from './field.ts';
import { oneOf } from './which-of-list.ts';

/** An entry by the label that it has on the form, told of which group or which of a list it is. */
export interface Given {
  readonly label: string;
  readonly value: string;
}

/**
 * What was entered, in the order of the form? Entries that were left empty are left out.
 * @example given({ on: { kind: 'choice', label: 'Roof', hint: '', choices: ['metal'] } }, { on: 'metal' }) // => [{ label: 'Roof', value: 'metal' }]
 */
export function given(fields: Fields, entries: Entries, within = ''): Given[] {
  return Object.entries(fields).flatMap(([name, field]): Given[] => {
    const value = entries[name];
    if (value === undefined || value === null || value === '') return [];
    if (field.kind === 'group') return given(field.of, value as Entries, `${within}${field.label}: `);
    if (field.kind === 'list')
      return (value as readonly Entries[]).flatMap((row, place) =>
        given(field.of, row, `${within}${oneOf(field, place)}: `),
      );
    const label = within + field.label;
    return [{ label: label.charAt(0).toUpperCase() + label.slice(1), value: String(value) }];
  });
}
