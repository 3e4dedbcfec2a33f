/** The parts of the search index's own interface that are used here. */
interface SearchProgram {
  readonly createInstance: (options: {
    readonly noWorker: boolean;
    readonly metaCacheTag?: string;
    readonly ranking: { readonly metaWeights: Readonly<Record<string, number>> };
  }) => SearchIndex & { readonly filters: () => Promise<unknown> };
}

export interface SearchIndex {
  readonly search: (
    words: string,
    options?: { readonly filters?: { readonly kind: string } },
  ) => Promise<{ readonly results: readonly Result[] }>;
}

export interface Result {
  readonly id: string;
  readonly score: number;
  /** Which words of its content were found, by their places. */
  readonly words: readonly number[];
  readonly data: () => Promise<Found>;
}

export interface Found {
  readonly url: string;
  readonly excerpt: string;
  readonly content: string;
  /** A step has no title, but its first words. */
  readonly meta: { readonly title?: string; readonly first?: string; readonly page?: string };
}

/** What a word counts for in a title and in the lead of a page, beside the words of the page itself. Further down, it may stand by the way. */
const WEIGHTS = { title: 5, also: 5, lead: 3, first: 1, kind: 1, page: 0.5 };

/** The index, ready to be asked. @throws where its program or its list of pages can't be had. */
export async function startIndex(from: string, version: string | undefined): Promise<SearchIndex> {
  const { createInstance } = (await import(/* @vite-ignore */ from)) as SearchProgram;
  // A worker would ask for everything again that the page's links have fetched, and for a program of its own.
  const made = createInstance({
    noWorker: true,
    ranking: { metaWeights: WEIGHTS },
    ...(version ? { metaCacheTag: version } : {}),
  });
  await made.filters();
  return made;
}
