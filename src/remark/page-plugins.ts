import type { RemarkPlugins } from '@astrojs/markdown-remark';
import { drawingNames } from './drawing-names.ts';
import { noBareQuantity } from './no-bare-quantity.ts';
import { type RuleReferenceOptions, ruleReferences } from './rule-references.ts';
import { stepAnchors } from './step-anchors.ts';
import { tableCards } from './table-cards.ts';
import { termLinks } from './term-links.ts';
import { projectTerms } from './terms.ts';

/** What every page of content goes through, in order: numbers are looked for before rules put theirs in, terms are linked last. */
export const pagePlugins = (options: RuleReferenceOptions): RemarkPlugins => [
  noBareQuantity,
  [ruleReferences, options],
  drawingNames,
  stepAnchors,
  tableCards,
  [termLinks, { terms: projectTerms(), base: options.base }],
];
