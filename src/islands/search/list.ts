import { afterPaint } from '../after-paint.ts';
import { soon } from '../soon.ts';
import type { Group } from './finds.ts';
import type { Found } from './program.ts';

/** How many are shown of each kind; of one kind alone. */
export const A_FEW = 3;
export const MANY = 30;

/** What is shown of some finds, and how. */
interface Shown {
  /** The most of each group. */
  readonly most: number;
  /** Asks for all of a kind. */
  readonly choose: (kind: string) => void;
  /** Is something else asked by now? */
  readonly overtaken: () => boolean;
}

/**
 * Shows the finds in their groups. The best match of the best kinds comes first, since most who look don't know which kind they want: these
 * few pages are asked for, and painted, before all others. Then each group stands in its place as soon as its pages are told.
 * @throws where what a page says can't be had.
 */
export async function showFinds(
  list: HTMLElement,
  groups: readonly Group[],
  { most, choose, overtaken }: Shown,
): Promise<void> {
  const best = groups.length > 1 ? groups.filter(({ rank }) => rank === 0).slice(0, A_FEW) : [];
  /** The finds of a group from one place to another, as they are listed; none once something else is asked. */
  const told = async ({ kind, results }: Group, from: number, to: number): Promise<HTMLLIElement[]> => {
    const found = await Promise.all(results.slice(from, to).map((result) => result.data()));
    return overtaken() ? [] : found.map((each) => item(kind, each));
  };
  list.setAttribute('aria-busy', 'true');
  const first = await Promise.all(best.map((each) => told(each, 0, 1)));
  if (overtaken()) return;
  list.textContent = '';
  if (best.length > 0) list.append(...listOf('Best matches', first.flat()));
  let turn = new Promise<void>(afterPaint);
  await Promise.all(
    groups.map(async (group) => {
      const place = document.createElement('div');
      list.append(place);
      // To ask for the pages of all groups at once would hold up the next key.
      turn = turn.then(() => new Promise<void>(soon));
      await turn;
      if (overtaken()) return;
      // What stands among the best is not said again.
      const finds = await told(group, best.includes(group) ? 1 : 0, most);
      place.append(...groupOf(group, finds, choose));
    }),
  );
  if (!overtaken()) list.removeAttribute('aria-busy');
}

/** A group under its name, with a way to all of its kind where there are more. */
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

/** A list of finds under a heading. */
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
