import type { RemarkPlugins } from '@astrojs/markdown-remark';
import { noBareQuantity } from './no-bare-quantity.ts';
import { type RuleReferenceOptions, ruleReferences } from './rule-references.ts';

/** What every page of content goes through, in order: numbers are looked for before rules put theirs in. */
export const pagePlugins = (options: RuleReferenceOptions): RemarkPlugins => [
  noBareQuantity,
  [ruleReferences, options],
];
