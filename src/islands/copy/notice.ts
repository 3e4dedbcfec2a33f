/** A button of a notice. */
export interface Act {
  readonly name: string;
  readonly act: () => void;
  readonly plain?: boolean;
}

export function button({ name, act, plain = false }: Act): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  if (plain) made.className = 'plain';
  made.textContent = name;
  made.addEventListener('click', act);
  return made;
}

const paragraph = (...inside: readonly (string | Node)[]): HTMLParagraphElement => {
  const made = document.createElement('p');
  made.append(...inside);
  return made;
};

/** Says something above the page that a reader may act on, with what it is about to be opened; takes the place of what was said before. */
export function notice(says: string, lines: readonly string[], acts: readonly Act[]): void {
  const place = document.getElementById('copy-notice');
  if (!place) return;
  const inside: Node[] = [paragraph(says)];
  if (lines.length > 0) {
    const details = document.createElement('details');
    const summary = document.createElement('summary');
    summary.textContent = 'Which';
    const list = document.createElement('ul');
    for (const each of lines) {
      const item = document.createElement('li');
      item.textContent = each;
      list.append(item);
    }
    details.append(summary, list);
    inside.push(details);
  }
  const buttons = paragraph(...acts.map(button));
  buttons.className = 'buttons';
  place.textContent = '';
  place.append(...inside, buttons);
}

export function noNotice(): void {
  const place = document.getElementById('copy-notice');
  if (place) place.textContent = '';
}

/** Asks before something is done that can't be undone. */
export function ask(question: string, yes: Act, no: string): void {
  const box = document.createElement('dialog');
  // Browsers before 2022 have no dialogue of a page: they ask in a box of their own.
  if (!box.showModal) {
    if (confirm(question)) yes.act();
    return;
  }
  box.className = 'rule-dialog';
  box.setAttribute('aria-label', yes.name);
  const done = { name: no, plain: true, act: () => box.close() };
  const act = () => {
    box.close();
    yes.act();
  };
  const buttons = paragraph(button(done), button({ ...yes, act }));
  buttons.className = 'buttons';
  box.append(paragraph(question), buttons);
  box.addEventListener('close', () => box.remove());
  document.body.append(box);
  box.showModal();
}
