import {
  allButOne,
  type Called,
  isFoundFor,
  lookedFor,
  toldOf,
  withoutSmall,
  wordsIn,
} from './search-words.ts';
import { soon } from './soon.ts';

/** The parts of the search index's own interface that are used here. */
interface SearchProgram {
  readonly createInstance: (options: {
    readonly noWorker: boolean;
    readonly metaCacheTag?: string;
    readonly ranking: { readonly metaWeights: Readonly<Record<string, number>> };
  }) => SearchIndex;
}
interface SearchIndex {
  readonly filters: () => Promise<unknown>;
  readonly search: (
    words: string,
    options?: { readonly filters?: { readonly kind: string } },
  ) => Promise<{ readonly results: readonly Result[] }>;
}

interface Result {
  readonly id: string;
  readonly score: number;
  /** Which words of its content were found, by their places. */
  readonly words: readonly number[];
  readonly data: () => Promise<Found>;
}

interface Found {
  readonly url: string;
  readonly excerpt: string;
  readonly content: string;
  /** A step has no title, but its first words. */
  readonly meta: { readonly title?: string; readonly first?: string; readonly page?: string };
}

/** What was found of one kind. */
interface Group {
  readonly kind: string;
  readonly name: string;
  /** 0 for what a crew looks for; 1 for pages about the site; 2 for what only a reviewer looks for. The lower stands first. */
  readonly rank: number;
  readonly results: readonly Result[];
}

/** How many are shown of each kind; of one kind alone. */
const A_FEW = 3;
const MANY = 30;

/** What a word counts for in a title and in the lead of a page, beside the words of the page itself. Further down, it may stand by the way. */
const WEIGHTS = { title: 5, also: 5, lead: 3, first: 1, kind: 1, page: 0.5 };

/** Pages about the site, such as its front page, which speak of everything. */
const ABOUT = 'page';

/** What keeps a person whole comes first; what a crew does or works out stands before values and words, of which many match alike. */
const FIRST: Readonly<Record<string, number>> = {
  safety: 1.3,
  trouble: 1.2,
  'sheet of the job': 0.8,
  term: 0.7,
  rule: 0.5,
  lesson: 0.5,
};

/** How many finds tell whether a word is meant. */
const TRIED = 3;

/**
 * Searches as the form is sent or its words change. What is found stands in groups, one for each kind of page, the kind with the best
 * find first, and last what an audit asks for; a kind chosen in the form stands alone. Words and kind stand in the address.
 */
export function mount(): void {
  const form = document.getElementById('search') as HTMLFormElement | null;
  const box = document.getElementById('q') as HTMLInputElement | null;
  const only = document.getElementById('kind') as HTMLSelectElement | null;
  const count = document.getElementById('count');
  const list = document.getElementById('results');
  if (!form || !box || !only || !count || !list) return;
  const kinds = [...only.options].filter(({ value }) => value !== '');
  // From where the page stands: an import would begin where this script does.
  const from = new URL(form.dataset.index ?? '', location.href).href;
  const { version } = form.dataset;
  const called = JSON.parse(form.dataset.called ?? '[]') as Called;
  let index: Promise<SearchIndex> | undefined;
  /** On a poor line the index takes seconds: it is fetched while the words are typed. What failed is tried again at the next word. */
  const started = (): Promise<SearchIndex | undefined> => {
    index ??= (import(/* @vite-ignore */ from) as Promise<SearchProgram>).then(async ({ createInstance }) => {
      // A worker would ask for everything again that the page's links have fetched, and for a program of its own.
      const made = createInstance({
        noWorker: true,
        ranking: { metaWeights: WEIGHTS },
        ...(version ? { metaCacheTag: version } : {}),
      });
      await made.filters();
      return made;
    });
    return index.catch(() => {
      index = undefined;
      return undefined;
    });
  };
  let asked = 0;

  const look = async (): Promise<void> => {
    const typed = box.value.trim();
    const turn = ++asked;
    const address = new URLSearchParams({
      ...(typed && { q: typed }),
      ...(only.value && { kind: only.value }),
    });
    history.replaceState(null, '', String(address) === '' ? location.pathname : `?${address}`);
    if (typed === '') {
      list.replaceChildren();
      list.removeAttribute('aria-busy');
      count.textContent = '';
      return;
    }
    const read = await started();
    if (!read) {
      count.textContent =
        'Search can’t start in this browser, or its index can’t be had. Find a step, Calculators and Values, above, list their pages.';
      return;
    }
    const { words, swapped } = lookedFor(typed, called);
    const here = await Promise.all(words.map((word) => isHere(read, word)));
    const [known, unknown] = [true, false].map((is) => words.filter((_, place) => here[place] === is)) as [
      string[],
      string[],
    ];
    /** The finds for any of these words, in groups; undefined once something else is asked. */
    const groupsFor = async (asks: readonly string[]): Promise<Group[] | undefined> => {
      const looked: Group[] = [];
      for (const { value: kind, text: name, parentElement: under } of kinds) {
        if (only.value !== '' && only.value !== kind) continue;
        const results = await findsOf(read, kind, asks);
        if (results.length > 0)
          looked.push({ kind, name, rank: under !== only ? 2 : kind === ABOUT ? 1 : 0, results });
        // All kinds at once would hold up the next key for a moment on a slow phone.
        await new Promise<void>(soon);
        if (turn !== asked) return undefined;
      }
      return looked.sort((a, b) => a.rank - b.rank || counts(b) - counts(a));
    };
    // An agency's page, or a document, may have the word that was typed.
    const both =
      swapped.length > 0 && (await Promise.all(swapped.map(([name]) => isUsed(read, name)))).every(Boolean);
    const asks = [known, ...(both ? [withoutSmall(wordsIn(typed))] : [])].map((each) => each.join(' '));
    let groups = known.length === 0 ? [] : await groupsFor(asks);
    const apart = groups?.length === 0 && known.length > 1;
    if (apart) groups = await groupsFor(allButOne(known).map((each) => each.join(' ')));
    // A slower answer to earlier words must not take the place of this one.
    if (groups === undefined || turn !== asked) return;
    const most = only.value === '' ? A_FEW : MANY;
    const all = groups.reduce((sum, { results }) => sum + results.length, 0);
    count.textContent = [
      all === 0 ? 'Nothing found.' : `${all} found.`,
      toldOf(swapped, unknown),
      ...(apart && all > 0
        ? [
            `${only.value === '' ? 'No page' : 'None of this kind'} has all of these words; these have some of them.`,
          ]
        : []),
    ]
      .filter((each) => each !== '')
      .join(' ');
    if (all === 0) list.replaceChildren();
    list.setAttribute('aria-busy', 'true');
    // One of a kind each, since most who look don't know which kind they want. They don't stand in their groups again.
    const best = groups.length > 1 ? groups.filter(({ rank }) => rank === 0).slice(0, A_FEW) : [];
    // Each group is shown as soon as its pages are told, in its place among the others.
    const shown = new Map<Group, readonly Found[]>();
    const items = (group: Group, from: number, to?: number): HTMLLIElement[] =>
      (shown.get(group) ?? []).slice(from, to).map((found) => item(group.kind, found));
    await Promise.all(
      groups.map(async (group) => {
        shown.set(group, await Promise.all(group.results.slice(0, most).map((result) => result.data())));
        if (turn !== asked) return;
        list.replaceChildren(
          ...(best.length > 0
            ? listOf(
                'Best finds',
                best.flatMap((each) => items(each, 0, 1)),
              )
            : []),
          ...groups.flatMap((each) => groupOf(each, items(each, best.includes(each) ? 1 : 0), choose)),
        );
      }),
    );
    if (turn === asked) list.removeAttribute('aria-busy');
  };

  const choose = (kind: string): void => {
    only.value = kind;
    only.focus();
    void look();
  };
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    void look();
  });
  box.addEventListener('input', () => void look());
  only.addEventListener('change', () => void look());
  const given = new URLSearchParams(location.search);
  box.value = given.get('q') ?? '';
  only.value = given.get('kind') ?? '';
  // A kind that there is not.
  if (only.selectedIndex < 0) only.value = '';
  void started();
  void look();
}

/** What a group's best find counts for beside those of the others. */
const counts = ({ kind, results }: Group): number => (results[0]?.score ?? 0) * (FIRST[kind] ?? 1);

/** The finds of one kind for any of some words, each find once, the best first. */
async function findsOf(index: SearchIndex, kind: string, asks: readonly string[]): Promise<Result[]> {
  const finds = new Map<string, Result>();
  for (const words of asks)
    for (const result of (await index.search(words, { filters: { kind } })).results)
      if (result.score > (finds.get(result.id)?.score ?? 0)) finds.set(result.id, result);
  return [...finds.values()].sort((a, b) => b.score - a.score);
}

/** Where these words stand as they are, one after the other. */
const standing = async (index: SearchIndex, words: string, kind?: string): Promise<number> =>
  (await index.search(`"${words}"`, kind === undefined ? {} : { filters: { kind } })).results.length;

/** Does anything but the list of terms, which tells what others call a thing, have these words? */
const isUsed = async (index: SearchIndex, words: string): Promise<boolean> =>
  (await standing(index, words)) > (await standing(index, words, 'term'));

/** Does anything here have this word, or one that it begins? */
async function isHere(index: SearchIndex, word: string): Promise<boolean> {
  if ((await standing(index, word)) > 0) return true;
  const { results } = await index.search(word);
  const tried = await Promise.all(
    results.slice(0, TRIED).map(async ({ words, data }) => {
      const { content, meta } = await data();
      const all = content.split(/\s+/);
      return [...words.map((place) => all[place] ?? ''), ...wordsIn(Object.values(meta).join(' '))];
    }),
  );
  return tried.flat().some((found) => isFoundFor(word, found));
}

function groupOf(
  { kind, name, results }: Group,
  finds: readonly HTMLLIElement[],
  choose: (kind: string) => void,
): HTMLElement[] {
  if (finds.length === 0) return [];
  const group = listOf(name, finds);
  if (results.length <= A_FEW || finds.length > A_FEW) return group;
  const more = document.createElement('button');
  more.type = 'button';
  more.className = 'plain';
  more.textContent = `${name}: all ${results.length}`;
  more.addEventListener('click', () => choose(kind));
  return [...group, more];
}

function listOf(name: string, finds: readonly HTMLLIElement[]): HTMLElement[] {
  const heading = document.createElement('h2');
  heading.textContent = name;
  const list = document.createElement('ol');
  list.className = 'list';
  list.append(...finds);
  return [heading, list];
}

/** The index marks the words it found; the marks are kept, everything else goes in as text. */
function item(kind: string, { url, excerpt, meta }: Found): HTMLLIElement {
  const entry = document.createElement('li');
  const link = document.createElement('a');
  link.href = url;
  const title = document.createElement('strong');
  title.textContent = `${kind}: ${meta.title ?? meta.first ?? url}`;
  link.append(title);
  if (meta.page)
    link.append(
      Object.assign(document.createElement('span'), { className: 'whence', textContent: `in: ${meta.page}` }),
    );
  const words = document.createElement('span');
  for (const [place, piece] of excerpt.split(/<\/?mark>/).entries()) {
    // A template runs nothing, and keeps the space at the ends of a piece.
    const read = document.createElement('template');
    read.innerHTML = piece;
    const text = read.content.textContent ?? '';
    if (place % 2 === 0) words.append(text);
    else words.append(Object.assign(document.createElement('mark'), { textContent: text }));
  }
  link.append(words);
  entry.append(link);
  return entry;
}
