import type { RemarkPlugins } from '@astrojs/markdown-remark';
import type { Root } from 'mdast';
import type { VFile } from 'vfile';
import { drawingNames } from './drawing-names.ts';
import { loneLinks } from './lone-links.ts';
import { noBareQuantity } from './no-bare-quantity.ts';
import { photographLines } from './photograph-lines.ts';
import { projectPhotographs } from './photographs.ts';
import { type RuleReferenceOptions, ruleReferences } from './rule-references.ts';
import { stepAnchors } from './step-anchors.ts';
import { tableCards } from './table-cards.ts';
import { termLinks } from './term-links.ts';
import { projectTerms } from './terms.ts';

/** An agency's page stands under the agency's name: its numbers are its own to answer for. */
function noBareQuantityOfOurs() {
  const look = noBareQuantity();
  return (tree: Root, file: VFile): void => {
    if (!file.path?.replaceAll('\\', '/').includes('/generated/local-pages/')) look(tree, file);
  };
}

/** What every page of content goes through, in order: numbers are looked for before rules put theirs in, then terms are linked. */
export const pagePlugins = (options: RuleReferenceOptions): RemarkPlugins => [
  noBareQuantityOfOurs,
  [ruleReferences, options],
  drawingNames,
  stepAnchors,
  [photographLines, { photographs: projectPhotographs() }],
  tableCards,
  [termLinks, { terms: projectTerms() }],
  loneLinks,
];
