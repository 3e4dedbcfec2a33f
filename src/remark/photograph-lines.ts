import type { ListItem, Root } from 'mdast';
import { visit } from 'unist-util-visit';
import type { VFile } from 'vfile';
import type { ListedPhotograph } from './photographs.ts';

/** A page of procedures, by its path. */
const PROCEDURE = /content\/en\/do\/([a-z0-9-]+)\.mdx$/;

/** Adds to a step which photograph it asks for, where the step does not say so in its own words. */
export function photographLines({ photographs }: { readonly photographs: readonly ListedPhotograph[] }) {
  return (tree: Root, file: VFile): void => {
    const [, name] = PROCEDURE.exec(file.path?.replaceAll('\\', '/') ?? '') ?? [];
    const wanted = photographs.filter(({ page, said }) => page === name && !said);
    if (wanted.length === 0) return;
    let step = 0;
    visit(tree, 'list', ({ ordered, children }) => {
      if (!ordered) return;
      for (const item of children) {
        step += 1;
        for (const { shows } of wanted.filter((each) => each.step === step)) item.children.push(line(shows));
      }
    });
  };
}

const line = (shows: string): ListItem['children'][number] => ({
  type: 'paragraph',
  data: { hProperties: { className: ['photograph'] } },
  children: [{ type: 'text', value: `Photograph: ${shows}.` }],
});
