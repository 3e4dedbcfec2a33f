/** A term as far as its names go. */
interface Named {
  readonly term: string;
  readonly also?: readonly string[] | undefined;
}

const HEADING = /<h1[^>]*>([\s\S]*?)<\/h1>/;

/**
 * A page as the search index is to read it, with the whole name of a term that its heading has by one letter: a search takes a letter for the
 * beginning of any word. The name is weighed and not shown.
 * @example withLongNames('<h1>R</h1>', [{ term: 'R-value', also: ['R'] }]) // => '<h1>R</h1><span data-pagefind-meta="also:R-value"></span>'
 */
export function withLongNames(html: string, terms: readonly Named[]): string {
  const heading = (HEADING.exec(html)?.[1] ?? '').replace(/<[^>]*>/g, ' ');
  const words = heading.split(/[^\p{L}\p{N}-]+/u);
  const names = terms
    .filter(({ also = [] }) => also.some((form) => form.length === 1 && words.includes(form)))
    .map(({ term }) => `<span data-pagefind-meta="also:${term}"></span>`);
  return html.replace(HEADING, (whole) => whole + names.join(''));
}
