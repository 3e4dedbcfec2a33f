/** A rule's value asked for inside a sentence of a caution: `{safety.roof.fall-height}` or `{fill.density.usual low}`. */
export interface Placeholder {
  readonly rule: string;
  readonly part: 'low' | 'high' | undefined;
  readonly written: string;
}

const PLACEHOLDER = /\{([a-z0-9-]+(?:\.[a-z0-9-]+)+)(?: (low|high))?\}/g;

/**
 * The pieces of a sentence in order: words, and the rules between them.
 * @example splitAtPlaceholders('Keep {a.b} off.').length // => 3
 */
export function splitAtPlaceholders(sentence: string): (string | Placeholder)[] {
  const pieces: (string | Placeholder)[] = [];
  let to = 0;
  // The browsers of 2019 know no matchAll.
  sentence.replace(PLACEHOLDER, (written, rule: string, part: Placeholder['part'], from: number) => {
    pieces.push(sentence.slice(to, from), { rule, part, written });
    to = from + written.length;
    return written;
  });
  return [...pieces, sentence.slice(to)].filter((piece) => piece !== '');
}

/** Which rules does a sentence ask for? @example placeholdersIn('from {a.b}')[0]?.rule // => 'a.b' */
export const placeholdersIn = (sentence: string): Placeholder[] =>
  splitAtPlaceholders(sentence).filter((piece): piece is Placeholder => typeof piece !== 'string');
