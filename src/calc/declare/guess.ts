import { nearest } from '../../rulebook/nearest.ts';
import type { FieldProblem } from './read-fields.ts';

/**
 * Which key was meant by an unknown one? The problem with the nearest known key in place of all of them, where one is near; any other
 * problem as it is. Apart from the reader, so that no form in a browser carries it.
 * @example guessed({ field: 'home.widht', label: 'Unknown entry', found: 'the unknown key "widht"', expected: 'one of width, length', known: ['width', 'length'] }).expected // => '"width"'
 */
export function guessed(problem: FieldProblem): FieldProblem {
  const { field, known = [] } = problem;
  const guess = nearest(field.slice(field.lastIndexOf('.') + 1), known);
  return guess === undefined ? problem : { ...problem, expected: `"${guess}"` };
}
