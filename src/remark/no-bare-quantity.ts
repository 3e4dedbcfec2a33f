import type { Root } from 'mdast';
import { visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import { bareQuantitiesIn } from '../rulebook/bare-quantity.ts';
import { problemAtNode, stopOn } from './problem-in-page.ts';

/** Stops the build at a number with a unit that no rule backs, with file and line. Runs before references are replaced. */
export function noBareQuantity() {
  return (tree: Root, file: VFile): void => {
    const problems: ReturnType<typeof problemAtNode>[] = [];
    visit(tree, 'text', (node) => {
      for (const { text } of bareQuantitiesIn(node.value)) {
        problems.push(
          problemAtNode(
            file,
            node,
            `"${text}"`,
            'the rule it comes from, as <Rule id="..." />',
            'bare-quantity',
          ),
        );
      }
    });
    stopOn(problems);
  };
}
