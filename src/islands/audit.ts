import { setAddress } from './own-address.ts';

/**
 * Filters of the table of values. What is chosen stands in the fragment of the address, so that a filtered table can be sent to somebody;
 * without script the plain table shows every value.
 */
const FILTERS = [
  'topic',
  'kind',
  'source',
  'document',
  'status',
  'safety',
  'guarded',
  'local',
  'readbefore',
] as const;
type Filter = (typeof FILTERS)[number];

/** Does a row pass? A date filter keeps what was read before that day, or on no known day. */
export function passes(
  row: Readonly<Record<string, string | undefined>>,
  chosen: Readonly<Partial<Record<Filter, string>>>,
): boolean {
  return FILTERS.every((filter) => {
    const wanted = chosen[filter];
    if (!wanted) return true;
    if (filter === 'readbefore') return row.document ? !row.read || row.read < wanted : false;
    return row[filter] === wanted;
  });
}

/** A document that values are drawn from, and whether it is a regulation, a standard or a handbook. */
interface Listed {
  readonly name: string;
  readonly kind: string;
}

/**
 * Which document does a line of source begin with? Where one's name begins another's, the longer is meant.
 * @example documentOf('24 CFR part 3280 (2015), 3280.504', [{ name: '24 CFR part 3280', kind: 'regulation' }])?.kind // => 'regulation'
 */
export const documentOf = (line: string, documents: readonly Listed[]): Listed | undefined =>
  documents
    .filter(({ name }) => line.startsWith(`${name} (`))
    .sort((a, b) => b.name.length - a.name.length)[0];

/** The documents that the page lists, under their kinds. */
const listed = (form: HTMLFormElement): Listed[] =>
  [...form.querySelectorAll('optgroup')].flatMap(({ label, children }) =>
    [...children].map(({ textContent }) => ({ name: textContent ?? '', kind: label })),
  );

/** What most rows are, and therefore none says: the table of all values is long. */
export const UNSAID = { kind: 'exact', safety: 'no safety value', local: 'as in the rulebook' } as const;

/** What a row of the table tells: what its cells say, and what it bears for the filters alone. */
function toldBy(
  row: HTMLElement,
  documents: readonly Listed[],
): Readonly<Record<string, string | undefined>> {
  const cell = (label: string) => row.querySelector(`[data-label="${label}"]`)?.textContent ?? '';
  const document = documentOf(cell('Source'), documents);
  return {
    ...UNSAID,
    ...row.dataset,
    topic: row.querySelector('code')?.textContent?.split('.')[0],
    status: cell('Status'),
    // What is drawn from no document has the kind of its status: practice, memory, derived.
    source: document?.kind ?? cell('Status'),
    document: document?.name,
    guarded: cell('Guarded by checks'),
  };
}

/** What the fragment of an address chooses; anything else in it is left alone. @example chosenIn('topic=fill&x=1') // => { topic: 'fill' } */
export const chosenIn = (fragment: string): Partial<Record<Filter, string>> =>
  Object.fromEntries(
    [...new URLSearchParams(fragment)].filter(
      ([name, value]) => (FILTERS as readonly string[]).includes(name) && value !== '',
    ),
  );

/** Brings the filters to life. */
export function mountAudit(): void {
  const form = document.getElementById('filters');
  if (!(form instanceof HTMLFormElement)) return;
  const documents = listed(form);
  const rows = [...document.querySelectorAll<HTMLElement>('#values tbody tr')].map((row) => ({
    row,
    told: toldBy(row, documents),
  }));
  const count = document.getElementById('shown');
  const show = (fragment: string) => {
    const chosen = chosenIn(fragment);
    for (const filter of FILTERS) {
      const box = form.elements.namedItem(filter) as HTMLSelectElement | HTMLInputElement | null;
      if (box) box.value = chosen[filter] ?? '';
    }
    let shown = 0;
    for (const { row, told } of rows) {
      row.hidden = !passes(told, chosen);
      if (!row.hidden) shown += 1;
    }
    if (count) count.textContent = `${shown} of ${rows.length} values shown.`;
  };
  const choose = (fragment: string) => {
    setAddress(fragment ? `#${fragment}` : undefined);
    show(fragment);
  };
  form.addEventListener('input', () => {
    const chosen = [...new FormData(form)].filter(([, value]) => value !== '') as [string, string][];
    choose(String(new URLSearchParams(chosen)));
  });
  form.addEventListener('submit', (event) => event.preventDefault());
  form.addEventListener('reset', () => queueMicrotask(() => choose('')));
  const arrive = () => show(location.hash.slice(1));
  addEventListener('hashchange', arrive);
  form.hidden = false;
  arrive();
}
