import type { Nodes, Root } from 'mdast';

/** The text of a node as it stands in the prose of its page, and where there. */
export interface ProsePiece {
  readonly node: Nodes;
  readonly from: number;
}

/** Stands where words end: between blocks, and for what is no prose. No number and no unit holds it. */
const SEAM = '\uFFFC';
/** Marks words without parting them: "**2** in" reads "2 in". */
const runsOn: ReadonlySet<Nodes['type']> = new Set([
  'emphasis',
  'strong',
  'delete',
  'link',
  'linkReference',
  'mdxJsxTextElement',
]);

/**
 * The prose of a page as one text, with the node that each part of it comes from. Code, expressions and elements without words are
 * left out; what is said of a picture or a link is prose too.
 */
export function proseOf(tree: Root): { readonly text: string; readonly pieces: readonly ProsePiece[] } {
  const pieces: ProsePiece[] = [];
  let text = '';
  const add = (words: string, node: Nodes): void => {
    pieces.push({ node, from: text.length });
    text += words;
  };
  const walk = (node: Nodes): void => {
    if (node.type === 'text') add(node.value, node);
    else if (node.type === 'break') add('\n', node);
    else {
      const children: readonly Nodes[] = 'children' in node ? node.children : [];
      const seam = runsOn.has(node.type) && children.length > 0 ? '' : SEAM;
      add(seam, node);
      children.forEach(walk);
      add(seam, node);
      for (const words of saidOf(node)) add(`${SEAM}${words}${SEAM}`, node);
    }
  };
  walk(tree);
  return { text, pieces };
}

/** What is said of a picture or a link beside its own words. */
const saidOf = (node: Nodes): string[] =>
  ['alt' in node ? node.alt : undefined, 'title' in node ? node.title : undefined].filter(
    (words) => typeof words === 'string',
  );
