import type { Rule } from '../rulebook.ts';
import type { RuleChange } from './diff.ts';
import { same, shapeOf, valueChange } from './judge.ts';

/** What of a safety rule may allow more than it did. */
export interface NeedsReason {
  /** In words that stand before "than in 2026.1". */
  readonly found: string;
  /** The key of the rule where it is changed; undefined where the key is there no more. */
  readonly at: 'value' | 'safety' | 'applies_to' | undefined;
}

/**
 * What of a change has to be given a reason for? Of a rule that is or was for safety all but what only allows less, and what is words or
 * source: where nothing can be called stricter, it may be looser. Undefined where no reason is asked.
 * @example needsReason({ before: undefined, after: undefined }) // => undefined
 */
export function needsReason({
  before,
  after,
}: Pick<RuleChange, 'before' | 'after'>): NeedsReason | undefined {
  if (!before || !after || !(before.safety ?? after.safety)) return undefined;
  return valueAsks(before, after) ?? safetyAsks(before, after) ?? scopeAsks(before, after);
}

function valueAsks(before: Rule, after: Rule): NeedsReason | undefined {
  if (!same(shapeOf(before.value), shapeOf(after.value)))
    return { found: 'a safety value of another kind, unit or columns', at: 'value' };
  const change = valueChange(before.value, after.value, before.safety ?? after.safety);
  if (change === 'looser') return { found: 'a looser safety value', at: 'value' };
  if (change === 'meaning') return { found: 'a safety value with other rows', at: 'value' };
  if (change === 'value')
    return { found: 'a safety value that can be called neither stricter nor looser', at: 'value' };
  return undefined;
}

/** A value that is for safety from now on allows no more than before; one whose direction is turned, or that is for safety no more, may. */
function safetyAsks(before: Rule, after: Rule): NeedsReason | undefined {
  if (before.safety === undefined || before.safety === after.safety) return undefined;
  return after.safety === undefined
    ? { found: 'another safety (none)', at: undefined }
    : { found: `another safety ("${after.safety}")`, at: 'safety' };
}

const scopeAsks = (before: Rule, after: Rule): NeedsReason | undefined =>
  before.applies_to === after.applies_to
    ? undefined
    : { found: 'a safety value that applies to something else', at: 'applies_to' };
