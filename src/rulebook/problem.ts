/** One thing wrong in a data file: where, what was found, what is expected, which check says so. */
export interface Problem {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly found: string;
  readonly expected: string;
  readonly check: string;
}

/** A problem on one line. @example formatProblem({ file: 'a.yaml', line: 3, column: 5, found: '"foot"', expected: 'a unit', check: 'unknown-unit' }) // => 'a.yaml:3:5  found "foot"  expected a unit  (unknown-unit)' */
export const formatProblem = ({ file, line, column, found, expected, check }: Problem): string =>
  `${file}:${line}:${column}  found ${found}  expected ${expected}  (${check})`;

/** Data files with mistakes in them: every mistake at once, in the order of file and line. */
export class DataError extends Error {
  override name = 'DataError';
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    const ordered = [...problems].sort(
      (a, b) => a.file.localeCompare(b.file) || a.line - b.line || a.column - b.column,
    );
    super(ordered.map(formatProblem).join('\n'));
    this.problems = ordered;
  }
}
