import { attributeOf, type Element, elementsIn, wordsOf } from './html.ts';

/** A part of a page that search finds by itself, at its own anchor. */
export interface SearchRecord {
  /** Its address from the root of the site, with the anchor. */
  readonly url: string;
  readonly kind: string;
  readonly title: string;
  /** The heading of the page it is a part of. */
  readonly page: string;
  readonly content: string;
}

/**
 * The parts of a built page that are found by themselves: what bears `data-record` with the word for its kind, and an id. Its title is
 * what `data-record-title` says, else its first paragraph, else all its words.
 * @param path the page's address from the root of the site, such as "/do/patching/"
 */
export function recordsIn(path: string, html: string): SearchRecord[] {
  if (!html.includes('data-record')) return [];
  const elements = elementsIn(html);
  const heading = elements.find(({ tagName }) => tagName === 'h1');
  return elements.flatMap((element) => {
    const [kind, id] = [attributeOf(element, 'data-record'), attributeOf(element, 'id')];
    if (kind === undefined || id === undefined) return [];
    const content = wordsOf(element);
    const first = paragraphIn(element);
    return [
      {
        url: `${path}#${id}`,
        kind,
        title: attributeOf(element, 'data-record-title') ?? (first ? wordsOf(first) : content),
        page: heading ? wordsOf(heading) : '',
        content,
      },
    ];
  });
}

const paragraphIn = (element: Element): Element | undefined =>
  element.childNodes.find((each): each is Element => 'tagName' in each && each.tagName === 'p');
