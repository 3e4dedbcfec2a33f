import type { Point } from './lines.ts';
import type { Shape } from './svg.ts';

/** An upright box on the sheet, in drawing units; one without breadth is a line. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Where words may stand. */
export interface Spot {
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Turned by a quarter, to be read from the right. */
  readonly turned?: boolean;
  /** How much worse it is than the best, were both clear. */
  readonly cost?: number;
}

/** What words should keep off, and how bad it is to stand on it. */
export interface Taken {
  readonly box: Box;
  readonly cost: number;
}

/** To stand on this makes words or a thing unreadable. */
export const NEVER = 1000;

/** A letter of the widest of the usual faces, light and bold, and how far letters stand over their line and hang below it, as shares of their size. */
const WIDE = { light: 0.57, bold: 0.62 } as const;
const HIGH = 0.75;
const LOW = 0.22;

/**
 * What words at a spot cover.
 * By hand: 4 letters of 0.57 of 10 are 22.8 wide; from 7.5 over the line to 2.2 below it.
 * @example boxAbout('4 ft', { at: [0, 0], anchor: 'start' }, 10).right.toFixed(1) // => '22.8'
 */
export function boxAbout(
  words: string,
  { at: [x, y], anchor, turned }: Spot,
  size: number,
  face: keyof typeof WIDE = 'light',
): Box {
  const long = words.length * size * WIDE[face];
  const before = anchor === 'start' ? 0 : anchor === 'end' ? long : long / 2;
  return turned
    ? { left: x - HIGH * size, right: x + LOW * size, top: y - long + before, bottom: y + before }
    : { left: x - before, right: x - before + long, top: y - HIGH * size, bottom: y + LOW * size };
}

/**
 * Do two boxes share more than an edge?
 * @example meet({ left: 0, right: 2, top: 0, bottom: 2 }, { left: 1, right: 1, top: 1, bottom: 9 }) // => true
 */
export const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** What the words among some shapes cover. */
export const wordsTaken = (shapes: readonly Shape[]): Taken[] =>
  shapes.flatMap(({ tag, attributes: { x, y, transform, ...rest }, children: [words] }) =>
    tag === 'text'
      ? [
          {
            box: boxAbout(
              String(words),
              {
                at: [Number(x), Number(y)],
                anchor: rest['text-anchor'] as Spot['anchor'],
                turned: transform !== undefined,
              },
              Number(rest['font-size'] ?? 13),
            ),
            cost: NEVER,
          },
        ]
      : [],
  );

/** The straight lines among some shapes, each at this cost. */
export const linesTaken = (shapes: readonly Shape[], cost: number): Taken[] =>
  shapes.flatMap(({ tag, attributes: { x1, y1, x2, y2 } }) =>
    tag === 'line' ? [{ box: boxOf([Number(x1), Number(y1)], [Number(x2), Number(y2)]), cost }] : [],
  );

/** A box with a margin all round. */
export const grown = ({ left, top, right, bottom }: Box, by: number): Box => ({
  left: left - by,
  top: top - by,
  right: right + by,
  bottom: bottom + by,
});

/** The box of a straight line, or about two corners. */
export const boxOf = ([ax, ay]: Point, [bx, by]: Point): Box => ({
  left: Math.min(ax, bx),
  right: Math.max(ax, bx),
  top: Math.min(ay, by),
  bottom: Math.max(ay, by),
});

/** What of all that is taken can words meet at any of some spots? A search for the best of these need not look at the rest. */
export function inReach(
  taken: readonly Taken[],
  words: string,
  spots: readonly [Spot, ...Spot[]],
  size: number,
  face: keyof typeof WIDE = 'light',
): Taken[] {
  const across = spots.map(({ at }) => at[0]);
  const down = spots.map(({ at }) => at[1]);
  const part = grown(
    {
      left: Math.min(...across),
      right: Math.max(...across),
      top: Math.min(...down),
      bottom: Math.max(...down),
    },
    boxAbout(words, { at: [0, 0], anchor: 'start' }, size, face).right + size,
  );
  return taken.filter(({ box }) => meet(box, part));
}

/**
 * How bad is it to cover this box? Beyond the room it is as bad as on a thing. A loop by place: a roof asks it ten thousand times at each
 * key, and a loop over what is taken makes an object for each before a browser has made it fast.
 */
export function costOf({ left, right, top, bottom }: Box, taken: readonly Taken[], room: Box): number {
  let sum = left < room.left || right > room.right || top < room.top || bottom > room.bottom ? NEVER : 0;
  for (let place = 0; place < taken.length; place += 1) {
    const { box, cost } = taken[place] as Taken;
    if (left < box.right && box.left < right && top < box.bottom && box.top < bottom) sum += cost;
  }
  return sum;
}

/** The best of some, the first of those that are alike; `cost` tells how bad each is. What is no better than the least so far need not be told to the end. */
export function best<T>(some: readonly [T, ...T[]], cost: (each: T, least: number) => number): T {
  let found: T = some[0];
  let least = cost(found, Number.POSITIVE_INFINITY);
  for (let next = 1; next < some.length && least > 0; next += 1) {
    const each = some[next] as T;
    const its = cost(each, least);
    if (its < least) {
      found = each;
      least = its;
    }
  }
  return found;
}

/** How words are set, what they should keep off, and where they may stand at all. */
export interface Setting {
  readonly size: number;
  readonly face?: keyof typeof WIDE;
  readonly taken: readonly Taken[];
  readonly room: Box;
}

/**
 * At which of some spots do words cover least, what each spot costs by itself counted in? The first of those that are alike.
 * By hand: at 0 the words would lie on what is taken, from 0 to 10; at 30 they lie clear of it.
 * @example leastCovering('4 ft', [{ at: [0, 0], anchor: 'start' }, { at: [30, 0], anchor: 'start' }], { size: 10, taken: [{ box: { left: 0, right: 10, top: -5, bottom: 0 }, cost: 9 }], room: { left: 0, right: 90, top: -9, bottom: 9 } }).at[0] // => 30
 */
export function leastCovering<S extends Spot>(
  words: string,
  spots: readonly [S, ...S[]],
  { size, face, taken, room }: Setting,
): S {
  const near = inReach(taken, words, spots, size, face);
  return best(spots, (spot, least) => {
    const { cost = 0 } = spot;
    return cost >= least ? least : cost + costOf(boxAbout(words, spot, size, face), near, room);
  });
}
