import { type Element, elementsIn, wordsOf } from '../../src/built/html.ts';
import type { Site } from './page-load.ts';

/** A page of words alone, as any site builder takes it. */
export interface PlainPage {
  /** Its place: "patching". */
  readonly slug: string;
  readonly title: string;
  /** MDX without components. */
  readonly body: string;
}

const signs: Readonly<Record<string, string>> = { h2: '## ', h3: '### ', p: '', li: '- ' };

/** Signs that MDX would read as more than text. */
const escaped = (words: string): string => words.replace(/[\\`*_{}[\]<>#|~]/g, String.raw`\$&`);

const isInside = (element: Element, tag: string): boolean => {
  for (let at = element.parentNode; at !== null && 'tagName' in at; at = at.parentNode)
    if (at.tagName === tag) return true;
  return false;
};

/** The words of a built page, its numbers and cautions among them, as MDX without components. */
export function plainPage(file: string, html: string): PlainPage {
  const elements = elementsIn(html).filter((each) => isInside(each, 'main'));
  const lines = elements.flatMap((element) => {
    const sign = signs[element.tagName];
    // A paragraph inside an item is told with its item.
    if (sign === undefined || (element.tagName === 'p' && isInside(element, 'li'))) return [];
    const words = wordsOf(element);
    return words === '' ? [] : [sign + escaped(words)];
  });
  const heading = elements.find(({ tagName }) => tagName === 'h1');
  return {
    slug: file.split('/').at(-2) ?? 'index',
    title: heading ? wordsOf(heading) : file,
    body: lines.join('\n\n'),
  };
}

/** The first so many pages that are read, in the order of their places, as plain ones. */
export function plainPages(site: Site, many: number): PlainPage[] {
  const read = [...site]
    .filter(([file]) => /^(do|know|trouble)\/[^/]+\/index\.html$/.test(file))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .slice(0, many);
  return read.map(([file, bytes]) => plainPage(file, new TextDecoder().decode(bytes)));
}

/** So many pages made of those given, each with a place and a title of its own. */
export const repeated = (pages: readonly PlainPage[], many: number): PlainPage[] =>
  Array.from({ length: many }, (_, place) => {
    const page = pages[place % pages.length];
    if (!page) throw new Error('found no page to repeat, expected one or more');
    return { ...page, slug: `${page.slug}-${place}`, title: `${page.title} ${place}` };
  });
