import { nearest } from '../../rulebook/nearest.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type AnyCalculation, answer, type Figure } from './calculation.ts';

/**
 * What does a calculation answer for its own example? For pages that show a worked figure: it is worked out, never typed.
 * @throws Error for a figure that the answer does not have, and for an example that does not work.
 * @example exampleFigure(calculationNamed('cavity-section'), 'deepest', rules).label // => 'Depth at the deepest place'
 */
export function exampleFigure(declared: AnyCalculation, name: string, rules: Rulebook): Figure {
  const answered = answer(declared, declared.example, rules);
  if (!answered.ok)
    throw new Error(`the example of ${declared.name} does not work: ${JSON.stringify(answered.problems)}`);
  const { figures } = answered.value;
  const figure = Object.hasOwn(figures, name) ? figures[name] : undefined;
  if (figure) return figure;
  const guess = nearest(name, Object.keys(figures));
  throw new Error(
    `found the figure "${name}" of ${declared.name}, expected one of ${Object.keys(figures).join(', ')}${guess ? `; did you mean "${guess}"?` : ''}`,
  );
}
