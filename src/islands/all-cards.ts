import { setAsLarge } from './card.ts';

/**
 * Brings every card to one page, to be printed in one go: each is cut out of its own page at a press, as the card of a number is. All of
 * them built into one page would weigh three times what a page may, and would stand in the copy twice.
 */
export function mountAllCards(): void {
  const button = document.getElementById('bring-cards');
  const said = document.getElementById('brought');
  const list = document.getElementById('cards');
  if (!(button instanceof HTMLButtonElement) || !said || !list) return;
  const links = [...list.querySelectorAll('a')];
  let asked = false;

  const bring = async (): Promise<void> => {
    let come = 0;
    const tell = () => {
      said.textContent = `${come} of ${links.length} cards are here.`;
    };
    tell();
    const cards = await Promise.all(
      links.map(async ({ href, textContent }) => {
        const card = await cardAt(href).catch(() => undefined);
        if (card) {
          come += 1;
          tell();
        }
        return card ?? String(textContent);
      }),
    );
    const missing = cards.filter((card) => typeof card === 'string');
    // A binder that lacks cards, and does not say so, is worse than none.
    if (missing.length > 0) {
      said.textContent = `These did not come: ${missing.join('; ')}. Nothing is ready to print. Press again where there is a network, or where the copy is saved whole.`;
      return;
    }
    for (const card of cards) if (typeof card !== 'string') put(card);
    list.hidden = true;
    button.textContent = `Print all ${links.length} cards`;
    said.textContent = `All ${links.length} cards are here, each on a sheet of its own.`;
  };

  button.addEventListener('click', () => {
    if (list.hidden) return print();
    if (asked) return;
    asked = true;
    void bring().finally(() => {
      asked = false;
    });
  });
}

/** The card of a procedure, out of its own page. @throws Error where the page can't be had, or holds none */
async function cardAt(href: string): Promise<HTMLElement> {
  const answer = await fetch(href);
  if (!answer.ok) throw new Error(`found no page at ${href}`);
  const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
  const card = page.querySelector<HTMLElement>('.card');
  if (!card) throw new Error(`found no card at ${href}`);
  // Its own links begin at its own page.
  for (const link of card.querySelectorAll('a'))
    link.setAttribute('href', new URL(link.getAttribute('href') ?? '', href).href);
  // Each card has a first step. What a drawing names inside itself stays.
  for (const each of card.querySelectorAll('[id]:not(svg *)')) each.removeAttribute('id');
  return card;
}

/** Puts a card behind those that are here, with what the foot of this page knows of the copy. */
function put(card: HTMLElement): void {
  const last = document.querySelector('.last-checked')?.textContent;
  for (const each of card.querySelectorAll('.last-checked')) each.textContent = last ?? each.textContent;
  card.classList.add('of-all');
  document.getElementById('main')?.append(card);
  setAsLarge(card);
}
