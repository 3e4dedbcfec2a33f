import type { Group } from './finds.ts';
import type { Found } from './program.ts';

/** How many are shown of each kind; of one kind alone. */
export const A_FEW = 3;
export const MANY = 30;

/** A group under its name, with a way to all of its kind where there are more. */
export function groupOf(
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
export function listOf(name: string, finds: readonly HTMLLIElement[]): HTMLElement[] {
  const heading = document.createElement('h2');
  heading.textContent = name;
  const list = document.createElement('ol');
  list.className = 'list';
  list.append(...finds);
  return [heading, list];
}

/** The index marks the words it found; the marks are kept, everything else goes in as text. */
export function item(kind: string, { url, excerpt, meta }: Found): HTMLLIElement {
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
