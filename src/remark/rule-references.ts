import type { Link, Root, RootContent } from 'mdast';
import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';
import { SKIP, visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import { nearest } from '../rulebook/nearest.ts';
import { placeholdersIn } from '../rulebook/placeholders.ts';
import type { Problem } from '../rulebook/problem.ts';
import type { LoadedCaution, Rule, RulebookData } from '../rulebook/rulebook.ts';
import { tableCellText, valueText } from '../rulebook/value-text.ts';
import { placeOf, problemAt, stopOn } from './problem-in-page.ts';

export interface RuleReferenceOptions {
  readonly data: RulebookData;
}

/** Stands between a calculation and its figure in the id of a note; the id of a rule has none. */
const WORKED = '#';

type Element = MdxJsxFlowElement | MdxJsxTextElement;

const attribute = (element: Element, name: string): string | undefined => {
  const found = element.attributes.find((each) => each.type === 'mdxJsxAttribute' && each.name === name);
  return typeof found?.value === 'string' ? found.value : undefined;
};

/** What is read of each element; anything else would go by unseen. */
const attributesOf: ReadonlyMap<string | null, readonly string[]> = new Map([
  ['Rule', ['id', 'part', 'row', 'column']],
  ['Caution', ['id']],
  ['Worked', ['of', 'figure']],
]);

/** Names as a sentence lists them. */
const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join() : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** What of an element would go by unread, in words; undefined where all of it is read. */
function unread(element: Element, known: readonly string[]): string | undefined {
  for (const each of element.attributes) {
    if (each.type !== 'mdxJsxAttribute') return `{${each.value}} in <${element.name}>`;
    if (!known.includes(each.name)) return `"${each.name}" in <${element.name}>`;
    if (typeof each.value !== 'string') return `${each.name} without quotes in <${element.name}>`;
  }
  return element.children.length > 0 ? `words between <${element.name}> and its end` : undefined;
}

/**
 * Puts the value of a rule in the place of `<Rule id="patch.layers.overlap" />`: number, unit, and a link to the rule.
 * `part="low"` or `part="high"` takes one end of a range; `row="gypsum 1/2 in; 24" column="load"` takes a cell of a table. Hands the
 * ids used on a page to its layout, in order, each once, those of the values inside its cautions among them and those of figures that a
 * calculation works out, as "fill#bags"; and numbers each by its place in that list: so its note in print has its number.
 * Checks the ids of `<Caution id="..." />` too. Stops the build at an unknown id, and at anything in either that nobody reads, with
 * file and line.
 */
export function ruleReferences({ data }: RuleReferenceOptions) {
  return (tree: Root, file: VFile): void => {
    const problems: Problem[] = [];
    const notes: string[] = [];
    const complain = (node: Element, found: string, expected: string, check: string): void => {
      problems.push(problemAt(file, placeOf(node), found, expected, check));
    };
    const unknown = (node: Element, kind: string, id: string, known: readonly string[]): void => {
      const guess = nearest(id, known);
      complain(
        node,
        `the ${kind} "${id}"`,
        guess ? `an id of the rulebook; did you mean "${guess}"?` : 'an id of the rulebook',
        `unknown-${kind}`,
      );
    };
    /** The number of a note on this page: the first number has the first note, and one that comes again the same. */
    const noteOf = (id: string): number => {
      if (!notes.includes(id)) notes.push(id);
      return notes.indexOf(id) + 1;
    };
    /** Says to the component which note each value of its caution has. */
    const numberItsValues = (node: Element, { says, do: act }: LoadedCaution): void => {
      const ids = new Set(placeholdersIn(`${says} ${act}`).map((each) => each.rule));
      if (ids.size === 0) return;
      const value = [...ids].map((id) => `${id}=${noteOf(id)}`).join(' ');
      node.attributes.push({ type: 'mdxJsxAttribute', name: 'notes', value });
    };
    visit(tree, (node, place, parent) => {
      if (node.type !== 'mdxJsxTextElement' && node.type !== 'mdxJsxFlowElement') return undefined;
      const known = attributesOf.get(node.name);
      if (!known) return undefined;
      const extra = unread(node, known);
      if (extra !== undefined) {
        complain(node, extra, `${listed(known)} in quotes, and nothing else`, 'attribute');
        return undefined;
      }
      if (node.name === 'Worked') {
        const value = String(noteOf(`${attribute(node, 'of')}${WORKED}${attribute(node, 'figure')}`));
        node.attributes.push({ type: 'mdxJsxAttribute', name: 'note', value });
        return undefined;
      }
      const id = attribute(node, 'id') ?? '';
      if (node.name === 'Caution') {
        const caution = Object.hasOwn(data.cautions, id) ? data.cautions[id] : undefined;
        if (caution) numberItsValues(node, caution);
        else unknown(node, 'caution', id, Object.keys(data.cautions));
        return undefined;
      }
      const rule = Object.hasOwn(data.rules, id) ? data.rules[id] : undefined;
      if (!rule) {
        unknown(node, 'rule', id, Object.keys(data.rules));
        return undefined;
      }
      const shown = shownOf(rule, (name) => attribute(node, name));
      if ('found' in shown) {
        complain(node, shown.found, shown.expected, shown.check);
        return undefined;
      }
      const { text } = shown;
      if (parent && place !== undefined) {
        parent.children.splice(place, 1, ruleLink(rule, text, noteOf(id)) as RootContent);
        return [SKIP, place + 1];
      }
      return undefined;
    });
    stopOn(problems);
    const { astro } = file.data;
    file.data.astro = { ...astro, frontmatter: { ...astro?.frontmatter, notes } };
  };
}

type Shown = { text: string } | { found: string; expected: string; check: string };

/** What stands in the place of a reference: a value, an end of a range, or a cell of a table. */
function shownOf({ id, value }: Rule, asked: (name: string) => string | undefined): Shown {
  const [part, row, column] = [asked('part'), asked('row'), asked('column')];
  const forCell = row !== undefined || column !== undefined;
  if (value.kind === 'table' && forCell) {
    const cell = tableCellText(value, { row, column, part });
    return 'text' in cell ? cell : { ...cell, found: `${cell.found} of "${id}"`, check: 'rule-cell' };
  }
  const text = forCell ? undefined : valueText(value, part);
  if (text !== undefined) return { text };
  const given = forCell ? ' with a row or a column' : part === undefined ? '' : ` with part "${part}"`;
  return {
    found: `"${id}"${given}, of the kind ${value.kind}`,
    expected: 'a rule with one value, an end of a range, or row and column of a table',
    check: 'rule-part',
  };
}

/** A number stays with its unit on one line; words may run over several. */
const ruleLink = ({ id, title, value }: Rule, text: string, note: number): Link => ({
  type: 'link',
  url: `/rules/${id}/`,
  title,
  children: [{ type: 'text', value: text }],
  data: {
    hProperties: {
      className: value.kind === 'one-of' || !/\d/.test(text) ? ['rule', 'choice'] : ['rule'],
      'data-rule': id,
      'data-note': note,
    },
  },
});
