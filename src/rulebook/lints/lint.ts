import type { Problem } from '../problem.ts';
import type { RuleFiles } from '../rule-files.ts';

/** What a lint may look at besides the rule files. */
export interface LintContext {
  /** Today, as 2026-11-25. */
  readonly today: string;
  /** Every id that code, pages, drawings or other rules refer to. */
  readonly used: ReadonlySet<string>;
}

/** One question asked of all rule files. */
export interface Lint {
  readonly name: string;
  readonly look: (files: RuleFiles, context: LintContext) => Problem[];
}
