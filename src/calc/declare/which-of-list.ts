import type { Field, Fields } from './field.ts';
import type { FieldProblem } from './read-fields.ts';

/**
 * A problem of an entry in a list, its label saying which of them: of thirty trusses each has a place.
 * @example whichOfList(calculationNamed('test-box').fields, { field: 'fills.2.tare', label: 'Tare weight', found: '"9"', expected: 'a weight' }).label // => 'Tare weight, fill 3'
 */
export function whichOfList(of: Fields, problem: FieldProblem): FieldProblem {
  let fields: Fields | undefined = of;
  let { label } = problem;
  let one: string | undefined;
  for (const key of problem.field.split('.')) {
    if (one !== undefined && /^\d+$/.test(key)) {
      label += `, ${one.replace(/^an? /, '')} ${Number(key) + 1}`;
      one = undefined;
      continue;
    }
    const field: Field | undefined = fields?.[key];
    one = field?.kind === 'list' ? field.one : undefined;
    fields = field && 'of' in field ? field.of : undefined;
  }
  return { ...problem, label };
}
