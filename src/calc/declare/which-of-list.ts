import type { Field, Fields, ListField } from './field.ts';
import type { FieldProblem } from './read-fields.ts';

/** What the form calls one of a list. @example oneOf({ one: 'a fill' }, 2) // => 'fill 3' */
export const oneOf = ({ one }: Pick<ListField, 'one'>, place: number): string =>
  `${one.replace(/^an? /, '')} ${place + 1}`;

/**
 * An entry of a list, or a problem of one, its label saying which of them: of thirty trusses each has a place.
 * @example whichOfList(calculationNamed('test-box').fields, { field: 'fills.2.tare', label: 'Tare weight', found: '"9"', expected: 'a weight' }).label // => 'Tare weight (fill 3)'
 */
export const whichOfList = <P extends Pick<FieldProblem, 'field' | 'label'>>(
  fields: Fields,
  problem: P,
): P => ({
  ...problem,
  label: problem.label + which(fields, problem.field.split('.')),
});

function which(fields: Fields, [key = '', ...rest]: readonly string[]): string {
  const field: Field | undefined = fields[key];
  if (!field || !('of' in field)) return '';
  if (field.kind === 'group') return which(field.of, rest);
  const [place, ...way] = rest;
  return place ? ` (${oneOf(field, +place)})${which(field.of, way)}` : '';
}
