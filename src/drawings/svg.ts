/** An element of a drawing; plain data until it is written out. */
export interface Shape {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly (Shape | string)[];
}

export const shape = (
  tag: string,
  attributes: Readonly<Record<string, string | number>> = {},
  ...children: (Shape | string)[]
): Shape => ({ tag, attributes, children });

/** What XML 1.0 can't hold, whatever way it is written. */
const UNHELD = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

/** Most words and all numbers stand as they are; a drawing has thousands, and is written anew at each key. */
const TO_ESCAPE = /[^\w .,()#-]/;

const escaped = (text: string): string => (TO_ESCAPE.test(text) ? escapedAll(text) : text);

const escapedAll = (text: string): string =>
  text
    .replace(UNHELD, '\uFFFD')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');

/** Gives the page of a rule. */
export type RuleHref = (rule: string) => string;

/** Does a drawing hold words that lead to a rule? */
const leads = (shapes: readonly (Shape | string)[]): boolean =>
  shapes.some((each) => typeof each !== 'string' && ('data-rule' in each.attributes || leads(each.children)));

/**
 * The rules whose values words of a drawing tell, each once.
 * @example rulesShown({ shapes: [shape('g', {}, shape('text', { 'data-rule': 'a.b' }, '2 in'))] }) // => ['a.b']
 */
export const rulesShown = ({ shapes }: Pick<Drawing, 'shapes'>): string[] => [
  ...new Set(shapes.flatMap(rulesIn)),
];

const rulesIn = (each: Shape | string): string[] =>
  typeof each === 'string'
    ? []
    : [
        ...('data-rule' in each.attributes ? [String(each.attributes['data-rule'])] : []),
        ...each.children.flatMap(rulesIn),
      ];

/** Two decimals of a drawing unit are finer than any screen or printer shows. */
const rounded = (value: string | number): string =>
  typeof value === 'number' ? String(Math.round(value * 100) / 100) : value;

/**
 * An attribute as it is set on an element, where nothing is to be escaped.
 * @example attributeText(1.2345) // => '1.23'
 */
export const attributeText = (value: string | number): string => held(rounded(value));

/**
 * Words as they stand in an element, where nothing is to be escaped.
 * @example held('6 in < 7 in') // => '6 in < 7 in'
 */
export const held = (words: string): string =>
  TO_ESCAPE.test(words) ? words.replace(UNHELD, '\uFFFD') : words;

/** How long a line under words is for a letter of the usual faces, as a share of their size. */
const UNDER = 0.46;

/** A line under words. A browser's own is hidden by the halo that keeps words legible on other lines. */
function underline({ attributes: { x, y, transform = '', ...rest }, children }: Shape): Shape {
  const long = String(children).length * Number(rest['font-size'] ?? 13) * UNDER;
  const before = { start: 0, end: 1 }[String(rest['text-anchor'])] ?? 0.5;
  return shape('path', {
    d: `M${rounded(Number(x) - before * long)} ${rounded(Number(y) + 2.5)}h${rounded(long)}`,
    stroke: 'currentColor',
    transform,
  });
}

/** A shape in which words that tell a rule's own value lead to its page. */
const linked = (each: Shape, ruleHref: RuleHref): Shape => {
  const children = each.children.map((child) =>
    typeof child === 'string' ? child : linked(child, ruleHref),
  );
  if (!('data-rule' in each.attributes)) return { ...each, children };
  const { 'data-rule': rule, ...own } = each.attributes;
  const words = shape(each.tag, own, ...children);
  return shape('a', { class: 'rule', href: ruleHref(String(rule)) }, words, underline(words));
};

/** A shape as SVG text. @example svgText(shape('g', { x: 1 }, 'a < b')) // => '<g x="1">a &lt; b</g>' */
export const svgText = (each: Shape | string): string => {
  if (typeof each === 'string') return escaped(each);
  let text = `<${each.tag}`;
  for (const [name, value] of Object.entries(each.attributes))
    text += ` ${name}="${escaped(rounded(value))}"`;
  if (each.children.length === 0) return `${text}/>`;
  text += '>';
  for (const child of each.children) text += svgText(child);
  return `${text}</${each.tag}>`;
};

/** What a drawing is: its size, its title, what it shows in words, its elements. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** What a reader who can't see it is told. */
  readonly description: string;
  readonly shapes: readonly Shape[];
  /** Of two views one below the other: where the second begins. */
  readonly secondFrom?: number;
  /** Where it begins, if what lies above is left out. */
  readonly top?: number;
}

/**
 * One view of a drawing that has two, alone on its sheet; the whole of a drawing that has one.
 * @example viewOf({ width: 9, height: 9, title: 'A', description: 'B', shapes: [], secondFrom: 6 }, 'second').height // => 3
 */
export function viewOf(drawing: Drawing, view: 'first' | 'second'): Drawing {
  const { secondFrom, ...one } = drawing;
  if (secondFrom === undefined) return drawing;
  return view === 'first'
    ? { ...one, height: secondFrom }
    : { ...one, top: secondFrom, height: one.height - secondFrom };
}

/**
 * A drawing as an SVG element. Ids inside it begin with `name`, so that two drawings can stand on one page. With `ruleHref`, words that
 * tell a rule's own value lead to its page.
 * @example svgShape({ width: 9, height: 9, title: 'A', description: 'B', shapes: [] }, 'plan').tag // => 'svg'
 */
export function svgShape(
  { width, height, top = 0, title, description, shapes }: Drawing,
  name: string,
  ruleHref?: RuleHref,
): Shape {
  return shape(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 ${rounded(top)} ${rounded(width)} ${rounded(height)}`,
      width,
      height,
      // An image hides what is inside it from a screen reader; links must be found.
      role: ruleHref && leads(shapes) ? 'group' : 'img',
      'aria-labelledby': `${name}-title`,
      'aria-describedby': `${name}-description`,
      'font-family': 'system-ui, sans-serif',
      'font-size': 13,
      fill: 'none',
      stroke: 'none',
    },
    shape('title', { id: `${name}-title` }, title),
    shape('desc', { id: `${name}-description` }, description),
    ...(ruleHref ? shapes.map((each) => linked(each, ruleHref)) : shapes),
  );
}

/**
 * A drawing as SVG text; `name` and `ruleHref` as for its element.
 * @example toSvg({ width: 9, height: 9, title: 'A', description: 'B', shapes: [] }, 'plan').startsWith('<svg') // => true
 */
export const toSvg = (drawing: Drawing, name: string, ruleHref?: RuleHref): string =>
  svgText(svgShape(drawing, name, ruleHref));
