/** The part of the search index's own interface that is used here. */
interface SearchIndex {
  readonly search: (
    words: string,
  ) => Promise<{ readonly results: readonly { readonly data: () => Promise<Found> }[] }>;
}

interface Found {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: { readonly title?: string; readonly kind?: string };
}

const MOST_SHOWN = 20;

/** Searches as the form is sent or its words change, and says of each result what kind of page it is. */
export function mount(): void {
  const form = document.getElementById('search') as HTMLFormElement | null;
  const box = document.getElementById('q') as HTMLInputElement | null;
  const count = document.getElementById('count');
  const list = document.getElementById('results');
  if (!form || !box || !count || !list) return;
  let index: Promise<SearchIndex> | undefined;
  let asked = 0;

  const look = async (): Promise<void> => {
    const words = box.value.trim();
    const turn = ++asked;
    history.replaceState(null, '', words === '' ? location.pathname : `?q=${encodeURIComponent(words)}`);
    if (words === '') {
      list.replaceChildren();
      count.textContent = '';
      return;
    }
    index ??= import(/* @vite-ignore */ form.dataset.index ?? '') as Promise<SearchIndex>;
    const { results } = await (await index).search(words);
    const found = await Promise.all(results.slice(0, MOST_SHOWN).map((result) => result.data()));
    // A slower answer to earlier words must not take the place of this one.
    if (turn !== asked) return;
    count.textContent = results.length === 1 ? '1 page' : `${results.length} pages`;
    list.replaceChildren(...found.map(item));
  };

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    void look();
  });
  box.addEventListener('input', () => void look());
  box.value = new URLSearchParams(location.search).get('q') ?? '';
  void look();
}

/** The index marks the words it found; the marks are kept, everything else goes in as text. */
function item({ url, excerpt, meta }: Found): HTMLLIElement {
  const entry = document.createElement('li');
  const link = document.createElement('a');
  link.href = url;
  const title = document.createElement('strong');
  title.textContent = `${meta.kind ?? 'page'}: ${meta.title ?? url}`;
  const words = document.createElement('span');
  for (const [place, piece] of excerpt.split(/<\/?mark>/).entries()) {
    const text = new DOMParser().parseFromString(piece, 'text/html').documentElement.textContent ?? '';
    if (place % 2 === 0) words.append(text);
    else words.append(Object.assign(document.createElement('mark'), { textContent: text }));
  }
  link.append(title, words);
  entry.append(link);
  return entry;
}
