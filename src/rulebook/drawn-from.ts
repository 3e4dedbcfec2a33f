import type { Rule, RulebookData } from './rulebook.ts';
import type { RuleSource } from './schema.ts';
import { sourcesOf } from './status.ts';

type Cited = Extract<RuleSource, { readonly kind: 'document' }>;

/** A rule with the clause it is drawn from. */
export interface DrawnRule {
  readonly rule: Rule;
  readonly source: Cited;
}

/**
 * Every rule drawn from one document, in the order of its clauses, so that it can be read beside the document once.
 * Numbers inside a clause count as numbers: 3280.9 comes before 3280.103.
 * @example drawnFrom('no such document', data) // => []
 */
export const drawnFrom = (document: string, { rules }: Pick<RulebookData, 'rules'>): DrawnRule[] =>
  Object.values(rules)
    .flatMap((rule) =>
      sourcesOf(rule).flatMap((source) =>
        source.kind === 'document' && source.document === document ? [{ rule, source }] : [],
      ),
    )
    .sort(
      (a, b) =>
        a.source.clause.localeCompare(b.source.clause, 'en', { numeric: true }) ||
        a.rule.id.localeCompare(b.rule.id),
    );
