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
  walk(parse(html, { sourceCodeLocationInfo: true }));
  return found;
}

/** An attribute of an element; undefined where it has none. */
export const attributeOf = (element: Element, name: string): string | undefined =>
  element.attrs.find((each) => each.name === name)?.value;

/** Where an attribute stands in the text of its page; where its element begins, if that is not known. */
export function placeOfAttribute(element: Element, name: string): { line: number; column: number } {
  const at = element.sourceCodeLocation?.attrs?.[name] ?? element.sourceCodeLocation;
  return { line: at?.startLine ?? 1, column: at?.startCol ?? 1 };
}

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
