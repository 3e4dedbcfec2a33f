import type { Problem } from '../rulebook/problem.ts';

/** A page that somebody wrote in a folder of theirs, and that is built below local/. */
export interface WrittenPage {
  readonly agency: string;
  readonly slug: string;
  /** The file, as problems name it. */
  readonly file: string;
  readonly text: string;
}

/**
 * A problem of a built page, at the file and the line where it was written; as it is for a page that no folder holds. The line is that of the link's last
 * part, which stays as it was written.
 */
export function writtenIn(problem: Problem, pages: readonly WrittenPage[]): Problem {
  const [, agency, slug] =
    /(?:^|[/\\])local[/\\]([^/\\]+)[/\\]([^/\\]+)[/\\]index\.html$/.exec(problem.file) ?? [];
  const page = pages.find((each) => each.agency === agency && each.slug === slug);
  if (!page) return problem;
  const [, last] = /"(?:[^"]*\/)?([^"/]+\/?)"/.exec(problem.found) ?? [];
  const lines = page.text.split('\n');
  const line = last === undefined ? -1 : lines.findIndex((each) => each.includes(last));
  const column = line < 0 ? 0 : (lines[line]?.indexOf(last as string) ?? 0);
  return { ...problem, file: page.file, line: Math.max(0, line) + 1, column: column + 1 };
}
