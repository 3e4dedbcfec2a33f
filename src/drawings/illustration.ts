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
  /** How far a roof edge is lifted, over how much of the roof it bends up, and how wide its block is. */
  lift: 4.5,
  bend: 15,
  block: 2.5,
  /** How far a piece of edge trim that was taken off reaches down. */
  trim: 2.5,
  /** How far a cut in a gable stays clear of chords and old insulation. */
  cutClear: 0.5,
  /** How far the fill stays below the roof in a cavity that it does not fill. */
  unfilled: 9,
  /** How far a flue is drawn beyond the ceiling and the roof, and how wide the foot of a shield is. */
  flueShown: 7,
  foot: 2,
} as const;

/** Shares of a truss's width at which its webs meet the chords in turn, the lower one first; how many there are only illustrates. */
export const webPlaces = [1 / 8, 2 / 8, 3 / 8, 4 / 8, 5 / 8, 6 / 8, 7 / 8] as const;
