import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Node } from 'unist';
import { visit } from 'unist-util-visit';
import { VFile } from 'vfile';
import type { LocalPage } from '../rulebook/local/local.ts';
import { readPageHead } from '../rulebook/local/page-head.ts';
import { DataError, type Problem } from '../rulebook/problem.ts';
import type { RulebookData } from '../rulebook/rulebook.ts';
import { placeOf, problemAt } from './problem-in-page.ts';
import { ruleReferences } from './rule-references.ts';

/** The parts of the site that a page of an agency may use. */
const allowed: readonly string[] = ['Rule', 'Caution'];

const SAFE_ADDRESS = /^(https?:\/\/|mailto:|tel:|\/(?!\/)|#)/i;

/**
 * What is wrong with a page of an agency? It holds words, links, lists, tables, values and cautions: nothing that runs, when the site is built or when it is
 * read, and nothing fetched from elsewhere.
 */
export function localPageProblems(page: LocalPage, data: RulebookData): Problem[] {
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
    if (problems.length === 0) ruleReferences({ data })(tree, file);
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
