import type { FieldProblem } from '../../calc/declare/read-fields.ts';

/** So many are named. */
const NAMED = 3;

/**
 * What keeps the figures back, short enough to be listened to; what is wrong with each is told at its box.
 * @example problemsInShort([{ field: 'a', label: 'Depth', found: 'nothing', expected: 'a length' }]) // => '1 entry is missing or wrong: Depth'
 */
export function problemsInShort(problems: readonly FieldProblem[]): string {
  const count = problems.length;
  const names = problems.slice(0, NAMED).map(({ label }) => label);
  return `${count} ${count === 1 ? 'entry is' : 'entries are'} missing or wrong: ${names.join(', ')}${count > NAMED ? ', and more' : ''}`;
}
