import { type DefaultTreeAdapterTypes, parse } from 'parse5';

export type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.Node;

const isElement = (node: Node): node is Element => 'tagName' in node;

/** Attributes that lead to a page, an anchor or a file. */
export const leading = ['href', 'src', 'action', 'poster', 'data-index', 'data-file', 'xlink:href'] as const;

/** Every element of a page, in the order of its text; what stands inside a template among them. */
export function elementsIn(html: string): Element[] {
  const found: Element[] = [];
  const walk = (node: Node): void => {
    if (isElement(node)) found.push(node);
    if ('content' in node) walk(node.content);
    if ('childNodes' in node) node.childNodes.forEach(walk);
  };
  walk(parse(html));
  return found;
}

/** An attribute of an element or its tag; undefined where it has none. */
export const attributeOf = ({ attrs }: Pick<Element, 'attrs'>, name: string): string | undefined =>
  attrs.find((each) => each.name === name)?.value;

/** The words of an element, its parts parted by spaces, as they are read. */
export function wordsOf(element: Element): string {
  const pieces: string[] = [];
  const walk = (node: Node): void => {
    if (node.nodeName === '#text' && 'value' in node) pieces.push(node.value);
    else if ('childNodes' in node) {
      const block = isElement(node) && parted.has(node.tagName);
      if (block) pieces.push(' ');
      node.childNodes.forEach(walk);
      if (block) pieces.push(' ');
    }
  };
  walk(element);
  return pieces.join('').replace(/\s+/g, ' ').trim();
}

const parted: ReadonlySet<string> = new Set([
  'p',
  'li',
  'ol',
  'ul',
  'div',
  'dt',
  'dd',
  'figure',
  'table',
  'tr',
  'td',
  'th',
]);
