import type { WorkedJob } from '../job/planned.ts';
import { inches } from '../quantity/quantity.ts';
import { circle, line, type Point, square, text } from './lines.ts';
import type { RoofView } from './roof-view.ts';
import {
  type Box,
  best,
  boxAbout,
  boxOf,
  costOf,
  grown,
  inReach,
  NEVER,
  type Spot,
  type Taken,
} from './room.ts';
import type { Shape } from './svg.ts';

/** What comes through a roof, as it is drawn. */
export interface RoofThing {
  readonly what: string;
  readonly centre: Point;
  /** Half its width, and half of what is kept open about it, where something is. */
  readonly radius: number;
  readonly kept: number | undefined;
  readonly square: boolean;
}

const NAME = 13;
/** From a thing to its name. */
const GAP = 5;

/** Vents, flues and skylights of a plan, where they lie on its sheet. */
export function roofThings(plan: WorkedJob, { at, front, perInch }: RoofView): RoofThing[] {
  const rings = plan.rows.flatMap((row) => row.holes.flatMap((hole) => hole.kept));
  return (plan.job.roof.obstacles ?? []).map((each) => {
    // Beyond a ridge at the edge there is no roof.
    const side = each.side === 'back' || front === 0 ? -1 : 1;
    const ring = rings.find((flue) => flue.what === each.what && inches(flue.along) === inches(each.along));
    return {
      what: each.what,
      centre: at(inches(each.along), side * inches(each.from_peak)),
      radius: (inches(each.across) / 2) * perInch,
      kept: ring && (inches(ring.across) / 2) * perInch,
      square: each.what === 'skylight',
    };
  });
}

const reachOf = ({ radius, kept = 0 }: RoofThing): number => Math.max(radius, kept);

/** What a thing covers, with what is kept open about it. */
export const takenBy = (thing: RoofThing): Box => grown(boxOf(thing.centre, thing.centre), reachOf(thing));

/** A thing crossed, with a dashed ring about what is kept open. */
export function thingShapes({ centre: [x, y], radius: r, kept, square: isSquare }: RoofThing): Shape[] {
  const arm = isSquare ? r : r * Math.SQRT1_2;
  return [
    isSquare ? square('outline', [x, y], 2 * r) : circle('outline', [x, y], r),
    line('thin', [x - arm, y - arm], [x + arm, y + arm]),
    line('thin', [x - arm, y + arm], [x + arm, y - arm]),
    ...(kept === undefined ? [] : [circle('hidden', [x, y], kept)]),
  ];
}

/** What names are asked for: plain data, by which they can be remembered. */
export interface NamesAsked {
  readonly things: readonly RoofThing[];
  readonly upright: boolean;
  readonly sheet: RoofView['sheet'];
  /** The starting end of the back edge and of the front one. */
  readonly edges: { readonly back: Point; readonly front: Point };
  readonly taken: readonly Taken[];
  /** Where names may stand without a leader. */
  readonly room: Box;
}

/** A place for a name, with its leader where it stands away from its thing. */
interface NameSpot extends Spot {
  readonly leader?: readonly [Point, Point];
  /** Beyond the roof's edge, where no place on it is clear. */
  readonly outside?: boolean;
}

/** From a place to the edge of a thing. */
function leaderTo(from: Point, thing: RoofThing): readonly [Point, Point] {
  const [x, y] = thing.centre;
  const share = reachOf(thing) / Math.hypot(from[0] - x, from[1] - y);
  return [from, [x + (from[0] - x) * share, y + (from[1] - y) * share]];
}

const SLIDES = [0, 12, -12, 24, -24, 36, -36];
/** From the baseline of a name to its middle. */
const FOOT = NAME * 0.36;

/** Beside the thing, above and below it, along the roof on an upright sheet. */
function nearSpots(thing: RoofThing, words: string, upright: boolean): [NameSpot, ...NameSpot[]] {
  const [x, y] = thing.centre;
  const reach = reachOf(thing) + GAP;
  const long = boxAbout(words, { at: [0, 0], anchor: 'start' }, NAME).right;
  const turned = (way: number): NameSpot => ({
    at: [x + FOOT, y + way * (reach + long / 2)],
    anchor: 'middle',
    turned: true,
    cost: 5,
  });
  return [
    { at: [x + reach, y + FOOT], anchor: 'start' },
    { at: [x - reach, y + FOOT], anchor: 'end' },
    ...[0, 7, 14].flatMap((off) =>
      SLIDES.flatMap((slide): NameSpot[] => {
        const cost = 0.5 + Math.abs(slide) / 50 + off / 20;
        return [
          { at: [x + slide, y - reach - off], anchor: 'middle', cost },
          { at: [x + slide, y + reach + off + NAME * 0.75], anchor: 'middle', cost },
        ];
      }),
    ),
    ...(upright ? [turned(1), turned(-1)] : []),
  ];
}

/** What a place with a leader costs at the least: none is looked for where a better one is found without. */
const FAR_OFF = 6;

/** Farther off with a leader: on the roof, else beyond the edge that the roof's sides have free. */
function farSpots(thing: RoofThing, { edges, upright }: NamesAsked): NameSpot[] {
  const [x, y] = thing.centre;
  const onRoof = [22, 36, 50, 66, 84].flatMap((far) =>
    [-1, 1].flatMap((down) =>
      [1, -1].map((side): NameSpot => {
        const from: Point = [x + side * far * 0.6, y + down * far];
        return {
          at: [from[0] + side * 3, from[1] + FOOT],
          anchor: side > 0 ? 'start' : 'end',
          cost: FAR_OFF + far / 20,
          leader: leaderTo(from, thing),
        };
      }),
    ),
  );
  const strips = upright ? ['beside the back'] : (['over the back', 'under the front'] as const);
  const beyond = strips.flatMap((strip) =>
    [0, 15, -15, 30, -30, 45, -45, 60, -60].map((by): NameSpot => {
      const from: Point =
        strip === 'beside the back'
          ? [edges.back[0] + 36, y + by]
          : [x + by, strip === 'over the back' ? edges.back[1] - 4 : edges.front[1] + 5];
      return {
        at:
          strip === 'beside the back'
            ? [from[0] + 3, from[1] + FOOT]
            : [from[0], from[1] + (strip === 'over the back' ? -4 : NAME * 0.8)],
        anchor: upright ? 'start' : 'middle',
        cost: 20 + Math.abs(by) / 20,
        leader: leaderTo(from, thing),
        outside: true,
      };
    }),
  );
  return [...onRoof, ...beyond];
}

/** Places along the outer part of a leader, finer than letters are high; its end may pass what stands beside its thing. */
const ALONG = Array.from({ length: 16 }, (_, step) => step / 24);

/** What a leader covers, told no further than `least`. */
function costAlong([a, b]: readonly [Point, Point], taken: readonly Taken[], sheet: Box, least: number) {
  let sum = 0;
  for (let step = 0; step < ALONG.length && sum < least; step += 1) {
    const share = ALONG[step] as number;
    const place: Point = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
    sum += costOf(grown(boxOf(place, place), 1), taken, sheet);
  }
  return sum;
}

const farFrom = ({ left, right, top, bottom }: Box, [x, y]: Point): number =>
  Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));

/** A name without a leader that stands nearer to another thing would be taken for that one's. */
const MISTAKEN = 8;

/** The names of things, each where it stands on nothing that it would hide, inside the roof; else with a leader. */
export function thingNames(asked: NamesAsked): Shape[] {
  const { things, upright, taken, room } = asked;
  const sheet: Box = { left: 0, top: 0, right: asked.sheet.width, bottom: asked.sheet.height };
  const standing = things.map((thing): Taken => ({ box: takenBy(thing), cost: NEVER }));
  const named: Taken[] = [];
  return things.flatMap((thing, place): Shape[] => {
    const mistaken = (box: Box): boolean =>
      things.some(
        (other) =>
          other !== thing &&
          farFrom(box, other.centre) - reachOf(other) <= farFrom(box, thing.centre) - reachOf(thing) + GAP,
      );
    const all = [...taken, ...standing.filter((_, other) => other !== place), ...named];
    const costAmong = (spots: readonly [NameSpot, ...NameSpot[]]) => {
      const others = inReach(all, thing.what, spots, NAME);
      const othersAndItself = [...others, ...standing.slice(place, place + 1)];
      return (spot: NameSpot, least: number): number => {
        const own = spot.cost ?? 0;
        if (own >= least) return own;
        const box = boxAbout(thing.what, spot, NAME);
        const covers = own + costOf(box, othersAndItself, spot.outside ? sheet : room);
        if (covers >= least) return covers;
        return spot.leader
          ? covers + costAlong(spot.leader, others, sheet, least - covers)
          : covers + (mistaken(box) ? MISTAKEN : 0);
      };
    };
    const near = nearSpots(thing, thing.what, upright);
    const costNear = costAmong(near);
    const beside = best(near, costNear);
    const farther = (): NameSpot => {
      const spots = [beside, ...farSpots(thing, asked)] as const;
      return best(spots, costAmong(spots));
    };
    const spot = costNear(beside, NEVER) <= FAR_OFF ? beside : farther();
    named.push({ box: grown(boxAbout(thing.what, spot, NAME), 2), cost: NEVER });
    return [
      ...(spot.leader ? [line('thin', ...spot.leader)] : []),
      text(spot.at, thing.what, {
        anchor: spot.anchor,
        size: NAME,
        ...(spot.turned ? { turn: -90 } : {}),
      }),
    ];
  });
}
