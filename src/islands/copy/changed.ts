import { diffCautions } from '../../rulebook/changes/caution-diff.ts';
import { type ChangeKind, diffRulebooks } from '../../rulebook/changes/diff.ts';
import type { Rule, RulebookData } from '../../rulebook/rulebook.ts';
import { valueHeadline } from '../../rulebook/value-text.ts';
import { cautionLine } from './changed-caution.ts';

/** What a newer copy changed, told to a reader. */
export interface Changed {
  /** Such as "2 safety values changed, 1 other value, and 1 caution". */
  readonly says: string;
  /** A line for each safety value and each caution. */
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
  // Where a caution comes from changes nothing of what it asks for.
  const cautions = diffCautions(old, now).filter(({ kind }) => kind !== 'source');
  return {
    says: told(safety.length, changes.length - safety.length, cautions.length),
    safety: [
      ...safety.map((each) => line(each.before, each.after)),
      ...cautions.map((each) => cautionLine(each, [old.rules, now.rules])),
    ],
  };
}

const counted = (count: number, name: string): string => `${count} ${name}${count === 1 ? '' : 's'}`;

/** How many safety values, other values and cautions changed, in one line. */
function told(safety: number, others: number, cautions: number): string {
  const says = [
    safety > 0 ? `${counted(safety, 'safety value')} changed` : '',
    others === 0
      ? ''
      : safety > 0
        ? counted(others, 'other value')
        : `${counted(others, 'value')} changed, none of them a safety value`,
    cautions === 0 ? '' : `${counted(cautions, 'caution')}${safety > 0 ? '' : ' changed'}`,
  ].filter(Boolean);
  if (says.length === 0) return 'no value changed';
  const last = says.pop();
  return [says.join(', '), last].filter(Boolean).join(', and ');
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
