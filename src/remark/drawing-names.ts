import type { Root } from 'mdast';
import { visit } from 'unist-util-visit';
import type { VFile } from 'vfile';

/** Hands the names of the drawings on a page to its layout, in order: a card shows them in a place of its own. */
export function drawingNames() {
  return (tree: Root, file: VFile): void => {
    const drawings: string[] = [];
    visit(tree, 'mdxJsxFlowElement', ({ name, attributes }) => {
      if (name !== 'Drawing') return;
      for (const each of attributes)
        if (each.type === 'mdxJsxAttribute' && each.name === 'name' && typeof each.value === 'string')
          drawings.push(each.value);
    });
    const { astro } = file.data;
    file.data.astro = { ...astro, frontmatter: { ...astro?.frontmatter, drawings } };
  };
}
