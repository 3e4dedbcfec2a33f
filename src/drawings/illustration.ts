/**
 * Sizes that no rule gives, in inches. They make a drawing look like what it shows, and no drawing tells one as a figure: each that
 * uses one says that it only illustrates.
 */
export const illustration = {
  /** Thickness of a ceiling board. */
  board: 0.5,
  /** Thickness of a wall, and how much of it is drawn. */
  wall: 4,
  wallShown: 7,
  /** How far the roof reaches beyond the wall, and how far its edge is turned down. */
  overhang: 1.5,
  turnedDown: 1.25,
} as const;

/** Shares of a truss's width at which its webs meet the chords in turn, the lower one first; how many there are only illustrates. */
export const webPlaces = [1 / 8, 2 / 8, 3 / 8, 4 / 8, 5 / 8, 6 / 8, 7 / 8] as const;
