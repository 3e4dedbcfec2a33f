/**
 * How a card may be set, the best first: size of its type in points, breadth of its drawings, and whether what good looks like has a
 * line of its own. The style sheet has the measures. Large type comes before broad drawings, but no drawing is made so small that its
 * words are lost while the type can still give way.
 */
const settings = [
  ...['12', '11.5', '11'].map((size) => ({ size, drawings: 'whole', room: true })),
  ...['12', '11.5', '11', '10.5'].map((size) => ({ size, drawings: 'smaller', room: true })),
  ...['11', '10.5'].map((size) => ({ size, drawings: 'small', room: true })),
  ...['10.5', '10'].map((size) => ({ size, drawings: 'smaller', room: false })),
  ...['10.5', '10'].map((size) => ({ size, drawings: 'small', room: false })),
  { size: '10', drawings: 'least', room: false },
  // What an agency adds may need it.
  ...['9.5', '9', '8.5'].flatMap((size) => [
    { size, drawings: 'small', room: false },
    { size, drawings: 'least', room: false },
  ]),
];

const PIXELS_PER_MILLIMETRE = 96 / 25.4;

/** How high they are, in millimetres: Letter is wider, A4 higher, and a card is to fit either. The style sheet has how wide a card is on each. */
const papers = [
  { paper: 'Letter', high: 279.4 },
  { paper: 'A4', high: 297 },
];

/** The margin of the style sheet at either end, and what paper is short of, since it is not set to the last pixel as the screen is; in millimetres. */
const MARGIN = 8;
const SHORT = 2.54;

function fits(card: HTMLElement): boolean {
  return papers.every(({ paper, high }) => {
    card.dataset.paper = paper;
    const room = (high - 2 * MARGIN - SHORT) * PIXELS_PER_MILLIMETRE;
    return card.getBoundingClientRect().height <= room;
  });
}

/** Sets a card as large as it fits one sheet. It is measured as a sheet of each paper, however wide the window is. */
export function setAsLarge(card: HTMLElement): void {
  card.classList.add('measured');
  for (const { size, drawings, room } of settings) {
    card.dataset.size = size;
    card.dataset.drawings = drawings;
    card.toggleAttribute('data-room', room);
    if (fits(card)) break;
  }
  delete card.dataset.paper;
  card.classList.remove('measured');
}

/** Sets the card of this page. */
export function mountCard(): void {
  const card = document.querySelector<HTMLElement>('.card');
  if (card) setAsLarge(card);
}
