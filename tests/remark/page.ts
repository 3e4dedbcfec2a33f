import { parseFrontmatter, unified } from '@astrojs/markdown-remark';
import type { Nodes } from 'hast';
import { pagePlugins } from '../../src/remark/page-plugins.ts';
import { DataError, formatProblem } from '../../src/rulebook/problem.ts';
import type { Rule, RulebookData } from '../../src/rulebook/rulebook.ts';
import type { RuleValue } from '../../src/rulebook/schema.ts';

/** A page that went through the pipeline. */
export interface Page {
  /** Its prose, elements and links as they go to the page's components. */
  readonly html: string;
  /** What each number on it is, in the order of their notes. */
  readonly notes: readonly string[];
}

/**
 * Puts the text of a page through what the site puts it through: the same processor, the same plugins, the head blanked out in front
 * of them. Only the last step, from tree to components, is left out.
 */
export async function pageOf(text: string, data: RulebookData, path = FILE): Promise<Page> {
  let html = '';
  let notes: readonly string[] = [];
  const keep = () => (tree: Nodes, file: { data: { astro?: { frontmatter?: Record<string, unknown> } } }) => {
    html = htmlOf(tree);
    notes = file.data.astro?.frontmatter?.notes as readonly string[];
  };
  const { frontmatter, content } = parseFrontmatter(text, { frontmatter: 'empty-with-spaces' });
  const processor = unified({
    remarkPlugins: pagePlugins({ data }),
    rehypePlugins: [keep],
    smartypants: false,
  });
  const renderer = await processor.createMdxRenderer?.({ syntaxHighlight: false }, { optimize: false });
  if (!renderer) throw new Error('found no renderer of MDX, expected one');
  await renderer.process(content, path, frontmatter);
  return { html, notes };
}

/** Where pages of these tests pretend to stand. */
export const FILE = 'content/en/do/a-page.mdx';

/** What stops a page, a line for each mistake; nothing if it goes through. */
export async function stopped(text: string, data: RulebookData, path = FILE): Promise<string[]> {
  try {
    await pageOf(text, data, path);
    return [];
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    return error.problems.map(formatProblem);
  }
}

/** A name as it is written out; the tree has it as scripts do. */
const attributeName = (name: string): string =>
  name === 'className'
    ? 'class'
    : name.replace(/^data([A-Z])/, (_, letter: string) => `data-${letter.toLowerCase()}`);

/** Elements, attributes and words, as plain as they can be written. */
function htmlOf(node: Nodes): string {
  if (node.type === 'text') return node.value;
  const inside = 'children' in node ? node.children.map(htmlOf).join('') : '';
  if (node.type === 'element') {
    const attributes = Object.entries(node.properties).map(
      ([name, value]) => ` ${attributeName(name)}="${Array.isArray(value) ? value.join(' ') : value}"`,
    );
    return `<${node.tagName}${attributes.join('')}>${inside}</${node.tagName}>`;
  }
  if (node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement') {
    const attributes = node.attributes.map((each) => ('name' in each ? ` ${each.name}="${each.value}"` : ''));
    return `<${node.name}${attributes.join('')}>${inside}</${node.name}>`;
  }
  return inside;
}

const rule = (id: string, title: string, value: RuleValue): Rule => ({
  id,
  title,
  says: 'It is so.',
  value,
  source: { kind: 'practice' },
  applies_to: 'Every home.',
  file: 'rules/a.yaml',
  line: 1,
});

const rules = [
  rule('sash.cord.length', 'Length of the cord', { kind: 'exact', number: 2, unit: 'in' }),
  rule('sash.cord.reach', 'Reach of the cord', { kind: 'between', low: 6, high: 8, unit: 'ft' }),
  rule('sash.cord.pull', 'Pull on the cord', { kind: 'at-least', number: 30, unit: 'lb' }),
  rule('sash.cord.fill', 'Density of the weight', { kind: 'at-most', number: 1.5, unit: 'lb/ft3' }),
  rule('sash.cord.makes', 'Makes of cord', { kind: 'one-of', choices: ['cotton', 'hemp'] }),
  rule('sash.cord.built', 'First year', { kind: 'exact', number: 1978, unit: '1' }),
  rule('sash.cord.warmth', 'R per inch', { kind: 'between', low: 2.5, high: 3, unit: 'h ft2 F/(Btu in)' }),
  rule('sash.cord.loads', 'Loads of cords', {
    kind: 'table',
    columns: [
      { name: 'make', title: 'Make', key: 'word' },
      { name: 'strands', title: 'Strands', unit: '1', key: 'number' },
      { name: 'load', title: 'Load', unit: 'lb' },
    ],
    rows: [
      ['cotton', 2, 40],
      ['hemp', 2, 50],
      ['hemp', 3, [60, 70]],
    ],
  }),
];

/** A rulebook of one invented subject, with a rule of every kind. */
export const book: RulebookData = {
  version: '2026.1',
  rules: Object.fromEntries(rules.map((each) => [each.id, each])),
  documents: {},
  cautions: {
    'caution.sash.pinch': {
      id: 'caution.sash.pinch',
      level: 'warn',
      says: 'It pinches.',
      do: 'Keep off.',
      source: { kind: 'practice' },
      file: 'rules/cautions/sash.yaml',
      line: 1,
    },
    'caution.sash.drop': {
      id: 'caution.sash.drop',
      level: 'stop',
      says: 'It drops {sash.cord.reach high}.',
      do: 'Hold {sash.cord.pull}, then {sash.cord.reach low}.',
      source: { kind: 'practice' },
      file: 'rules/cautions/sash.yaml',
      line: 6,
    },
  },
};
