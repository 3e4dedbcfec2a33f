import type { Quantity } from '../quantity/quantity.ts';
import { line, type Point, text } from './lines.ts';
import { type Shape, shape } from './svg.ts';

/** From the words to the beginning of their leader, and the dot at its end, in drawing units. */
const GAP = 4;
const DOT = 2;
/** Letters without their descenders stand so high, as a share of their size. */
const HIGH = 0.75;
/** From one line of words to the next, as a share of their size. */
const LEADING = 1.25;

export interface LeaderOptions {
  /** On which side of the words the leader begins. */
  readonly from: 'below' | 'above' | 'left' | 'right';
  readonly size: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Where the leader begins along words that it leaves above or below; at the words' own place where it is left out. */
  readonly start?: number;
  /** The quantity that the words tell. */
  readonly of?: Quantity;
}

/**
 * Words that name a part, and a leader by ISO 128: a thin line to the part, with a dot at its end.
 * The words stand at `at`, one line under the other; the first line's foot is at the height given.
 */
export function leader(
  words: string | readonly string[],
  at: Point,
  to: Point,
  options: LeaderOptions,
): Shape[] {
  const lines = typeof words === 'string' ? [words] : words;
  const { from, size } = options;
  const anchor = options.anchor ?? (from === 'left' ? 'start' : from === 'right' ? 'end' : 'middle');
  const [x, y] = at;
  const foot = y + (lines.length - 1) * size * LEADING;
  const middle = (y - HIGH * size + foot) / 2;
  const begin: Point = {
    below: [options.start ?? x, foot + GAP] as const,
    above: [options.start ?? x, y - HIGH * size - GAP] as const,
    left: [x - GAP, middle] as const,
    right: [x + GAP, middle] as const,
  }[from];
  return [
    line('thin', begin, to),
    dot(to, DOT),
    ...lines.map((each, place) =>
      text([x, y + place * size * LEADING], each, {
        anchor,
        size,
        ...(options.of ? { of: options.of } : {}),
      }),
    ),
  ];
}

/** A filled dot. */
export const dot = ([cx, cy]: Point, r: number): Shape =>
  shape('circle', { cx, cy, r, fill: 'currentColor' });
