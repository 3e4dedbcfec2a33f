/** A rule's value asked for inside a sentence of a caution: `{safety.roof.fall-height}` or `{fill.density.usual low}`. */
export interface Placeholder {
  readonly rule: string;
  readonly part: 'low' | 'high' | undefined;
  readonly written: string;
}

const PLACEHOLDER = /\{([a-z0-9-]+(?:\.[a-z0-9-]+)+)(?: (low|high))?\}/g;

/** Which rules does a sentence ask for? @example placeholdersIn('from {a.b}')[0]?.rule // => 'a.b' */
export const placeholdersIn = (sentence: string): Placeholder[] =>
  [...sentence.matchAll(PLACEHOLDER)].map(([written, rule = '', part]) => ({
    rule,
    part: part as 'low' | 'high' | undefined,
    written,
  }));

/**
 * The pieces of a sentence in order: words, and the rules between them.
 * @example splitAtPlaceholders('Keep {a.b} off.').length // => 3
 */
export function splitAtPlaceholders(sentence: string): (string | Placeholder)[] {
  const pieces: (string | Placeholder)[] = [];
  let rest = sentence;
  for (const placeholder of placeholdersIn(sentence)) {
    const at = rest.indexOf(placeholder.written);
    pieces.push(rest.slice(0, at), placeholder);
    rest = rest.slice(at + placeholder.written.length);
  }
  return [...pieces, rest].filter((piece) => piece !== '');
}
