import type { Root } from 'mdast';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { visit } from 'unist-util-visit';
import { describe, expect, test } from 'vitest';
import { type HandedOn, loneLinks } from '../../src/remark/lone-links.ts';

/** The classes of each link of a page. */
function classes(markdown: string): unknown[] {
  const tree = unified().use(remarkParse).parse(markdown) as Root;
  loneLinks()(tree);
  const found: unknown[] = [];
  visit(tree, 'link', ({ data }) => {
    found.push((data as HandedOn | undefined)?.hProperties?.className);
  });
  return found;
}

describe('a link alone is made large, a link in a sentence is not', () => {
  const pages: readonly [string, string, readonly unknown[]][] = [
    ['a paragraph that is a link', '[Why it is so](/know/)', [['alone']]],
    ['a full stop after it is no word', '[Why it is so](/know/).', [['alone']]],
    ['an item that is a link', '- [Why it is so](/know/)', [['alone']]],
    ['a link with words beside it', 'Read [why it is so](/know/).', [undefined]],
    ['two links, a comma between them', '[one](/a/), [two](/b/)', [undefined, undefined]],
    ['no link at all', 'Read on.', []],
  ];
  test.each(pages)('%s', (_, markdown, expected) => {
    expect(classes(markdown)).toEqual(expected);
  });
});
