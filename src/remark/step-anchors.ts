import type { Root } from 'mdast';
import { toString as textOf } from 'mdast-util-to-string';
import { visit } from 'unist-util-visit';

/** The heading under which a page for when it goes wrong numbers what it is likely to be. What stands there is nothing to do. */
const CAUSES = 'What it is likely to be';

/**
 * Gives each numbered step of a page an id, `step-1` and on, counted through the page, so that it can be linked to; and marks it as a
 * step, so that search finds it by itself. A likely cause is counted and marked as what it is.
 */
export function stepAnchors() {
  return (tree: Root): void => {
    const counts = { step: 0, cause: 0 };
    let under = '';
    visit(tree, (node) => {
      if (node.type === 'heading') under = textOf(node);
      if (node.type !== 'list' || !node.ordered) return;
      const kind = under === CAUSES ? 'cause' : 'step';
      for (const item of node.children) {
        counts[kind] += 1;
        const hProperties = { id: `${kind}-${counts[kind]}`, 'data-record': kind };
        item.data = { ...item.data, hProperties };
      }
    });
  };
}
