import { rehypeHeadingIds } from '@astrojs/markdown-remark';
import type { Root } from 'mdast';
import { toString as wordsOf } from 'mdast-util-to-string';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Node } from 'unist';
import { visit } from 'unist-util-visit';
import { VFile } from 'vfile';
import type { LocalPage } from '../rulebook/local/local.ts';
import { readPageHead } from '../rulebook/local/page-head.ts';
import { nearest } from '../rulebook/nearest.ts';
import { DataError, type Problem } from '../rulebook/problem.ts';
import type { RulebookData } from '../rulebook/rulebook.ts';
import { placeOf, problemAt } from './problem-in-page.ts';
import { ruleReferences } from './rule-references.ts';
import type { SiteAddresses } from './site-addresses.ts';
import { stepAnchors } from './step-anchors.ts';

/** The parts of the site that a page of an agency may use. */
const allowed: readonly string[] = ['Rule', 'Caution'];

const SAFE_ADDRESS = /^(https?:\/\/|mailto:|tel:|\/(?!\/)|#)/i;

/**
 * What is wrong with a page of an agency? It holds words, links, lists, tables, values and cautions: nothing that runs, when the site is built or when it is
 * read, nothing fetched from elsewhere, and no link that leads to no page of the site. Places within other pages are left to `links:check`.
 */
export function localPageProblems(page: LocalPage, data: RulebookData, addresses: SiteAddresses): Problem[] {
  const { body, problems: inHead } = readPageHead(page.file, page.text);
  const file = new VFile({ path: page.file, value: body });
  const problems: Problem[] = [...inHead];
  const complain = (node: Node, found: string, expected: string) =>
    problems.push(problemAt(file, placeOf(node), found, expected, 'local-page'));
  try {
    const tree = unified().use(remarkParse).use(remarkMdx).parse(file);
    visit(tree, (node) => {
      if (node.type === 'mdxjsEsm') complain(node, 'an import or export', 'words');
      else if (node.type === 'mdxFlowExpression' || node.type === 'mdxTextExpression')
        complain(node, 'something in braces', 'words: what stands in braces would be run');
      else if (node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement') {
        if (!allowed.includes(node.name ?? ''))
          complain(node, `<${(node.name ?? '').slice(0, 60)}>`, `words, <${allowed.join(' /> or <')} />`);
      } else if (node.type === 'image' || node.type === 'imageReference')
        complain(node, 'a picture', 'words');
      else if ((node.type === 'link' || node.type === 'definition') && !SAFE_ADDRESS.test(node.url))
        complain(
          node,
          `a link to ${JSON.stringify(node.url.slice(0, 60))}`,
          'an address that begins with https:// or /',
        );
    });
    if (problems.length > 0) return problems;
    ruleReferences({ data })(tree, file);
    const ids = idsOn(tree, file);
    visit(tree, (node) => {
      // A value that was put in leads to its own page, and stands nowhere in the file.
      if ((node.type !== 'link' && node.type !== 'definition') || !node.position) return;
      const wrong = wrongWith(node.url, addresses, ids);
      if (wrong)
        problems.push(
          problemAt(file, placeOf(node), `the link "${node.url.slice(0, 100)}"`, wrong, 'broken-link'),
        );
    });
  } catch (error) {
    if (error instanceof DataError) return [...problems, ...error.problems];
    const { line = 1, column = 1, reason } = error as { line?: number; column?: number; reason?: string };
    problems.push({
      ...{ file: page.file, line: line ?? 1, column: column ?? 1 },
      found: (reason ?? 'text that can not be read').split('\n')[0] ?? '',
      expected: 'a page of words, as MDX',
      check: 'local-page',
    });
  }
  return problems;
}

/** The ids that a page will have: of its steps, and of its headings as the site's builder makes them of their words. */
function idsOn(tree: Root, file: VFile): readonly string[] {
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

/** What is expected in the place of a link of the site that leads nowhere. */
function wrongWith(url: string, { known, open }: SiteAddresses, ids: readonly string[]): string | undefined {
  if (url.startsWith('#')) {
    const id = decoded(url.slice(1));
    if (id === '' || ids.includes(id)) return undefined;
    const guess = nearest(id, ids);
    return `the id of a heading or a step of this page${guess ? `; did you mean "#${guess}"?` : ''}`;
  }
  if (!url.startsWith('/')) return undefined;
  const path = decoded(new URL(url, 'https://site.invalid').pathname);
  if (known.has(path) || open(path)) return undefined;
  if (known.has(`${path}/`)) return 'a slash at its end: it leads to a page';
  const guess = nearest(path, [...known]);
  return `a page or a file of the site${guess ? `; did you mean "${guess}"?` : ''}`;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
