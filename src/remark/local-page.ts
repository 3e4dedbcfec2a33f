import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';
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
import { numbersOnLocalPage } from './local-numbers.ts';
import { type ParserSays, pageFault } from './page-fault.ts';
import { idsOn } from './page-ids.ts';
import { placeOf, problemAt } from './problem-in-page.ts';
import { ruleReferences } from './rule-references.ts';
import type { SiteAddresses } from './site-addresses.ts';

/** The parts of the site that a page of an agency may use. */
const allowed: readonly string[] = ['Rule', 'Caution'];

const MOST_SHOWN = 60;
const SAFE_ADDRESS = /^(https?:\/\/|mailto:|tel:|\/(?!\/)|#)/i;

/**
 * What is wrong with a page of an agency? It holds words, links, lists, tables, values and cautions: nothing that runs, when the site is built or when it is
 * read, nothing fetched from elsewhere, no number that no rule backs, and no link that leads nowhere. Places within pages that are not written in MDX are left to `links:check`.
 */
export function localPageProblems(page: LocalPage, data: RulebookData, addresses: SiteAddresses): Problem[] {
  const { head, body, problems: inHead } = readPageHead(page.file, page.text);
  const file = new VFile({ path: page.file, value: body });
  const problems: Problem[] = [...inHead];
  const complain = (node: Node, found: string, expected: string) =>
    problems.push(problemAt(file, placeOf(node), found, expected, 'local-page'));
  try {
    const tree = unified().use(remarkParse).use(remarkMdx).parse(file);
    visit(tree, (node) => {
      if (node.type === 'mdxjsEsm') complain(node, 'an import or export', 'words');
      else if (node.type === 'mdxFlowExpression' || node.type === 'mdxTextExpression')
        complain(node, 'something in braces', 'words without { and }: what stands between them would be run');
      else if (node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement') {
        const own = node.name === 'Caution' ? ownCaution(node, data) : undefined;
        if (own !== undefined)
          complain(
            node,
            `the caution "${own}"`,
            `${CAUTION_OF_ITS_OWN} on: [local/${page.agency}/${page.slug}]`,
          );
        else if (!allowed.includes(node.name ?? ''))
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
    problems.push(...numbersOnLocalPage(tree, file, head));
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
    problems.push({ file: page.file, ...pageFault(body, error as ParserSays), check: 'local-page' });
  }
  return problems;
}

const CAUTION_OF_ITS_OWN =
  'the id of one of the rulebook, such as caution.roof.falls; one of your own comes onto this page from cautions.yaml, by';

/** The id of a caution that is asked for as if it were the rulebook's; undefined for one of the rulebook, and for one that it was meant to be. */
function ownCaution(node: MdxJsxFlowElement | MdxJsxTextElement, data: RulebookData): string | undefined {
  const id = node.attributes.find((each) => each.type === 'mdxJsxAttribute' && each.name === 'id')?.value;
  if (typeof id !== 'string' || id.startsWith('caution.') || Object.hasOwn(data.cautions, id))
    return undefined;
  return nearest(id, Object.keys(data.cautions)) === undefined ? id.slice(0, MOST_SHOWN) : undefined;
}

/** What is expected in the place of a link of the site that leads nowhere. */
function wrongWith(
  url: string,
  { known, open, idsOf }: SiteAddresses,
  ids: readonly string[],
): string | undefined {
  if (url.startsWith('#')) return wrongPlace(url, ids, 'this page');
  if (!url.startsWith('/')) return undefined;
  const { pathname, hash } = new URL(url, 'https://site.invalid');
  const path = decoded(pathname);
  if (known.has(path) || open(path)) return wrongPlace(hash, idsOf(path), `the page ${path}`);
  if (known.has(`${path}/`)) return 'a slash at its end: it leads to a page';
  const guess = nearest(path, [...known]);
  return `a page or a file of the site${guess ? `; did you mean "${guess}"?` : ''}`;
}

/** What is expected in the place of a hash that no place of a page has; undefined too where the places are not known. */
function wrongPlace(hash: string, ids: readonly string[] | undefined, page: string): string | undefined {
  const id = decoded(hash.slice(1));
  // What a form holds stands in the fragment too, as "name=value": it names no place.
  if (ids === undefined || id === '' || id.includes('=') || ids.includes(id)) return undefined;
  const guess = nearest(id, ids);
  return `the id of a heading or a step of ${page}${guess ? `; did you mean "#${guess}"?` : ''}`;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
