/** The sizes of type that the style sheet has for a card, in points, the largest first. */
const SIZES = ['12', '11.5', '11', '10.5', '10', '9.5'] as const;

/**
 * The height that a card may take, in inches: that of Letter, the lower of the two papers, without the margins of the style sheet and
 * a tenth of an inch, since paper is not set to the last pixel as the screen is.
 */
const ROOM = 11 - (2 * 10) / 25.4 - 0.1;
const PIXELS_PER_INCH = 96;

/** Sets a card in the largest type in which it fits one sheet. It is measured as a sheet, however wide the window is. */
export function mount(): void {
  const card = document.querySelector<HTMLElement>('.card');
  if (!card) return;
  card.classList.add('measured');
  for (const size of SIZES) {
    card.dataset.size = size;
    if (card.getBoundingClientRect().height <= ROOM * PIXELS_PER_INCH) break;
  }
  card.classList.remove('measured');
}
