import type { Link, Paragraph, Root, TableCell } from 'mdast';
import { visit } from 'unist-util-visit';

/** What a link hands on to the page. */
export interface HandedOn {
  readonly hProperties?: Readonly<Record<string, unknown>>;
}

/** What stands round a link without making a sentence of it. */
const NO_WORDS = /^[\s.,:;]*$/;

/** The one link of a paragraph or a cell that has no words beside it. */
function loneLink({ children }: Paragraph | TableCell): Link | undefined {
  const rest = children.filter((each) => !(each.type === 'text' && NO_WORDS.test(each.value)));
  const [only] = rest;
  return rest.length === 1 && only?.type === 'link' ? only : undefined;
}

/** Marks a link that stands alone, so that it is made large enough for a finger; one in a sentence is as high as its line. */
export function loneLinks() {
  return (tree: Root): void => {
    visit(tree, ['paragraph', 'tableCell'], (node) => {
      const link = loneLink(node as Paragraph | TableCell);
      if (!link) return;
      const { hProperties = {} } = (link.data ?? {}) as HandedOn;
      const classes = Array.isArray(hProperties.className) ? hProperties.className : [];
      const marked: HandedOn = { hProperties: { ...hProperties, className: [...classes, 'alone'] } };
      link.data = { ...link.data, ...marked };
    });
  };
}
