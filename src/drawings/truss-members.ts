import type { Profile } from '../calc/cavity/profile.ts';
import { webPlaces } from './illustration.ts';
import { type LineType, line, type Point, path } from './lines.ts';
import { placesAcross } from './section-sheet.ts';
import type { Shape } from './svg.ts';

/** The part of a truss that is drawn, in inches. */
export interface TrussPart {
  readonly profile: Profile;
  readonly from: number;
  readonly to: number;
  /** How deep a chord is; the webs are drawn as deep. */
  readonly chord: number;
  /** What lies on the ceiling and hides the truss up to this height. */
  readonly hidden?: number;
  readonly type?: LineType;
}

/** A web so flat that, level, its half is longer than so many chords is none that anyone builds. */
const FLATTEST = 2;

/** Where a place of the section lies on the sheet. */
export type At = (across: number, height: number) => Point;

/**
 * The underside of the top chord at a place across; where the cavity is too shallow for both chords, the top of the lower one.
 * By hand: 10 in, less 1.5 in.
 * @example underChord({ profile: level(168, 10), chord: 1.5 }, 84) // => 8.5
 */
export const underChord = ({ profile, chord }: TrussPart, across: number): number =>
  Math.max(chord, profile.depthAt(across) - chord);

/** The top chord's underside, and the bottom chord's top, dashed where something hides it; the roof's own line is not among them. */
export function chordLines(part: TrussPart, at: At): Shape[] {
  const { profile, from, to, chord, hidden = 0, type = 'thin' } = part;
  return [
    path(
      type,
      placesAcross(profile, from, to).map((x) => at(x, underChord(part, x))),
    ),
    line(hidden > chord ? 'hidden' : type, at(from, chord), at(to, chord)),
  ];
}

/** Both chords, and the webs between. */
export const trussMembers = (part: TrussPart, at: At): Shape[] => [
  ...chordLines(part, at),
  ...webEdges(part).map(([a, b]) => line(part.type ?? 'thin', at(...a), at(...b))),
];

/** Both edges of every web, from the bottom chord (or from what hides it) to the upper one, cut off at the ends of the part. */
function webEdges(part: TrussPart): (readonly [Point, Point])[] {
  const { profile, chord, hidden = 0 } = part;
  const foot = Math.max(chord, hidden);
  const nodes = webPlaces.map((share) => share * profile.width);
  return nodes.slice(1).flatMap((second, place) => {
    const first = nodes[place] ?? second;
    const [low, high] = place % 2 === 0 ? [first, second] : [second, first];
    const rise = underChord(part, high) - chord;
    if (rise <= foot - chord) return [];
    // A web is as deep as a chord, square to its own length; this is half of that, level.
    const half = (chord / 2) * (Math.hypot(high - low, rise) / rise);
    if (half > FLATTEST * chord) return [];
    return [-half, half].flatMap((by) => {
      const atFoot: Point = [low + by + ((foot - chord) / rise) * (high - low), foot];
      return cutOff(atFoot, [high + by, underChord(part, high + by)], part);
    });
  });
}

/** What of a stroke lies between the ends of the part; none where nothing does. */
function cutOff([ax, ay]: Point, [bx, by]: Point, { from, to }: TrussPart): (readonly [Point, Point])[] {
  const shares = [(from - ax) / (bx - ax), (to - ax) / (bx - ax)].sort((a, b) => a - b);
  const [first, last] = [Math.max(0, shares[0] ?? 0), Math.min(1, shares[1] ?? 1)];
  const on = (share: number): Point => [ax + share * (bx - ax), ay + share * (by - ay)];
  return first < last ? [[on(first), on(last)]] : [];
}
