import { type ChangeKind, diffRulebooks } from '../../rulebook/changes/diff.ts';
import type { Rule, RulebookData } from '../../rulebook/rulebook.ts';
import { valueHeadline } from '../../rulebook/value-text.ts';

/** What a newer copy changed, told to a reader. */
export interface Changed {
  /** Such as "2 safety values changed, and 1 other value". */
  readonly says: string;
  /** A line for each safety value. */
  readonly safety: readonly string[];
}

/** Changes by which a figure, or what it means, may be another. */
const ofValue: ReadonlySet<ChangeKind> = new Set(['looser', 'stricter', 'value', 'meaning', 'new', 'gone']);

/**
 * What changed from one exported rulebook to another?
 * @throws Error for a text that is no exported rulebook.
 */
export function changedBetween(before: string, after: string): Changed {
  const [old, now] = [readExport(before), readExport(after)];
  const changes = diffRulebooks(old, now).filter(({ kind }) => ofValue.has(kind));
  const safety = changes.filter((each) => (each.after ?? each.before)?.safety ?? each.before?.safety);
  const [ofSafety, others] = [safety.length, changes.length - safety.length];
  const says = [
    ofSafety === 0 ? '' : `${ofSafety} safety value${ofSafety === 1 ? '' : 's'} changed`,
    others === 0 ? '' : `${others}${ofSafety === 0 ? '' : ' other'} value${others === 1 ? '' : 's'}`,
  ].filter(Boolean);
  return {
    says:
      says.length === 0
        ? 'no value changed'
        : `${says.join(', and ')}${ofSafety === 0 ? ' changed, none of them a safety value' : ''}`,
    safety: safety.map((each) => line(each.before, each.after)),
  };
}

function line(before: Rule | undefined, after: Rule | undefined): string {
  const title = (after ?? before)?.title ?? '';
  if (!before) return `${title}: new, ${after ? valueHeadline(after.value) : ''}`;
  if (!after) return `${title}: no longer there`;
  const [old, now] = [valueHeadline(before.value), valueHeadline(after.value)];
  return old === now ? `${title}: changed` : `${title}: ${now}, before ${old}`;
}

/** An exported rulebook, as far as it is compared. It is of this site, so its shape is not asked about again. */
function readExport(text: string): RulebookData {
  const data = JSON.parse(text) as RulebookData;
  const rules = Object.entries(data.rules).map(([id, rule]) => [id, { ...rule, id }]);
  return { ...data, rules: Object.fromEntries(rules) };
}
