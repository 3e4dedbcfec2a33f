import type { Root } from 'mdast';
import type { VFile } from 'vfile';
import { bareQuantitiesIn } from '../rulebook/bare-quantity.ts';
import type { PageHead } from '../rulebook/local/page-head.ts';
import { DataError, type Problem } from '../rulebook/problem.ts';
import { noBareQuantity } from './no-bare-quantity.ts';
import { placeInHead, problemAt } from './problem-in-page.ts';

/**
 * Which numbers with a unit stand in a page of an agency, or in its head? None may: a page has no source of its own, so it shows values, and a note that
 * cites its document says the rest.
 */
export function numbersOnLocalPage(tree: Root, file: VFile, head: PageHead | undefined): Problem[] {
  const inHead = Object.values(head ?? {})
    .flatMap(bareQuantitiesIn)
    .map(({ text }) =>
      problemAt(
        file,
        placeInHead(file, text),
        `"${text}"`,
        'no number with a unit at the head of a page; say it below, as <Rule id="..." />',
        'bare-quantity',
      ),
    );
  return [...inHead, ...inWords(tree, file)];
}

function inWords(tree: Root, file: VFile): Problem[] {
  try {
    noBareQuantity()(tree, file);
    return [];
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    const expected =
      'a value, as <Rule id="..." />; what the rulebook has no value for goes into a note that cites its document';
    return error.problems.map((each) => ({ ...each, expected }));
  }
}
