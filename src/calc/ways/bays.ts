import { format } from '../../quantity/format.ts';
import {
  byMethod,
  inches,
  inUnit,
  minus,
  named,
  type Quantity,
  quantity,
  times,
  total,
} from '../../quantity/quantity.ts';
import type { QuantityRange, Rulebook } from '../../rulebook/rulebook.ts';
import { openWithin } from '../cavity/open-within.ts';
import { ridgeAcross } from '../cavity/opening.ts';
import { placeOfHeight } from '../cavity/profile.ts';
import type { Section } from '../cavity/section.ts';
import { EntriesClash } from '../declare/calculation.ts';
import { printed, type Remark, said } from '../declare/remark.ts';
import { bagsFor } from '../fill/bags.ts';
import type { LiftedEdges } from './bay-fields.ts';
import { keptOff, type Ring, ringTold, runsInto } from './flue-ring.ts';
import { NOISE, reachOf } from './reach.ts';
import { type Stretch, stretches } from './stretches.ts';
import { fits, freeStrip, less, ofRoom, roomForHose, type Taken } from './strip.ts';

/** A cavity that is filled bay by bay between its trusses, under the lifted edge of the roof. */
export interface BayProblem extends Taken {
  readonly length: Quantity<'length'>;
  readonly trussSpacing: Quantity<'length'>;
  /** Where the trusses stand, in inches from the starting end, in rising order. */
  readonly trusses: readonly number[];
  /** The lengths that tell where they stand. */
  readonly trussesTold: readonly Quantity<'length'>[];
  readonly section: Section;
  readonly edges: LiftedEdges;
  /** How wide the tube is; left out, the hose. */
  readonly tube?: Quantity<'length'> | undefined;
  /** How far the tube can be pushed; left out, the usual reach of a flexible hose. */
  readonly reach?: Quantity<'length'> | undefined;
  readonly rings?: readonly Ring[];
  readonly density: Quantity<'density'>;
  readonly bagWeight: Quantity<'weight of a piece'>;
}

/** What is done through one lifted edge: the back one, or the one across from it. */
export interface Side {
  readonly edge: 'back' | 'front';
  /** What the edge is called: of one alone, the lifted one, since it may be that of either section. */
  readonly called: 'back' | 'front' | 'lifted';
  /** How long the tube has to be, from the edge to where this side's part ends. */
  readonly tube: Quantity<'length'>;
  /** The free depth at the eave, and whether the tube goes in there. */
  readonly room: Quantity<'length'>;
  readonly tubeFits: boolean;
  /** Where, from the edge, the cavity becomes deep enough for the tube; undefined if nowhere on this side. */
  readonly fitsFrom: Quantity<'length'> | undefined;
  /** Where, from the edge, the cavity becomes too low again for a tube that goes in there; undefined if nowhere on the way across. */
  readonly lowFrom: Quantity<'length'> | undefined;
}

/** One bay, between two trusses or between a truss and the end of the roof. */
export interface Bay {
  readonly number: number;
  readonly from: Quantity<'length'>;
  readonly to: Quantity<'length'>;
  readonly clear: Quantity<'length'>;
  /** Is it wide enough for the tube? */
  readonly wideEnough: boolean;
  /** Volume, from the middle of one truss to the middle of the next, so that the bays add up to the cavity. */
  readonly volume: Quantity<'volume'>;
  readonly bags: Quantity<'pieces'>;
  /** Volume and bags through each edge, in the order of the sides. */
  readonly volumeBySide: readonly Quantity<'volume'>[];
  readonly bagsBySide: readonly Quantity<'pieces'>[];
  /** Of those bags what lies along the tube. */
  readonly withinBySide: readonly Quantity<'pieces'>[];
  /** What of it lies beyond the end of the push, on each side: by its place in the taper, not by the length alone. */
  readonly leftBySide: readonly Quantity<'volume'>[];
  /** How far the tube goes in on each side. */
  readonly pushed: readonly Quantity<'length'>[];
  readonly leftVolume: Quantity<'volume'>;
  readonly stopsAtRing: boolean;
}

export interface Bays {
  readonly bays: readonly Bay[];
  readonly sides: readonly Side[];
  readonly tube: Quantity<'length'>;
  readonly reach: QuantityRange<'length'>;
  readonly longest: Quantity<'length'>;
  readonly volume: Quantity<'volume'>;
  readonly leftVolume: Quantity<'volume'>;
  readonly bags: Quantity<'pieces'>;
}

/**
 * Bay by bay under the lifted edge: how long must the tube be, and how many bags does each bay take?
 * From one edge the tube goes to the far eave; from both, to the ridge. It runs along the middle of its bay, so no chord is in its
 * way, and stops at its reach or before the ring kept open about a flue; where a ring stops one side short of the ridge, the other goes
 * on past it, up to the ring.
 * By hand: 12 in less two chords of 1.5 in for 1.5 of 24 in, 11.8125 in; × 10 ft × 4 ft = 39.375 ft3, at 1.5 lb/ft3 in bags of 30 lb.
 * @throws EntriesClash where both edges of half a double-section home are named: its other side is the marriage line.
 * @example edgeBays({ section: cavitySection({ shape: 'level', width: quantity(10, 'ft'), eave: quantity(12, 'in') }), length: quantity(4, 'ft'), trussSpacing: quantity(2, 'ft'), trusses: [0, 24, 48], trussesTold: [], edges: 'one edge', density: quantity(1.5, 'lb/ft3'), bagWeight: quantity(30, 'lb/bag') }, rules).bags.amount.toFixed(6) // => '1.968750'
 */
export function edgeBays(problem: BayProblem, rules: Rulebook): Bays {
  const { section, edges, length } = problem;
  if (section.shape === 'one-slope' && edges === 'both edges') {
    throw new EntriesClash({
      field: 'edges',
      label: 'Edges that are lifted',
      found: 'both edges of a one-slope roof',
      expected: 'one edge, since the other side is the marriage line',
    });
  }
  const tube = problem.tube ?? rules.value('access.hose.diameter');
  const reach = reachOf(problem.reach, rules);
  const sides = sidesOf(problem, tube, rules);
  const member = rules.value('framing.truss.member-width');
  const bays = stretches(problem.trusses, inches(length), inches(member)).map((stretch, place) =>
    bay(place, stretch, problem, { tube, reach, sides, member }, rules),
  );
  if (bays.length === 0) {
    throw new EntriesClash({
      field: 'length',
      label: 'Length of the roof',
      found: `${format(length)} with ${problem.trusses.length} trusses in it`,
      expected: 'room for a bay between two trusses',
    });
  }
  return {
    bays,
    sides,
    tube,
    reach,
    longest: sides.map((side) => side.tube).reduce((a, b) => (inches(b) > inches(a) ? b : a)),
    volume: named(total(bays.map(({ volume }) => volume)), 'V', 'Volume of all bays'),
    leftVolume: named(total(bays.map(({ leftVolume }) => leftVolume)), 'V left', 'Volume left over'),
    bags: named(total(bays.map(({ bags }) => bags)), 'n', 'Bags for all bays'),
  };
}

function sidesOf(problem: BayProblem, tube: Quantity<'length'>, rules: Rulebook): Side[] {
  const { section, edges } = problem;
  const back = edges === 'one edge' ? section.width : ridgeAcross(section);
  const side = (edge: Side['edge'], to: Quantity<'length'>, eave: Quantity<'length'>): Side => {
    const room = roomForHose(section, eave, problem, false, rules);
    const called = edges === 'both edges' ? edge : 'lifted';
    return {
      edge,
      called,
      tube: named(inUnit(to, 'ft'), 't', `Tube from the ${called} edge`),
      room,
      tubeFits: fits(tube, room),
      fitsFrom: firstPlace(problem, edge, to, tube, 'deep enough'),
      lowFrom: fits(tube, room) ? firstPlace(problem, edge, section.width, tube, 'too low') : undefined,
    };
  };
  return [
    side('back', back, quantity(0, 'in')),
    ...(edges === 'both edges' ? [side('front', minus(section.width, back), section.width)] : []),
  ];
}

/** Where, on the way in from an edge, is the cavity first deep enough for the tube, or too low for it? */
function firstPlace(
  { section, oldDepth }: BayProblem,
  edge: Side['edge'],
  to: Quantity<'length'>,
  tube: Quantity<'length'>,
  wanted: 'deep enough' | 'too low',
): Quantity<'length'> | undefined {
  const height = inches(tube) + (oldDepth ? inches(oldDepth) : 0);
  const { profile } = section;
  const fromEdge = (place: number): number => (edge === 'back' ? place : profile.width - place);
  const asWanted = (place: number): boolean =>
    wanted === 'deep enough'
      ? profile.depthAt(place) >= height
      : profile.depthAt(place) < height * (1 - NOISE);
  const found = (place: number): Quantity<'length'> =>
    byMethod(
      `where the cavity above the old insulation is ${wanted} for the tube`,
      [tube, ...section.told, ...(oldDepth ? [oldDepth] : [])],
      fromEdge(place),
      'in',
    );
  const last = inches(to);
  const corners = [...profile.corners, fromEdge(last)]
    .filter((place) => fromEdge(place) <= last)
    .sort((a, b) => fromEdge(a) - fromEdge(b));
  for (const [at, corner] of corners.entries()) {
    if (asWanted(corner)) return found(corner);
    const next = corners[at + 1];
    if (next !== undefined && asWanted(next))
      return found(placeOfHeight(profile, height, Math.min(corner, next), Math.max(corner, next)));
  }
  return undefined;
}

interface Known {
  readonly tube: Quantity<'length'>;
  readonly reach: QuantityRange<'length'>;
  readonly sides: readonly Side[];
  readonly member: Quantity<'length'>;
}

function bay(place: number, stretch: Stretch, problem: BayProblem, known: Known, rules: Rulebook): Bay {
  const { section, trussesTold, length, rings = [] } = problem;
  const along = (amount: number, label: string): Quantity<'length'> =>
    named(byMethod('place of the trusses', [length, ...trussesTold], amount, 'in'), 'x', label);
  const [from, to] = [along(stretch.from, 'Bay from'), along(stretch.to, 'Bay to')];
  const clear = named(
    byMethod(
      'between the trusses, less half a member on each side that has one',
      [length, known.member, ...trussesTold],
      stretch.clearTo - stretch.clearFrom,
      'in',
    ),
    'bc',
    'Clear width of the bay',
  );
  const pitch = named(inUnit(minus(to, from), 'ft'), 'Lb', 'Length of the bay, middle to middle');
  const middle = (stretch.clearFrom + stretch.clearTo) / 2;
  const wideEnough = fits(known.tube, clear);
  const goIn = known.sides.map(({ tubeFits }) => tubeFits && wideEnough);
  const atRing = known.sides.map(({ edge }, place) =>
    goIn[place] ? nearestRing(edge, middle, problem, known.tube) : Number.POSITIVE_INFINITY,
  );
  const stops = known.sides.map(({ lowFrom }, place) =>
    Math.min(atRing[place] ?? 0, lowFrom ? inches(lowFrom) : Number.POSITIVE_INFINITY),
  );
  const ends = endsOf(
    known.sides.map(({ tube }) => inches(tube)),
    stops,
    goIn,
  );
  const ringsRestOn =
    rings.length > 0 ? [...rings.flatMap(ringTold), length, known.member, ...trussesTold] : [];
  const worked = known.sides.map((side, place) => {
    const [end = 0, stop = 0] = [ends[place], stops[place]];
    const amount = goIn[place] ? Math.min(end, inches(known.reach.low), stop) : 0;
    const to =
      end === inches(side.tube)
        ? side.tube
        : named(
            inUnit(
              byMethod(
                'past the ridge to the ring or the low place that stops the tube from the other edge, or no further than that',
                [side.tube, section.width, known.tube, ...ringsRestOn],
                end,
                'in',
              ),
              'ft',
            ),
            't',
            `Part of the bay that is filled from the ${side.called} edge`,
          );
    const pushed = named(
      inUnit(
        byMethod(
          'the tube needed, or its reach, or the ring kept open about a flue, or where the cavity is too low for it, whichever comes first; nothing where it does not fit',
          [
            to,
            known.reach.low,
            side.room,
            known.tube,
            clear,
            ...(side.lowFrom ? [side.lowFrom] : []),
            ...ringsRestOn,
          ],
          amount,
          'in',
        ),
        'ft',
      ),
      'c',
      `Pushed in from the ${side.called} edge`,
    );
    return { pushed, ...volumesOn({ edge: side.edge, to, pushed }, stretch, pitch, problem, rules) };
  });
  const volume = named(total(worked.map((each) => each.volume)), 'V', 'Volume of the bay');
  const bagsOf = (held: Quantity<'volume'>) => bagsFor(held, problem.density, problem.bagWeight).bags;
  const bags = worked.map((each) => bagsOf(each.volume));
  return {
    number: place + 1,
    from,
    to,
    clear,
    wideEnough,
    volume,
    bags: named(total(bags), 'n', 'Bags for the bay'),
    volumeBySide: worked.map((each) => each.volume),
    bagsBySide: bags,
    withinBySide: worked.map(({ volume, left }) => bagsOf(minus(volume, left))),
    leftBySide: worked.map(({ left }) => left),
    pushed: worked.map(({ pushed }) => pushed),
    leftVolume: named(total(worked.map((each) => each.left)), 'V left', 'Volume left over in the bay'),
    stopsAtRing: atRing.some((stop, place) => stop < (ends[place] ?? 0)),
  };
}

/** How far in from an edge, in inches, is the first ring that a tube along the middle of its bay runs into? Infinity where there is none. */
function nearestRing(
  edge: Side['edge'],
  middle: number,
  { section, rings = [] }: BayProblem,
  tube: Quantity<'length'>,
): number {
  const met = rings.flatMap((ring) => {
    const at = edge === 'back' ? inches(ring.at) : section.profile.width - inches(ring.at);
    return runsInto(at, inches(ring.along) - middle, keptOff(ring, tube)) ?? [];
  });
  return Math.min(Number.POSITIVE_INFINITY, ...met.map(({ from }) => Math.max(0, from)));
}

/**
 * Where, from its edge, does the part end that each side fills? At the ridge; but where a ring stops the tube of one side short of it, the
 * other goes on, past the ridge, as far as there. In inches, in the order of the sides.
 */
function endsOf(
  needed: readonly number[],
  stops: readonly number[],
  goIn: readonly boolean[],
): readonly number[] {
  const [back = 0, front = 0] = needed;
  // A cavity that is deepest at an edge is filled from the other one alone.
  if (!(back > 0 && front > 0) || !goIn.every(Boolean)) return needed;
  const [atBack = back, atFront = front] = stops;
  if (atBack < back && atFront >= front) return [atBack, back + front - atBack];
  if (atFront < front && atBack >= back) return [back + front - atFront, atFront];
  return needed;
}

/** What one side of a bay takes in all, and what of it lies beyond the end of the push. */
function volumesOn(
  side: { readonly edge: Side['edge']; readonly to: Quantity<'length'>; readonly pushed: Quantity<'length'> },
  stretch: Stretch,
  pitch: Quantity<'length'>,
  problem: BayProblem,
  rules: Rulebook,
): { readonly volume: Quantity<'volume'>; readonly left: Quantity<'volume'> } {
  const { section, rings = [], oldDepth } = problem;
  const { width } = section.profile;
  const between = (a: Quantity<'length'>, b: Quantity<'length'>, symbol: string, label: string) => {
    const across = (inward: Quantity<'length'>) =>
      byMethod(
        'place across',
        [inward, section.width],
        side.edge === 'back' ? inches(inward) : width - inches(inward),
        'in',
      );
    const [from, to] = side.edge === 'back' ? [across(a), across(b)] : [across(b), across(a)];
    const strip = freeStrip(section, from, to, problem, rules);
    const open = openWithin(
      section,
      rings,
      { across: [inches(from), inches(to)], along: [stretch.from, stretch.to] },
      oldDepth,
    );
    return less(times(strip, pitch), rings, open, symbol, label);
  };
  return {
    volume: between(quantity(0, 'in'), side.to, 'V', `Volume on the ${side.edge} side of the bay`),
    left: between(side.pushed, side.to, 'V left', `Volume left over on the ${side.edge} side of the bay`),
  };
}

/** That a tube goes in and comes to a place that is too low for it, on the way to where its side ends. */
const stoppedLow = ({ called, tube, lowFrom }: Side): Remark[] =>
  lowFrom && inches(lowFrom) < inches(tube)
    ? [
        said`From ${printed(lowFrom, { tape: 8, round: 'down' })} inside the ${called} edge the cavity is too low for the tube: it stops there.`,
      ]
    : [];

/**
 * Where a tube that does not fit would, or where one that does is stopped by a low place, in words; nothing where it goes all the way.
 * @example misfit({ tubeFits: true }, quantity(2, 'in')) // => []
 */
export const misfit = (side: Side, tube: Quantity<'length'>): Remark[] =>
  side.tubeFits
    ? stoppedLow(side)
    : [
        said`At the ${side.called} ${side.called === 'lifted' ? 'edge' : 'eave'} ${printed(side.room, ofRoom)} are free, and the tube is ${tube} wide: it does not go in there. ${
          side.fitsFrom
            ? said`The cavity is deep enough for it from ${printed(side.fitsFrom, { tape: 8 })} inside the edge.`
            : 'The cavity is nowhere deep enough for it on that side.'
        }`,
      ];
