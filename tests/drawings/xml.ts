/** An element of XML as it was read. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Element | string)[];
}

const REFERENCE = '&(?:amp|lt|gt|quot|apos);';
const NAME = '[A-Za-z_][\\w.:-]*';
const ATTRIBUTE = `\\s+(${NAME})="((?:[^<&"]|${REFERENCE})*)"`;
const START = new RegExp(`<(${NAME})((?:${ATTRIBUTE})*)\\s*(/?)>`, 'y');
const END = new RegExp(`</(${NAME})\\s*>`, 'y');
const TEXT = new RegExp(`(?:[^<>&]|${REFERENCE})+`, 'y');
/** The characters that XML 1.0 can hold. */
const HELD = /^[\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]*$/u;

const characters = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&apos;': "'" } as const;
const plain = (text: string): string =>
  text.replace(new RegExp(REFERENCE, 'g'), (written) => characters[written as keyof typeof characters]);

/**
 * Reads XML of one root element: elements, attributes in double quotes, text, the five named references. Strict: it knows nothing else,
 * and mends nothing.
 * @throws Error that says where it stopped.
 */
export function readXml(text: string): Element {
  let at = 0;
  const stop = (expected: string): never => {
    throw new Error(`found "${text.slice(at, at + 40)}" at ${at}, expected ${expected}`);
  };
  const take = (pattern: RegExp): RegExpExecArray | undefined => {
    pattern.lastIndex = at;
    const found = pattern.exec(text) ?? undefined;
    if (found) at += found[0].length;
    return found;
  };
  const element = (): Element => {
    const start = take(START) ?? stop('a start tag');
    const [, name = '', written = ''] = start;
    const pairs = [...written.matchAll(new RegExp(ATTRIBUTE, 'g'))].map(
      ([, key = '', value = '']) => [key, plain(value)] as const,
    );
    if (new Set(pairs.map(([key]) => key)).size < pairs.length) stop(`each attribute of <${name}> once`);
    const children: (Element | string)[] = [];
    if (start.at(-1) !== '/') {
      for (let end = take(END); !end || end[1] !== name; end = take(END)) {
        if (end) stop(`</${name}> before it`);
        children.push(text[at] === '<' ? element() : plain((take(TEXT) ?? stop('text'))[0]));
      }
    }
    return { name, attributes: Object.fromEntries(pairs), children };
  };
  if (!HELD.test(text)) stop('characters that XML can hold');
  const root = element();
  if (at < text.length) stop('the end');
  return root;
}

/** An element and all elements in it, in order. */
export const everyElement = (element: Element): Element[] => [
  element,
  ...element.children.flatMap((child) => (typeof child === 'string' ? [] : everyElement(child))),
];

/** The words in an element. */
export const wordsOf = (element: Element): string =>
  element.children.map((child) => (typeof child === 'string' ? child : wordsOf(child))).join('');
