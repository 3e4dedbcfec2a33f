import type { Root } from 'mdast';
import type { VFile } from 'vfile';
import { bareQuantitiesIn } from '../rulebook/bare-quantity.ts';
import type { Problem } from '../rulebook/problem.ts';
import { placeInHead, placeInText, placeOf, problemAt, stopOn } from './problem-in-page.ts';
import { proseOf } from './prose.ts';

/** Stops the build at a number with a unit that no rule backs, with file and line. Runs before references are replaced. */
export function noBareQuantity() {
  return (tree: Root, file: VFile): void => stopOn([...inHead(file), ...inProse(tree, file)]);
}

function inProse(tree: Root, file: VFile): Problem[] {
  const { text: prose, pieces } = proseOf(tree);
  return bareQuantitiesIn(prose).flatMap(({ text, at }) => {
    const piece = pieces.findLast(({ from }) => from <= at);
    if (!piece) return [];
    const { node, from } = piece;
    const place =
      node.type === 'text' ? placeInText(file, node, node.value.slice(0, at - from), text) : placeOf(node);
    return [
      problemAt(file, place, `"${inOneLine(text)}"`, 'the rule it comes from, as <Rule id="..." />', CHECK),
    ];
  });
}

/** The head of a page holds plain words, shown as its title and summary; no rule can stand in them. */
function inHead(file: VFile): Problem[] {
  const words = Object.values(file.data.astro?.frontmatter ?? {}).filter((each) => typeof each === 'string');
  return words
    .flatMap(bareQuantitiesIn)
    .map(({ text }) =>
      problemAt(
        file,
        placeInHead(file, text),
        `"${inOneLine(text)}"`,
        'no number with a unit at the head of a page; say it below, as <Rule id="..." />',
        CHECK,
      ),
    );
}

const CHECK = 'bare-quantity';

const inOneLine = (text: string): string => text.replace(/\s+/g, ' ');
