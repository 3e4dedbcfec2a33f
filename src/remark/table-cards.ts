import type { Nodes, PhrasingContent, Root, Table, TableCell } from 'mdast';
import { visit } from 'unist-util-visit';

/** Lets a table of a page turn into cards on a phone: its first column names the row, each other cell bears its column's heading. */
export function tableCards() {
  return (tree: Root): void => {
    visit(tree, 'table', (table: Table) => {
      const [head, ...rows] = table.children;
      const headings = (head?.children ?? []).map(wordsOf);
      table.data = { ...table.data, hProperties: { className: ['cards'] } };
      for (const cell of head?.children ?? []) give(cell, undefined, { scope: 'col' });
      for (const { children } of rows) {
        children.forEach((cell, at) => {
          if (at === 0) give(cell, 'th', { scope: 'row' });
          else {
            give(cell, undefined, { 'data-label': headings[at] ?? '' });
            cell.children = [inOnePiece(cell.children)];
          }
        });
      }
    });
  };
}

function give(cell: TableCell, hName: string | undefined, hProperties: Record<string, string>): void {
  cell.data = { ...cell.data, ...(hName ? { hName } : {}), hProperties };
}

/** A card sets heading and cell at two sides of its line, so the words and links of a cell have to be one thing. */
const inOnePiece = (children: PhrasingContent[]): PhrasingContent => ({
  type: 'emphasis',
  children,
  data: { hName: 'span' },
});

const wordsOf = (node: Nodes): string =>
  'children' in node ? node.children.map(wordsOf).join('') : 'value' in node ? node.value : '';
