import type { Nodes } from 'mdast';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import ts from 'typescript';
import { unified } from 'unified';
import { visit } from 'unist-util-visit';
import { isMap, isPair, isScalar, parseDocument, visit as visitYaml } from 'yaml';
import { type Passage, passage, without } from './passage.ts';

const HEAD = /^---\n([\s\S]*?)\n---\n/;

/** The tree of a page, its head blanked out, so that everything stands where it stands in the file. */
export const treeOf = (source: string) =>
  unified()
    .use(remarkParse)
    .use(remarkMdx)
    .parse(source.replace(HEAD, (head) => head.replace(/[^\n]/g, ' ')));

/** What a page says: the values of its head, and the text of its body. Code, elements and remarks that nobody sees are left out. */
export function proseInPage(file: string, source: string): Passage[] {
  const found: Passage[] = [];
  const head = HEAD.exec(source)?.[1] ?? '';
  for (const { index, 0: line } of head.matchAll(/^(?:title|summary):.*$/gm)) {
    const from = HEAD_MARK + index;
    found.push(passage(file, source, from + line.indexOf(':') + 1, from + line.length));
  }
  visit(treeOf(source), 'text', ({ position }: Nodes) => {
    const [from, to] = [position?.start.offset, position?.end.offset];
    if (from !== undefined && to !== undefined)
      found.push(without(/&#?\w+;|https?:\S+/g, passage(file, source, from, to)));
  });
  return found;
}

/** The line of three hyphens that a head begins with. */
const HEAD_MARK = '---\n'.length;

/** The keys of YAML files under which words for people stand; under all others stand ids, units and names. */
const said: ReadonlySet<string> = new Set([
  ...[
    'title',
    'says',
    'applies_to',
    'safety',
    'remark',
    'working',
    'standing',
    'reason',
    'choices',
    'rows',
    'gaps',
  ],
  ...['do', 'term', 'also', 'means', 'asks', 'because', 'shows', 'each', 'why'],
]);

/** What a YAML file says to people: the texts under the keys that hold words, without the references inside them. */
export function proseInYaml(file: string, source: string): Passage[] {
  const found: Passage[] = [];
  visitYaml(parseDocument(source), {
    Scalar(place, node, path) {
      if (place === 'key' || typeof node.value !== 'string' || !node.range) return;
      const keys = path.flatMap((each) =>
        isPair(each) && isScalar(each.key) ? [String(each.key.value)] : [],
      );
      if (!keys.some((key) => said.has(key)) || isOfDocument(keys, path)) return;
      const text = without(/\{[^}]*\}/g, passage(file, source, node.range[0], node.range[1]));
      found.push(keys.includes('working') ? without(SYMBOL, text) : text);
    },
  });
  return found;
}

/** The title of a document is in the words of those who published it. */
const isOfDocument = (keys: readonly string[], path: readonly unknown[]): boolean =>
  keys.at(-1) === 'title' && path.some((each) => isMap(each) && each.has('publisher'));

/** What a formula is written with: a letter or two that stand alone, and the names of functions. */
const SYMBOL = /(?<![\p{L}\p{N}]|\p{L}['’])(?:\p{L}{1,2}|asin|sqrt)(?![\p{L}\p{N}]|['’]\p{L})/gu;

/** A text in code is for people where it has three words or more; fewer are names, and one with a mark in front picks elements. */
const SENTENCE = /^\s*[^\s#.]\S*\s+\S+\s+\S+/;
/** No word of prose: an escaped letter, an address, a command, the name of an option. */
const TYPED = /https?:[^\s'"`]+|\\.|\bnpm run (?:--silent )?[\w:]+|--\w+/g;

/** What code says to people: the words of its elements, and its texts of three words and more. */
export function proseInCode(file: string, source: string): Passage[] {
  const found: Passage[] = [];
  const kind = file.endsWith('.tsx') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, false, kind);
  const isText = (node: ts.Node): node is ts.LiteralLikeNode =>
    ts.isStringLiteralLike(node) ||
    ts.isTemplateHead(node) ||
    ts.isTemplateMiddle(node) ||
    ts.isTemplateTail(node);
  const walk = (node: ts.Node): void => {
    if (ts.isJsxText(node) || (isText(node) && SENTENCE.test(node.text)))
      found.push(without(SYMBOL, without(TYPED, passage(file, source, node.getStart(tree), node.end))));
    node.forEachChild(walk);
  };
  walk(tree);
  return found;
}

/** What the template of a page says: the words between its marks, and what it says of itself in attributes. */
export function proseInTemplate(file: string, source: string): Passage[] {
  const head = HEAD.exec(source)?.[0] ?? '';
  const script = proseInCode(file, head.replaceAll('---', '   ')).map((each) => ({ ...each, source }));
  const words = [...source.matchAll(BETWEEN_MARKS), ...source.matchAll(ATTRIBUTE)].flatMap(
    ({ index, 0: all, 1: text = '' }) => {
      const from = index + all.indexOf(text);
      return index < head.length ? [] : [without(TYPED, passage(file, source, from, from + text.length))];
    },
  );
  return [...script, ...words];
}

const BETWEEN_MARKS = /(?<!=)[>}]([^<>{}=]+)(?=[<{])/g;
const ATTRIBUTE = /\b(?:title|description|heading|label|alt|aria-label)="([^"]+)"/g;
