import type { Root } from 'mdast';
import { visit } from 'unist-util-visit';

/**
 * Gives each numbered step of a page an id, `step-1` and on, counted through the page, so that it can be linked to; and marks it as a
 * step, so that search finds it by itself.
 */
export function stepAnchors() {
  return (tree: Root): void => {
    let count = 0;
    visit(tree, 'list', ({ ordered, children }) => {
      if (!ordered) return;
      for (const item of children) {
        count += 1;
        const hProperties = { id: `step-${count}`, 'data-record': 'step' };
        item.data = { ...item.data, hProperties };
      }
    });
  };
}
