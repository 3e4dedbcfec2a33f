import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import type { Node } from 'unist';
import type { VFile } from 'vfile';
import { DataError, type Problem } from '../rulebook/problem.ts';

type Place = Pick<Problem, 'line' | 'column'>;

/** A mistake at a place of a page. */
export const problemAt = (
  file: VFile,
  { line, column }: Place,
  found: string,
  expected: string,
  check: string,
): Problem => ({
  file: file.path ? relative(process.cwd(), file.path) : '(page)',
  line,
  column,
  found,
  expected,
  check,
});

/** Where a node of a page begins. */
export const placeOf = (node: Node): Place => ({
  line: node.position?.start.line ?? 1,
  column: node.position?.start.column ?? 1,
});

/**
 * Where words stand in a text that runs over several lines. `before` is the part of the text in front of them. Where the words are
 * written another way in the page, by a character reference, it is the beginning of their line.
 */
export function placeInText(file: VFile, node: Node, before: string, words: string): Place {
  const start = placeOf(node);
  const newLines = before.split('\n').length - 1;
  const line = start.line + newLines;
  const source = String(file.value).split('\n')[line - 1] ?? '';
  const from = newLines === 0 ? start.column - 1 : 0;
  const nth = before.slice(before.lastIndexOf('\n') + 1).split(words).length - 1;
  const at = placesOf(words.split('\n')[0] ?? words, source, from)[nth];
  return { line, column: (at ?? from) + 1 };
}

/** Every place of some words in a line. */
function placesOf(words: string, line: string, from: number): number[] {
  const places: number[] = [];
  for (let at = line.indexOf(words, from); at >= 0; at = line.indexOf(words, at + 1)) places.push(at);
  return places;
}

/** Where words stand in the head of a page, which is blanked out before plugins see the page: its file is read again. */
export function placeInHead(file: VFile, words: string): Place {
  const lines = textOf(file.path).split('\n');
  const line = lines.findIndex((each) => each.includes(words));
  return line < 0
    ? { line: 1, column: 1 }
    : { line: line + 1, column: (lines[line] ?? '').indexOf(words) + 1 };
}

function textOf(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}

/** Stops the build with every mistake of a page at once, at the place of the first, which Astro asks the error for. */
export function stopOn(problems: readonly Problem[]): void {
  if (problems.length === 0) return;
  const error = new DataError(problems);
  const [first] = error.problems;
  throw Object.assign(error, first && { line: first.line, column: first.column });
}
