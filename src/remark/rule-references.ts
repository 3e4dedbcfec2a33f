import type { Link, Root, RootContent } from 'mdast';
import type { MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx-jsx';
import { SKIP, visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import { nearest } from '../rulebook/nearest.ts';
import type { Problem } from '../rulebook/problem.ts';
import type { RulebookData } from '../rulebook/rulebook.ts';
import { valueText } from '../rulebook/value-text.ts';
import { problemAtNode, stopOn } from './problem-in-page.ts';

export interface RuleReferenceOptions {
  readonly data: RulebookData;
  /** Where the site stands: `/`, or a path that ends in a slash. */
  readonly base: string;
}

type Element = MdxJsxFlowElement | MdxJsxTextElement;

const attribute = (element: Element, name: string): string | undefined => {
  const found = element.attributes.find((each) => each.type === 'mdxJsxAttribute' && each.name === name);
  return typeof found?.value === 'string' ? found.value : undefined;
};

/**
 * Puts the value of a rule in the place of `<Rule id="patch.layers.overlap" />`: number, unit, and a link to the rule.
 * `part="low"` or `part="high"` takes one end of a range. Hands the ids used on a page to its layout, in order, each once.
 * Checks the ids of `<Caution id="..." />` too. Stops the build at an unknown id, with file and line.
 */
export function ruleReferences({ data, base }: RuleReferenceOptions) {
  return (tree: Root, file: VFile): void => {
    const problems: Problem[] = [];
    const rules: string[] = [];
    const unknown = (node: Element, kind: string, id: string, known: readonly string[]) => {
      const guess = nearest(id, known);
      problems.push(
        problemAtNode(
          file,
          node,
          `the ${kind} "${id}"`,
          guess ? `an id of the rulebook; did you mean "${guess}"?` : 'an id of the rulebook',
          `unknown-${kind}`,
        ),
      );
    };
    visit(tree, (node, place, parent) => {
      if (node.type !== 'mdxJsxTextElement' && node.type !== 'mdxJsxFlowElement') return undefined;
      const id = attribute(node, 'id') ?? '';
      if (node.name === 'Caution' && !data.cautions[id])
        unknown(node, 'caution', id, Object.keys(data.cautions));
      if (node.name !== 'Rule') return undefined;
      const rule = data.rules[id];
      if (!rule) {
        unknown(node, 'rule', id, Object.keys(data.rules));
        return undefined;
      }
      const part = attribute(node, 'part');
      const text = valueText(rule.value, part);
      if (text === undefined) {
        problems.push(
          problemAtNode(
            file,
            node,
            `"${id}"${part ? ` with part "${part}"` : ''}, a ${rule.value.kind}`,
            'a rule with one value, or an end of a range',
            'rule-part',
          ),
        );
        return undefined;
      }
      if (!rules.includes(id)) rules.push(id);
      if (parent && place !== undefined) {
        parent.children.splice(place, 1, ruleLink(id, text, rule.title, base) as RootContent);
        return [SKIP, place + 1];
      }
      return undefined;
    });
    stopOn(problems);
    const astro = (file.data.astro ?? {}) as { frontmatter?: Record<string, unknown> };
    file.data.astro = { ...astro, frontmatter: { ...astro.frontmatter, rules } };
  };
}

const ruleLink = (id: string, text: string, title: string, base: string): Link => ({
  type: 'link',
  url: `${base}rules/${id}/`,
  title,
  children: [{ type: 'text', value: text }],
  data: { hProperties: { className: ['rule'], 'data-rule': id } },
});
