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
  { size: '9.5', drawings: 'small', room: false },
  { size: '9.5', drawings: 'least', room: false },
] as const;

const MILLIMETRES_PER_INCH = 25.4;
const PIXELS_PER_INCH = 96;

/**
 * The height that a card may take, in inches: that of Letter, the lower of the two papers, without the margins of the style sheet and
 * a tenth of an inch, since paper is not set to the last pixel as the screen is.
 */
const ROOM = 11 - (2 * 8) / MILLIMETRES_PER_INCH - 0.1;

/** Sets a card as large as it fits one sheet. It is measured as a sheet, however wide the window is. */
export function mount(): void {
  const card = document.querySelector<HTMLElement>('.card');
  if (!card) return;
  card.classList.add('measured');
  for (const { size, drawings, room } of settings) {
    card.dataset.size = size;
    card.dataset.drawings = drawings;
    card.toggleAttribute('data-room', room);
    if (card.getBoundingClientRect().height <= ROOM * PIXELS_PER_INCH) break;
  }
  card.classList.remove('measured');
}
