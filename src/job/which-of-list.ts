import type { Field, Fields } from '../calc/declare/field.ts';
import type { FieldProblem } from '../calc/declare/read-fields.ts';
import { jobFields } from './job-fields.ts';

/**
 * A problem of an entry in a list, its label saying which of them: of thirty trusses each has a place.
 * @example whichOfList({ field: 'roof.trusses_measured.3.at', label: 'Place', found: '"9"', expected: 'a length' }).label // => 'Place, truss 4'
 */
export function whichOfList(problem: FieldProblem): FieldProblem {
  let fields: Fields | undefined = jobFields;
  let which = '';
  let one: string | undefined;
  for (const key of problem.field.split('.')) {
    if (one !== undefined && /^\d+$/.test(key)) {
      which += `, ${one.replace(/^an? /, '')} ${Number(key) + 1}`;
      one = undefined;
      continue;
    }
    const field: Field | undefined = fields?.[key];
    one = field?.kind === 'list' ? field.one : undefined;
    fields = field && 'of' in field ? field.of : undefined;
  }
  return which === '' ? problem : { ...problem, label: problem.label + which };
}
