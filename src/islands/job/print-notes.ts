import { ruleNotes } from '../../generated/rule-notes.ts';
import { rulePage } from '../links.ts';
import { book } from '../rules.ts';

/**
 * Which rules do these addresses lead to, each once, in the order in which they first come?
 * @example rulesInOrder(['../rules/a.b/', '../cautions/roof/', '../rules/c.d/', '../rules/a.b/']) // => ['a.b', 'c.d']
 */
export const rulesInOrder = (addresses: readonly string[]): readonly string[] => [
  ...new Set(addresses.flatMap((address) => ruleOf(address) ?? [])),
];

const ruleOf = (address: string): string | undefined => /\/rules\/([^/#]+)\/$/.exec(address)?.[1];

/** Links to rules that a sheet shows: what is folded away is not printed. */
const shownLinks = (root: Element): HTMLAnchorElement[] =>
  [...root.querySelectorAll<HTMLAnchorElement>('a.rule[href]')].filter(
    (link) => link.getClientRects().length > 0,
  );

const addressOf = (link: Element): string => link.getAttribute('href') ?? '';

/** The notes of a sheet: each rule with its value and where that is from. */
function notesOf(ids: readonly string[]): HTMLElement {
  const section = document.createElement('section');
  section.className = 'numbers';
  const heading = document.createElement('h2');
  heading.textContent = 'Numbers on this sheet';
  const list = document.createElement('ol');
  for (const id of ids) {
    const [value = '', whence = ''] = ruleNotes[id] ?? [];
    const link = document.createElement('a');
    link.href = rulePage(id);
    for (const [name, words] of Object.entries({ name: book.titleOf(id), value, whence })) {
      const span = document.createElement('span');
      span.className = name;
      span.textContent = words;
      link.append(span);
    }
    const item = document.createElement('li');
    item.append(link);
    list.append(item);
  }
  section.append(heading, list);
  return section;
}

/**
 * Numbers the values of rules on a sheet while it is printed, and tells at its end where each is from: on paper nothing can be tapped. The
 * sheet of a job changes with every entry, so its notes are made as it is printed; those of other pages are made with the page.
 */
export function mountPrintNotes(root: HTMLElement): void {
  let notes: HTMLElement | undefined;
  const remove = (): void => {
    notes?.remove();
    notes = undefined;
    for (const link of root.querySelectorAll<HTMLElement>('a.rule[data-note]')) delete link.dataset.note;
  };
  addEventListener('beforeprint', () => {
    remove();
    const links = shownLinks(root);
    const ids = rulesInOrder(links.map(addressOf));
    if (ids.length === 0) return;
    for (const link of links) {
      const id = ruleOf(addressOf(link));
      if (id !== undefined) link.dataset.note = String(ids.indexOf(id) + 1);
    }
    notes = notesOf(ids);
    root.after(notes);
  });
  addEventListener('afterprint', remove);
}
