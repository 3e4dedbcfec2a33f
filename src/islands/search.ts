import { soon } from './soon.ts';

/** The parts of the search index's own interface that are used here. */
interface SearchProgram {
  readonly createInstance: (options: {
    readonly noWorker: boolean;
    readonly metaCacheTag?: string;
  }) => SearchIndex;
}
interface SearchIndex {
  readonly filters: () => Promise<unknown>;
  readonly search: (
    words: string,
    options: { readonly filters: { readonly kind: string } },
  ) => Promise<{ readonly results: readonly Result[] }>;
}

interface Result {
  readonly score: number;
  readonly data: () => Promise<Found>;
}

interface Found {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: { readonly title?: string; readonly page?: string };
}

/** What was found of one kind. */
interface Group {
  readonly kind: string;
  readonly name: string;
  /** Only a reviewer looks for it: it stands behind all others. */
  readonly audit: boolean;
  readonly results: readonly Result[];
}

/** How many are shown of each kind; of one kind alone. */
const A_FEW = 3;
const MANY = 30;

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
  let index: Promise<SearchIndex> | undefined;
  /** On a poor line the index takes seconds: it is fetched while the words are typed. What failed is tried again at the next word. */
  const started = (): Promise<SearchIndex | undefined> => {
    index ??= (import(/* @vite-ignore */ from) as Promise<SearchProgram>).then(async ({ createInstance }) => {
      // A worker would ask for everything again that the page's links have fetched, and for a program of its own.
      const made = createInstance({ noWorker: true, ...(version ? { metaCacheTag: version } : {}) });
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
    const words = box.value.trim();
    const turn = ++asked;
    const address = new URLSearchParams({
      ...(words && { q: words }),
      ...(only.value && { kind: only.value }),
    });
    history.replaceState(null, '', String(address) === '' ? location.pathname : `?${address}`);
    if (words === '') {
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
    const looked: Group[] = [];
    for (const { value: kind, text: name, parentElement: under } of kinds) {
      if (only.value !== '' && only.value !== kind) continue;
      const { results } = await read.search(words, { filters: { kind } });
      looked.push({ kind, name, audit: under !== only, results });
      // All kinds at once would hold up the next key for a moment on a slow phone.
      await new Promise<void>(soon);
      if (turn !== asked) return;
    }
    const groups = looked
      .filter(({ results }) => results.length > 0)
      .sort(
        (a, b) =>
          Number(a.audit) - Number(b.audit) || (b.results[0]?.score ?? 0) - (a.results[0]?.score ?? 0),
      );
    const most = only.value === '' ? A_FEW : MANY;
    // A slower answer to earlier words must not take the place of this one.
    if (turn !== asked) return;
    const all = groups.reduce((sum, { results }) => sum + results.length, 0);
    count.textContent = all === 0 ? 'Nothing found' : `${all} found`;
    if (all === 0) list.replaceChildren();
    list.setAttribute('aria-busy', 'true');
    // Each group is shown as soon as its pages are told, in its place among the others.
    const shown = new Map<Group, readonly Found[]>();
    await Promise.all(
      groups.map(async (group) => {
        shown.set(group, await Promise.all(group.results.slice(0, most).map((result) => result.data())));
        if (turn !== asked) return;
        list.replaceChildren(
          ...groups.flatMap((each) => {
            const found = shown.get(each);
            return found ? groupOf(each, found, choose) : [];
          }),
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

function groupOf(
  { kind, name, results }: Group,
  found: readonly Found[],
  choose: (kind: string) => void,
): HTMLElement[] {
  const heading = document.createElement('h2');
  heading.textContent = name;
  const list = document.createElement('ol');
  list.className = 'list';
  list.append(...found.map((each) => item(kind, each)));
  if (results.length <= found.length || found.length === MANY) return [heading, list];
  const more = document.createElement('button');
  more.type = 'button';
  more.className = 'plain';
  more.textContent = `${name}: all ${results.length}`;
  more.addEventListener('click', () => choose(kind));
  return [heading, list, more];
}

/** The index marks the words it found; the marks are kept, everything else goes in as text. */
function item(kind: string, { url, excerpt, meta }: Found): HTMLLIElement {
  const entry = document.createElement('li');
  const link = document.createElement('a');
  link.href = url;
  const title = document.createElement('strong');
  title.textContent = `${kind}: ${meta.title ?? url}`;
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
