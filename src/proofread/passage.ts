import type { Problem } from '../rulebook/problem.ts';

/** Words that people read, and where they stand in the text of their file. */
export interface Passage {
  readonly file: string;
  /** The whole text of the file. */
  readonly source: string;
  readonly from: number;
  /** As long as it is in the file; what is no prose inside it is blanked out. */
  readonly text: string;
}

/**
 * The part of a file from here to there.
 * @example passage('a.md', 'One two.', 4, 7).text // => 'two'
 */
export const passage = (file: string, source: string, from: number, to: number): Passage => ({
  file,
  source,
  from,
  text: source.slice(from, to),
});

/**
 * A passage with everything that a pattern finds blanked out, so that every other word keeps its place.
 * @example without(/`[^`]*`/g, { text: 'Run `npm ci` now.' }).text // => 'Run          now.'
 */
export const without = (pattern: RegExp, each: Passage): Passage => ({
  ...each,
  text: each.text.replace(pattern, (found) => ' '.repeat(found.length)),
});

/**
 * Where the letter at this place of a passage stands in its file.
 * @example placeIn({ file: 'a.md', source: 'One\ntwo three', from: 4 }, 4) // => { file: 'a.md', line: 2, column: 5 }
 */
export function placeIn(
  { file, source, from }: Passage,
  at: number,
): Pick<Problem, 'file' | 'line' | 'column'> {
  const before = source.slice(0, from + at).split('\n');
  return { file, line: before.length, column: (before.at(-1) ?? '').length + 1 };
}
