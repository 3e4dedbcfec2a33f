import { rehypeHeadingIds } from '@astrojs/markdown-remark';
import type { Root } from 'mdast';
import { toString as wordsOf } from 'mdast-util-to-string';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { visit } from 'unist-util-visit';
import { VFile } from 'vfile';
import { stepAnchors } from './step-anchors.ts';

/** The ids that a page will have: of its steps, and of its headings as the site's builder makes them of their words. */
export function idsOn(tree: Root, file: VFile): readonly string[] {
  stepAnchors()(tree);
  const steps: string[] = [];
  const headings: { type: 'element'; tagName: string; properties: { id?: string }; children: object[] }[] =
    [];
  visit(tree, (node) => {
    const { id } = (node.data as { hProperties?: { id?: string } } | undefined)?.hProperties ?? {};
    if (node.type === 'listItem' && id !== undefined) steps.push(id);
    if (node.type === 'heading')
      headings.push({
        type: 'element',
        tagName: `h${node.depth}`,
        properties: {},
        children: [{ type: 'text', value: wordsOf(node) }],
      });
  });
  unified()
    .use(rehypeHeadingIds)
    .runSync({ type: 'root', children: headings } as never, file);
  return [...steps, ...headings.flatMap(({ properties }) => properties.id ?? [])];
}

const HEAD = /^---\r?\n[\s\S]*?\r?\n---[ \t]*(\r?\n|$)/;

/**
 * The ids that a page of this text will have: of its steps and its headings. Undefined for one that can't be read, or with a value in a heading, whose
 * id only the build can tell.
 * @example idsOfText('---\ntitle: x\n---\n\n## By the river\n\n1. Wait.\n') // => ['step-1', 'by-the-river']
 */
export function idsOfText(text: string): readonly string[] | undefined {
  const file = new VFile({ value: text.replace(HEAD, '') });
  let tree: Root;
  try {
    tree = unified().use(remarkParse).use(remarkMdx).parse(file);
  } catch {
    return undefined;
  }
  let told = true;
  visit(tree, 'heading', (heading) => {
    visit(heading, 'mdxJsxTextElement', () => {
      told = false;
    });
  });
  return told ? idsOn(tree, file) : undefined;
}
