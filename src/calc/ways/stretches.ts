import { TIE } from '../holes/marks.ts';

/** A stretch of roof along it, from the middle of one truss to the middle of the next, and what is clear between them; in inches. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly clearFrom: number;
  readonly clearTo: number;
}

/**
 * The stretches between trusses and to the ends of the roof that have any clear width, in inches.
 * By hand: half of 1.5 in is wood on each side of the truss at 24 in.
 * @example stretches([24], 48, 1.5) // => [{ from: 0, to: 24, clearFrom: 0, clearTo: 23.25 }, { from: 24, to: 48, clearFrom: 24.75, clearTo: 48 }]
 */
export function stretches(trusses: readonly number[], length: number, member: number): Stretch[] {
  const inside = trusses.filter((place) => place >= 0 && place <= length + TIE);
  const edges = [
    { at: 0, half: 0 },
    ...inside.map((at) => ({ at, half: member / 2 })),
    { at: length, half: 0 },
  ];
  const found = edges.slice(1).flatMap((right, place): Stretch[] => {
    const left = edges[place] ?? right;
    const [clearFrom, clearTo] = [Math.max(0, left.at + left.half), Math.min(length, right.at - right.half)];
    return clearTo > clearFrom + TIE ? [{ from: left.at, to: right.at, clearFrom, clearTo }] : [];
  });
  // What lies beyond the first and last bay, under a truss at the end of the roof, is theirs too: the bays add up to the roof.
  return found.map((stretch, place) => ({
    ...stretch,
    from: place === 0 ? 0 : stretch.from,
    to: place === found.length - 1 ? length : stretch.to,
  }));
}
