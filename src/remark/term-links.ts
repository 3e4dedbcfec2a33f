import type { Link, Parents, PhrasingContent, Root, Text } from 'mdast';
import { SKIP, visitParents } from 'unist-util-visit-parents';
import type { Term } from './terms.ts';

export interface TermLinkOptions {
  readonly terms: readonly Term[];
}

/** Inside these a word is left alone: it is a link already, or a name and not a sentence. */
const left = new Set(['link', 'linkReference', 'heading', 'inlineCode', 'code']);

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);

/** Links each term of the glossary where a page first uses it. Words inside links, headings and code are left alone. */
export function termLinks({ terms }: TermLinkOptions) {
  const byForm = new Map<string, Term>();
  for (const term of terms)
    for (const form of [term.term, ...(term.also ?? [])]) byForm.set(form.toLowerCase(), term);
  // The longest form first, so that "ridge beam" is not taken for "ridge".
  const forms = [...byForm.keys()].sort((a, b) => b.length - a.length);
  if (forms.length === 0) return () => undefined;
  const anyForm = new RegExp(
    String.raw`(?<![\p{L}\p{N}-])(?:${forms.map(escaped).join('|')})(?![\p{L}\p{N}-])`,
    'giu',
  );
  return (tree: Root): void => {
    const used = new Set<string>();
    visitParents(tree, 'text', (node: Text, ancestors) => {
      if (ancestors.some(({ type }) => left.has(type))) return undefined;
      const parent = ancestors.at(-1) as Parents | undefined;
      const pieces = withLinks(node.value);
      if (!parent || pieces.length === 1) return undefined;
      const place = (parent.children as unknown[]).indexOf(node);
      (parent.children as PhrasingContent[]).splice(place, 1, ...pieces);
      return [SKIP, place + pieces.length];
    });

    function withLinks(text: string): PhrasingContent[] {
      const pieces: PhrasingContent[] = [];
      let from = 0;
      for (const { 0: form, index } of text.matchAll(anyForm)) {
        const term = byForm.get(form.toLowerCase());
        if (!term || used.has(term.id)) continue;
        used.add(term.id);
        if (index > from) pieces.push({ type: 'text', value: text.slice(from, index) });
        pieces.push(termLink(term, form));
        from = index + form.length;
      }
      if (from < text.length || pieces.length === 0) pieces.push({ type: 'text', value: text.slice(from) });
      return pieces;
    }
  };
}

/** Without its meaning as a title: that shows to a mouse alone, and the list of terms is a tap away. */
const termLink = ({ id }: Term, form: string): Link => ({
  type: 'link',
  url: `/terms/#${id}`,
  children: [{ type: 'text', value: form }],
  data: { hProperties: { className: ['term'] } },
});
