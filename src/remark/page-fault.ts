/** What the parser of pages says of a text that it can't read. */
export interface ParserSays {
  readonly reason?: string | undefined;
  readonly line?: number | null | undefined;
  readonly column?: number | null | undefined;
}

/** A fault of a page in plain words, at the mark where it begins. */
export interface PageFault {
  readonly line: number;
  readonly column: number;
  readonly found: string;
  readonly expected: string;
}

const MOST_SHOWN = 60;
const A_VALUE = '<Rule id="patch.layers.overlap" />';

/** What somebody wrote that begins with <, and what stands for it on a page; the first that fits. */
const written: readonly (readonly [
  begins: RegExp,
  found: (all: string) => string,
  expected: (all: string) => string,
])[] = [
  [/^<!--/, () => 'a remark between <!-- and -->', () => 'no remark: a page has none, so take it away'],
  [/^<(?:mailto:)?[^\s<>@]+@[^\s<>]+>?/, (all) => all, (all) => `[${bare(all)}](mailto:${bare(all)})`],
  [/^<https?:[^\s<>]*>?/i, (all) => all, (all) => `words in brackets before it: [our site](${bare(all)})`],
  [
    /^<[A-Z][^<>\n]*[“”„‟«»‘’][^<>\n]*>?/,
    (all) => `bent quotes in ${all}`,
    () => `straight ones, as in ${A_VALUE}`,
  ],
  [/^<[A-Z][^<>\n]*>?/, (all) => `${all}, which can not be read as it stands`, () => `it as in ${A_VALUE}`],
  [/^<\/?[a-z][^<>\n]*>?/, (all) => all, () => 'words; ** before and after makes them bold'],
  [
    /^<\S?/,
    (all) => `the mark < before ${all.length > 1 ? `"${all.slice(1)}"` : 'nothing'}`,
    () => 'the words "less than", or &lt; in its place',
  ],
];

const bare = (all: string): string => all.replace(/^<(?:mailto:)?|>$/gi, '');

const placeAt = (text: string, at: number): Pick<PageFault, 'line' | 'column'> => {
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
};

const offsetOf = (text: string, line: number, column: number): number =>
  text
    .split('\n')
    .slice(0, line - 1)
    .reduce((all, each) => all + each.length + 1, column - 1);

/**
 * What is wrong with a page that can't be read? Told by what somebody wrote; the parser's own words stand only where that is not known.
 * @example pageFault('Keep <3 in.', { reason: 'Unexpected character', line: 1, column: 7 }) // => { line: 1, column: 6, found: 'the mark < before "3"', expected: 'the words "less than", or &lt; in its place' }
 */
export function pageFault(text: string, { reason = '', line, column }: ParserSays): PageFault {
  // Of a tag that is never closed the parser gives the place in words, and only that of all about it otherwise.
  const [, inWords, itsColumn] = /\((\d+):(\d+)-/.exec(reason) ?? [];
  const at = offsetOf(text, Number(inWords ?? line ?? 1), Number(itsColumn ?? column ?? 1));
  if (/expression/.test(reason)) {
    const brace = Math.max(0, text.lastIndexOf('{', at));
    return { ...placeAt(text, brace), found: 'the mark {', expected: 'words without { and }' };
  }
  const begins = text.lastIndexOf('<', at);
  if (begins >= 0) {
    const rest = text.slice(begins);
    for (const [pattern, found, expected] of written) {
      const all = pattern.exec(rest)?.[0].slice(0, MOST_SHOWN);
      if (all !== undefined) return { ...placeAt(text, begins), found: found(all), expected: expected(all) };
    }
  }
  return {
    ...placeAt(text, at),
    found: `something that is no part of a page (the parser: ${(reason.split('\n')[0] ?? '').slice(0, 120)})`,
    expected: 'words, links, lists and tables',
  };
}
