import { posix } from 'node:path';
import type { SearchPart } from './search-parts.ts';

/** The page that searches, and the folder of what it searches in. */
export const SEARCH_PAGE = 'search/index.html';
const INDEX = 'pagefind';

/** What the index says of itself, as far as it is asked here. */
export interface IndexEntry {
  readonly languages: Readonly<Record<string, { readonly hash: string; readonly wasm: string | null }>>;
}

/**
 * The page of the search with a link for all that any search needs, so that a phone asks for it beside the page's own scripts: the index
 * would ask for one after the other, and on a slow line each step costs a second. The page bears the index's version, since the entry of
 * the index is asked for by it, and tells its parts, so that the one with the words that are typed is asked for before the program is there.
 * @param html the page, whose form tells where the index lies
 * @param entry what the index says of itself, as written in pagefind-entry.json
 * @param filters the files of its filters, by their names
 * @param parts those of the index that hold its words
 * @throws Error where the index is not in English, or the page does not tell where it lies.
 */
export function withSearchLinks(
  html: string,
  entry: string,
  filters: readonly string[],
  parts: readonly SearchPart[],
): string {
  const { languages } = JSON.parse(entry) as IndexEntry;
  const { hash, wasm } = languages.en ?? {};
  if (hash === undefined || wasm === undefined)
    throw new Error(`found an index of ${Object.keys(languages).join(', ')}, expected one in English (en)`);
  if (!html.includes(' data-index="'))
    throw new Error(
      'found a search page whose form has no data-index, expected the place of the index in it',
    );
  const at = posix.relative(posix.dirname(SEARCH_PAGE), INDEX);
  // Behind the page's own scripts, which show it.
  const fetched = [
    `pagefind-entry.json?ts=${hash}`,
    `pagefind.${hash}.pf_meta`,
    `wasm.${wasm ?? 'unknown'}.pagefind`,
    ...filters.map((name) => `filter/${name}`),
  ].map(
    (name) =>
      `<link rel="preload" as="fetch" crossorigin="anonymous" fetchpriority="low" href="${at}/${name}">`,
  );
  const links = [`<link rel="modulepreload" href="${at}/pagefind.js">`, ...fetched].join('');
  const told = JSON.stringify(parts).replaceAll('&', '&amp;').replaceAll('"', '&quot;');
  return html
    .replace('</head>', () => `${links}</head>`)
    .replace(' data-index="', () => ` data-version="${hash}" data-parts="${told}" data-index="`);
}
