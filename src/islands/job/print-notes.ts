import { ruleNotes } from '../../generated/rule-notes.ts';
import { dayOf } from '../../rulebook/day.ts';
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
      link.append(span, ' ');
    }
    const item = document.createElement('li');
    item.append(link);
    list.append(item);
  }
  section.append(heading, list);
  return section;
}

/**
 * Words as a style sheet quotes them.
 * @example quotedInStyle('Lot "9"') // => '"Lot \\22 9\\22 "'
 */
export const quotedInStyle = (words: string): string =>
  `"${words.replace(/["\\\n\r\f<]/g, (sign) => `\\${sign.charCodeAt(0).toString(16)} `)}"`;

/** Every sheet of paper names its job and the day of its print at its head: papers get mixed, and a later print may say otherwise. */
function headOf(root: Element): string | undefined {
  const name = root.querySelector<HTMLElement>('[data-job]')?.dataset.job;
  return name
    ? `@page{@top-left{content:${quotedInStyle(`${name}, printed ${dayOf(new Date())}`)};font:8pt sans-serif}}`
    : undefined;
}

/** The sheet that it stands in while the page is printed: a page's policy lets a script add a rule to one, and no style of its own. */
function addHead(root: Element): CSSStyleSheet | undefined {
  const rule = headOf(root);
  const sheet = document.styleSheets[0];
  if (!rule || !sheet) return undefined;
  try {
    sheet.insertRule(rule, sheet.cssRules.length);
    return sheet;
  } catch {
    // Opened from a disk, a browser hands out no sheet: the paper goes without.
    return undefined;
  }
}

/**
 * Numbers the values of rules on a sheet while it is printed, and tells at its end where each is from: on paper nothing can be tapped. The
 * sheet of a job changes with every entry, so its notes are made as it is printed; those of other pages are made with the page.
 */
export function mountPrintNotes(root: HTMLElement): void {
  let notes: HTMLElement | undefined;
  let headed: CSSStyleSheet | undefined;
  const remove = (): void => {
    headed?.deleteRule(headed.cssRules.length - 1);
    headed = undefined;
    notes?.remove();
    notes = undefined;
    for (const link of root.querySelectorAll<HTMLElement>('a.rule[data-note]')) delete link.dataset.note;
  };
  addEventListener('beforeprint', () => {
    remove();
    headed = addHead(root);
    const links = shownLinks(root);
    const ids = rulesInOrder(links.map(addressOf));
    if (ids.length === 0) return;
    for (const link of links) {
      const id = ruleOf(addressOf(link));
      if (id !== undefined) link.dataset.note = String(ids.indexOf(id) + 1);
    }
    notes = notesOf(ids);
    // Behind the last card of an opening they took a sheet for themselves.
    const card = root.querySelector('.hole-card');
    if (card) card.before(notes);
    else root.after(notes);
  });
  addEventListener('afterprint', remove);
}
