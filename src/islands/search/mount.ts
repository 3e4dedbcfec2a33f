import { setAddress } from '../own-address.ts';
import { findsFor, type Kind } from './finds.ts';
import { A_FEW, MANY, showFinds } from './list.ts';
import { type IndexPart, partOf } from './parts.ts';
import { type SearchIndex, startIndex } from './program.ts';
import { type Called, lookedFor } from './words.ts';

/** Pages about the site, such as its front page, which speak of everything. */
const ABOUT = 'page';

/** Longer than any question; what is pasted beyond it would take an old phone minutes. */
const MOST_TYPED = 100;

/** So long after the last key, in milliseconds, a word is taken for whole. */
const PAUSE = 200;

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
  const kinds = [...only.options]
    .filter(({ value }) => value !== '')
    .map(
      ({ value: kind, text: name, parentElement: under }): Kind => ({
        kind,
        name,
        rank: under !== only ? 2 : kind === ABOUT ? 1 : 0,
      }),
    );
  // From where the page stands: an import would begin where this script does.
  const from = new URL(form.dataset.index ?? '', location.href).href;
  const called = JSON.parse(form.dataset.called ?? '[]') as Called;
  let index: Promise<SearchIndex> | undefined;
  /** On a poor line the index takes seconds: it is fetched while the words are typed. What failed is tried again at the next word. */
  const started = (): Promise<SearchIndex | undefined> => {
    index ??= startIndex(from, form.dataset.version);
    return index.catch(() => {
      index = undefined;
      return undefined;
    });
  };
  let asked = 0;

  const parts = JSON.parse(form.dataset.parts ?? '[]') as readonly IndexPart[];
  const beside = new Set<string>();
  /** The index would ask for the parts that hold the words only once its program is there, which on a poor line takes seconds. */
  const askBeside = (typed: string): void => {
    for (const word of lookedFor(typed, called).words) {
      const part = partOf(word, parts);
      if (part === undefined || beside.has(part)) continue;
      beside.add(part);
      const link = document.createElement('link');
      link.rel = 'preload';
      link.as = 'fetch';
      link.crossOrigin = 'anonymous';
      link.href = new URL(`index/${part}.pf_index`, from).href;
      document.head.append(link);
    }
  };

  const look = async (): Promise<void> => {
    const typed = box.value.trim().slice(0, MOST_TYPED);
    const turn = ++asked;
    // A slower answer to earlier words must not take the place of this one.
    const overtaken = () => turn !== asked;
    const address = new URLSearchParams({
      ...(typed && { q: typed }),
      ...(only.value && { kind: only.value }),
    });
    setAddress(String(address) === '' ? location.pathname : `?${address}`);
    if (typed === '') {
      list.textContent = '';
      list.removeAttribute('aria-busy');
      count.textContent = '';
      return;
    }
    let ready = false;
    setTimeout(() => {
      if (!ready && !overtaken()) askBeside(typed);
    }, PAUSE);
    const read = await started();
    ready = true;
    if (overtaken()) return;
    if (!read) {
      count.textContent =
        'Search can’t start in this browser, or its index can’t be had. Find a step, Calculators and Values, above, list their pages.';
      return;
    }
    try {
      const wanted = kinds.filter(({ kind }) => only.value === '' || only.value === kind);
      const finds = await findsFor(read, typed, called, wanted, overtaken);
      if (!finds || overtaken()) return;
      count.textContent = finds.told;
      await showFinds(list, finds.groups, {
        most: only.value === '' ? A_FEW : MANY,
        choose,
        overtaken,
      });
    } catch {
      if (overtaken()) return;
      list.removeAttribute('aria-busy');
      count.textContent = 'A part of the index can’t be had. Search again once there is a network.';
    }
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
