import type { Rule } from '../rulebook.ts';
import type { RuleSource, SourceDocument } from '../schema.ts';
import { sourceLine, statusOf } from '../status.ts';
import { valuesApart } from '../values-apart.ts';
import type { RuleChange } from './diff.ts';
import { same } from './judge.ts';

/** A part of a rule that differs between two rulebooks, as it was and as it is. */
export interface PartApart {
  readonly part: string;
  readonly before: string;
  readonly after: string;
}

type Documents = Readonly<Record<string, SourceDocument>>;

/** What stands for a part that only one of the two has. */
export const NONE = 'none';

/** Where a value comes from, a text for each part that may differ by itself. */
export function sourceTexts(source: RuleSource, documents: Documents): Readonly<Record<string, string>> {
  const derived = source.kind === 'derived';
  return {
    Source:
      source.kind === 'document'
        ? `${sourceLine(source, documents)}: ${statusOf(source)}`
        : sourceLine(source, documents),
    'Last read': (source.kind === 'document' && source.on) || NONE,
    Working: derived ? source.working : NONE,
    'Worked from': derived ? source.from.join(', ') : NONE,
    Remark: ('remark' in source && source.remark) || NONE,
  };
}

/** All of a rule but its value, as a reader is told it. */
const texts = (
  { title, says, symbol = NONE, applies_to, safety = NONE, source }: Rule,
  documents: Documents,
): Readonly<Record<string, string>> => ({
  Safety: safety,
  'Applies to': applies_to,
  ...sourceTexts(source, documents),
  'It says': says,
  Title: title,
  Symbol: symbol,
});

/**
 * What of a rule differs, part by part, each as it was and as it is; of a rule that came or went its value alone. The documents are those of either
 * rulebook.
 * @example partsApart({ before: undefined, after: { value: { kind: 'at-least', number: 3, unit: 'in' } } }, [{}, {}]) // => [{ part: 'Value', before: 'not there', after: 'at least 3 in' }]
 */
export function partsApart(
  { before, after }: Pick<RuleChange, 'before' | 'after'>,
  [old, now]: readonly [Documents, Documents],
): PartApart[] {
  const [from, to] = valuesApart(before?.value, after?.value);
  const value = same(before?.value, after?.value) ? [] : [{ part: 'Value', before: from, after: to }];
  if (!before || !after) return value;
  const was = texts(before, old);
  const others = Object.entries(texts(after, now))
    .map(([part, text]): PartApart => ({ part, before: was[part] ?? NONE, after: text }))
    .filter((each) => each.before !== each.after);
  return [...value, ...others];
}
