import { relative } from 'node:path';
import type { Node } from 'unist';
import type { VFile } from 'vfile';
import { DataError, type Problem } from '../rulebook/problem.ts';

/** A mistake in a page, at the node that makes it. */
export const problemAtNode = (
  file: VFile,
  node: Node,
  found: string,
  expected: string,
  check: string,
): Problem => ({
  file: file.path ? relative(process.cwd(), file.path) : '(page)',
  line: node.position?.start.line ?? 1,
  column: node.position?.start.column ?? 1,
  found,
  expected,
  check,
});

/** Stops the build with every mistake of a page at once. */
export function stopOn(problems: readonly Problem[]): void {
  if (problems.length > 0) throw new DataError(problems);
}
