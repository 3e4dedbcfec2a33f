/**
 * Two places nearer than this are one place, and two sums nearer than this are a tie. In inches.
 * A bound such as 72.1 in can't be held exactly in binary, so a hole at 72.1 in may read a hair short of it; no tape shows a
 * billionth of an inch, and the noise of adding a few hundred lengths stays far below it.
 */
export const TIE = 1e-9;

/**
 * Which is the first mark at a place or after it? Places and steps in inches; mark k lies at k steps.
 * By hand: 72.1 × 8 = 576.8 eighths.
 * @example atOrAfter(72.1, 1 / 8) // => 577
 */
export const atOrAfter = (place: number, grid: number): number => Math.ceil((place - TIE) / grid);

/**
 * Which is the last mark at a place or before it?
 * By hand: 72.1 × 8 = 576.8 eighths.
 * @example atOrBefore(72.1, 1 / 8) // => 576
 */
export const atOrBefore = (place: number, grid: number): number => Math.floor((place + TIE) / grid);

/**
 * Which is the first mark truly past a place?
 * By hand: 72 in are 576 eighths.
 * @example pastOf(72, 1 / 8) // => 577
 */
export const pastOf = (place: number, grid: number): number => atOrBefore(place, grid) + 1;

/**
 * Which is the last mark truly short of a place?
 * By hand: 72 in are 576 eighths.
 * @example shortOf(72, 1 / 8) // => 575
 */
export const shortOf = (place: number, grid: number): number => atOrAfter(place, grid) - 1;
