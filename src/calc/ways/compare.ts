import { format } from '../../quantity/format.ts';
import {
  byMethod,
  inches,
  inUnit,
  named,
  number,
  over,
  type Quantity,
  quantity,
} from '../../quantity/quantity.ts';
import type { QuantityRange, Rulebook } from '../../rulebook/rulebook.ts';
import { openingAcross, ridgeAcross } from '../cavity/opening.ts';
import type { Section } from '../cavity/section.ts';
import { lacksTrusses } from '../holes/lacks-trusses.ts';
import { type AlongValues, knowsTrusses, trussesTold, trussPlaces } from '../holes/members.ts';
import { layoutProblem, layoutRestsOn } from '../holes/roof.ts';
import { bestLayout } from '../holes/search.ts';
import { reachOf, reachWord } from './reach.ts';
import { stretches } from './stretches.ts';
import { fits, ofRoom, roomForHose } from './strip.ts';

/** The three ways in, by the words of the rulebook. */
export const ways = ['gable end', 'roof holes', 'lifted roof edge'] as const;
export type Way = (typeof ways)[number];

export const covers = ['metal', 'shingles', 'membrane', 'other'] as const;
export const yesOrNo = ['yes', 'no', 'not known'] as const;
export const gableAnswers = ['both ends', 'one end', 'neither', 'not known'] as const;
export const edgeAnswers = ['both edges', 'one edge', 'neither', 'not known'] as const;

/** A home, as the choice of a way in needs it. */
export interface Home {
  readonly length: Quantity<'length'>;
  readonly section: Section;
  readonly oldDepth: Quantity<'length'> | undefined;
  readonly along: AlongValues;
  readonly cover: (typeof covers)[number] | undefined;
  /** Is the roof known to carry the crew? */
  readonly carriesCrew: (typeof yesOrNo)[number];
  /** Which gable ends can be opened and worked from? */
  readonly gables: (typeof gableAnswers)[number];
  /** Which edges of the roof can be lifted? */
  readonly edges: (typeof edgeAnswers)[number];
  readonly reach?: Quantity<'length'> | undefined;
  /** How wide the tube for the lifted edge is; left out, the hose. */
  readonly tube?: Quantity<'length'> | undefined;
  /** Is this one half of a double-section home, with its ridge over the marriage line? */
  readonly half?: boolean | undefined;
  /** Does a flue or a light stand in the cavity, whose ring a hose stops before? */
  readonly hotInCavity: (typeof yesOrNo)[number];
}

/** One way in: what it asks for, what rules it out, what nobody knows yet. */
export interface WayIn {
  readonly way: Way;
  /** Undefined where it can't be told. */
  readonly openings: Quantity<'number'> | undefined;
  readonly push: Quantity<'length'> | undefined;
  /** Patches on the roof. */
  readonly patches: Quantity<'number'>;
  /** What else has to be closed again. */
  readonly closing: string;
  readonly ruledOut: readonly string[];
  readonly unknown: readonly string[];
}

const tape = (q: Quantity<'length'>): string => format(q, { tape: 8 });
const short = (q: Quantity<'length'>): string => format(q, { figures: 3 });

/**
 * How do the three ways in compare on this home? One answer a way, in the rulebook's order; nothing is ranked, since the crew
 * leader weighs what no figure holds.
 */
export const waysIn = (home: Home, rules: Rulebook): WayIn[] =>
  [gable, holes, edge].map((way) => way(home, rules));

/** What the push says of a way: ruled out beyond the reach, unknown between its two ends. */
function onReach(push: Quantity<'length'>, reach: QuantityRange<'length'>, who: string) {
  const word = reachWord(push, reach);
  const told = `${who} has to be pushed ${tape(push)}, and reaches ${short(reach.low)}${
    reach.low === reach.high ? '' : ` to ${short(reach.high)}`
  }`;
  return {
    ruledOut: word === 'beyond reach' ? [`${told}: a part is left over`] : [],
    unknown:
      word === 'may not reach'
        ? [`whether the hose goes the whole way: it ${told.slice(who.length + 1)}`]
        : [],
  };
}

/** What nobody knows of the fill behind rings: how much is left over there, or whether there is any. */
const behindRings = ({ hotInCavity }: Home, told: 'lanes' | 'bays'): string[] =>
  hotInCavity === 'no'
    ? []
    : [
        hotInCavity === 'yes'
          ? `what is left over behind the ring of a flue or a light: the ${told} tell how much`
          : 'whether a flue or a light stands in the cavity',
      ];

/** What nobody knows of the cover, or of work in one that is not metal. */
const ofCover = (cover: Home['cover'], ofAnother: string): string[] =>
  cover === undefined ? ['what the roof is covered with'] : cover === 'metal' ? [] : [ofAnother];

const noRoom = (
  room: Quantity<'length'>,
  hose: Quantity<'length'>,
  where: string,
  what: 'hose' | 'tube' = 'hose',
): string[] =>
  fits(hose, room)
    ? []
    : [`${where} leaves ${format(room, ofRoom)} free, and the ${what} is ${short(hose)} wide`];

function gable(home: Home, rules: Rulebook): WayIn {
  const { length, section, gables } = home;
  const ends = gables === 'both ends' ? 2 : gables === 'one end' ? 1 : 0;
  const hose = rules.value('access.hose.diameter');
  const push =
    ends === 0
      ? undefined
      : named(
          inUnit(ends === 2 ? over(length, number(2)) : length, 'ft'),
          'p',
          ends === 2 ? 'Push from each end, to the middle' : 'Push from the one end, to the other',
        );
  const reached = push && onReach(push, reachOf(home.reach, rules), 'the hose');
  const acrossTrusses = knowsTrusses(home.along);
  const room = roomForHose(section, section.deepestAt, home, acrossTrusses, rules);
  return {
    way: 'gable end',
    openings: gables === 'not known' ? undefined : byMethod('gable ends that can be opened', [], ends, '1'),
    push,
    patches: number(0),
    closing: ends === 0 ? '' : ends === 2 ? 'both gable ends' : 'the gable end',
    ruledOut: [
      ...(gables === 'neither' ? ['no gable end can be opened'] : []),
      ...noRoom(room, hose, 'the cavity at its deepest, between the chords,'),
      ...(reached?.ruledOut ?? []),
    ],
    unknown: [
      ...(gables === 'not known' ? ['whether a gable end can be opened'] : []),
      ...(reached?.unknown ?? []),
      ...behindRings(home, 'lanes'),
      ...(acrossTrusses ? [] : ['the trusses, whose chords and webs the hose has to pass']),
    ],
  };
}

function holes(home: Home, rules: Rulebook): WayIn {
  const { length, section, half, along, cover, carriesCrew } = home;
  const found = bestLayout(layoutProblem(length, along, 'back', rules));
  const places = found.outcome === 'no-room' ? [] : found.layout.positions;
  const across = openingAcross(section, rules, half ? section.width : ridgeAcross(section));
  const hose = rules.value('access.hose.diameter');
  const acrossTrusses = knowsTrusses(along);
  const restsOn = layoutRestsOn(length, along, rules);
  const push = places.length === 0 ? undefined : farthestCorner(places, across, home, restsOn);
  const reached = push && onReach(push, reachOf(home.reach, rules), 'the hose');
  const count = byMethod('search of every place on the tape', restsOn, places.length, '1');
  return {
    way: 'roof holes',
    openings: found.outcome === 'no-room' ? undefined : count,
    push,
    patches: count,
    closing: '',
    ruledOut: [
      ...(carriesCrew === 'no' ? ['the roof does not carry the crew'] : []),
      ...(found.outcome === 'no-room' ? ['no row of holes finds room on this roof'] : []),
      ...noRoom(roomForHose(section, across, home, acrossTrusses, rules), hose, 'the cavity at the holes'),
      ...(reached?.ruledOut ?? []),
    ],
    unknown: [
      ...(carriesCrew === 'not known' ? ['whether the roof carries the crew'] : []),
      ...(found.outcome === 'least-departure'
        ? ['whether the crew leader takes a row that departs from the rules of the layout']
        : []),
      ...(acrossTrusses ? [] : ['where the trusses stand']),
      ...ofCover(
        cover,
        'how a patch is made in this cover: the rules here are for metal roofs, so ask a roofer',
      ),
      ...(reached?.unknown ?? []),
    ],
  };
}

/** From a hole to the farthest corner of the stretch that is filled through it, the longest of the row. */
function farthestCorner(
  places: readonly number[],
  across: Quantity<'length'>,
  { length, section }: Home,
  restsOn: readonly Quantity[],
): Quantity<'length'> {
  const ends = places.map((place, at) => {
    const [before, after] = [places[at - 1], places[at + 1]];
    return Math.max(
      before === undefined ? place : (place - before) / 2,
      after === undefined ? inches(length) - place : (after - place) / 2,
    );
  });
  const aside = Math.max(inches(across), section.profile.width - inches(across));
  return named(
    inUnit(
      byMethod(
        'from a hole to the farthest corner of its stretch, which ends half way to the next hole',
        [section.width, across, ...restsOn],
        Math.hypot(Math.max(...ends), aside),
        'in',
      ),
      'ft',
    ),
    'p',
    'Longest push from a hole',
  );
}

function edge(home: Home, rules: Rulebook): WayIn {
  const { length, section, along, edges, cover } = home;
  const tube = home.tube ?? rules.value('access.hose.diameter');
  const member = rules.value('framing.truss.member-width');
  const oneSided = home.half || section.shape === 'one-slope';
  const sides =
    edges === 'both edges' && !oneSided ? 2 : edges === 'neither' || edges === 'not known' ? 0 : 1;
  const trusses = trussPlaces(along, length);
  // Where some are not known either, what looks like one bay may be several.
  const bays =
    trusses.length === 0 || lacksTrusses(along, length, rules)
      ? undefined
      : stretches(trusses, inches(length), inches(member)).length;
  const ridge = ridgeAcross(section);
  const push =
    sides === 0
      ? undefined
      : named(
          inUnit(
            sides === 1
              ? section.width
              : byMethod(
                  'from the farther edge to the ridge',
                  section.told,
                  Math.max(inches(ridge), section.profile.width - inches(ridge)),
                  'in',
                ),
            'ft',
          ),
          'p',
          'Longest push under the edge',
        );
  const reached = push && onReach(push, reachOf(home.reach, rules), 'the tube');
  // Between two corners of a cavity it is nowhere lower than at the lower of them.
  const rooms = section.profile.corners.map((at) =>
    roomForHose(section, quantity(at, 'in'), home, false, rules),
  );
  const [least] = [...rooms].sort((a, b) => inches(a) - inches(b));
  return {
    way: 'lifted roof edge',
    openings:
      bays === undefined || edges === 'not known'
        ? undefined
        : byMethod(
            'bays between the trusses, at each edge that is lifted',
            [length, member, ...trussesTold(along)],
            bays * sides,
            '1',
          ),
    push,
    patches: number(0),
    closing: sides === 0 ? '' : sides === 2 ? 'both edges of the roof' : 'the edge of the roof',
    ruledOut: [
      ...(edges === 'neither' ? ['no edge of the roof can be lifted'] : []),
      ...(least ? noRoom(least, tube, 'the cavity where it is lowest', 'tube') : []),
      ...(reached?.ruledOut ?? []),
    ],
    unknown: [
      ...(edges === 'not known' ? ['whether an edge of the roof can be lifted'] : []),
      ...behindRings(home, 'bays'),
      ...(bays === undefined ? ['where the trusses stand, and so the bays'] : []),
      ...ofCover(cover, 'how an edge of this cover is lifted and closed: ask a roofer'),
      ...(reached?.unknown ?? []),
    ],
  };
}
