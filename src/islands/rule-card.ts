/**
 * Opens a rule's card in place: a number that leads to a rule's page shows value, source and status where the reader is, on any page, in
 * results and in drawings. Where the card can't be had, or a new tab is asked for, the link does what links do.
 */
export function mountRuleCards(): void {
  // Not every browser brings a number of a drawing to the screen when the keyboard comes to it.
  document.addEventListener('focusin', ({ target }) => {
    if (!(target instanceof SVGElement)) return;
    const { top, bottom } = target.getBoundingClientRect();
    if (top < 0 || bottom > innerHeight) scrollBy(0, top - innerHeight / 2);
  });
  // Browsers before 2022 have no dialogue: there a number leads to its page.
  if (typeof HTMLDialogElement === 'undefined') return;
  document.addEventListener('click', (event) => {
    if (event.defaultPrevented || event.button !== 0) return;
    if (event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    const link = event.target instanceof Element ? event.target.closest('a.rule') : null;
    const href = link?.getAttribute('href');
    if (!href) return;
    event.preventDefault();
    cardAt(href).then(show, () => location.assign(href));
  });
}

/** The card of a rule, out of the rule's own page. */
async function cardAt(href: string): Promise<{ readonly card: Element; readonly href: string }> {
  const answer = await fetch(href);
  if (!answer.ok) throw new Error(`found no page at ${href}`);
  const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
  const card = page.querySelector('.rule-card');
  if (!card) throw new Error(`found no card at ${href}`);
  // Its own links begin at its own page, and the card is shown on another.
  const from = new URL(href, location.href);
  for (const link of card.querySelectorAll<Element>('[href]'))
    link.setAttribute('href', new URL(link.getAttribute('href') ?? '', from).href);
  return { card, href };
}

/** One dialog serves every card; the browser gives the focus back when it closes. */
function dialog(): HTMLDialogElement {
  const there = document.getElementById('rule-dialog');
  if (there instanceof HTMLDialogElement) return there;
  const made = document.createElement('dialog');
  made.id = 'rule-dialog';
  made.className = 'rule-dialog';
  // A tap beside the card closes it.
  made.addEventListener('click', (event) => {
    if (event.target === made) made.close();
  });
  document.body.append(made);
  return made;
}

function show({ card, href }: { readonly card: Element; readonly href: string }): void {
  const box = dialog();
  const inside = document.importNode(card, true);
  const title = document.createElement('h2');
  title.id = 'rule-dialog-title';
  const heading = inside.querySelector('h1');
  title.append(...(heading?.childNodes ?? []));
  heading?.replaceWith(title);
  box.setAttribute('aria-labelledby', title.id);
  const whole = document.createElement('a');
  whole.href = href;
  whole.className = 'alone';
  whole.textContent = 'The whole page of this value: its uses, its checks';
  const close = document.createElement('button');
  close.type = 'button';
  close.textContent = 'Close';
  close.addEventListener('click', () => box.close());
  box.textContent = '';
  box.append(close, inside, whole);
  if (!box.open) box.showModal();
  // A card is longer than a phone: what is asked for stands at its head, and is read from there.
  title.tabIndex = -1;
  title.focus();
  box.scrollTop = 0;
}
