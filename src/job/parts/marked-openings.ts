import { openingAcross } from '../../calc/cavity/opening.ts';
import { EntriesClash } from '../../calc/declare/calculation.ts';
import type { Values } from '../../calc/declare/field.ts';
import type { Remark } from '../../calc/declare/remark.ts';
import { type hoseMarkFields, marksFrom, openingFrom } from '../../calc/marks/declaration.ts';
import { pushesOf } from '../../calc/marks/pushes.ts';
import { sendPushes } from '../../calc/marks/sent.ts';
import { amountIn, minus, named, plus, type Quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { oncePerPlan } from '../once-per-plan.ts';
import { ofMarriageLine } from '../over-the-line.ts';
import type { PlannedHole, PlannedRow, WorkedJob } from '../planned.ts';
import { remembering } from '../remembering.ts';
import { roomOnPushes } from '../room-on-pushes.ts';
import { behindFlues, type Shadow, shadowsOf } from './behind-flue.ts';
import { asFlue, hotInTheWay } from './flue-rings.ts';
import type { Known } from './part.ts';

/** Most keys move no opening. As many as the two rows of a long roof have, and what they were a key before. */
const sendRemembered = remembering(sendPushes, 48);

type MarkValues = Known<typeof hoseMarkFields>;

/** An opening of the plan with all that its hose marks are worked from. */
export interface MarkedOpening {
  readonly title: string;
  readonly side: PlannedRow['side'];
  readonly hole: PlannedHole;
  readonly values: MarkValues;
  /** The way in the job to each of its flues. */
  readonly flues: readonly string[];
  /** What is blown through it: its own stretch less what lies behind a flue, and what it blows behind that of a neighbour. */
  readonly blown: Quantity<'volume'>;
  /** The last of it; undefined where it blows behind none. */
  readonly ofNeighbours: Quantity<'volume'> | undefined;
}

type Worked = Pick<MarkedOpening, 'title' | 'side' | 'hole' | 'values' | 'flues'>;

/** The openings of a row, and what lies behind flues along it. */
interface MarkedRow {
  readonly openings: readonly MarkedOpening[];
  readonly shadows: readonly Shadow[];
}

/** The rows of a plan, by what they are asked about: each is worked by itself, so that a page can draw between them. */
const rowsOf = oncePerPlan((): Map<PlannedRow, MarkedRow> => new Map());

function markedRow(plan: WorkedJob, row: PlannedRow, rules: Rulebook): MarkedRow {
  const known = rowsOf(plan, rules);
  const before = known.get(row);
  if (before) return before;
  const double = plan.rows.length > 1;
  const across = openingAcross(plan.section, rules, double ? plan.section.width : undefined);
  const { side } = row;
  const found = withFluesOfNeighbours(
    row.holes.map((hole) => alone(plan, { side, hole, across, double })),
    rules,
  );
  known.set(row, found);
  return found;
}

/**
 * The openings of a row of the plan, each with the flues that its hose has to do with: those that meet its own stretch, and those of a
 * neighbour that it blows behind.
 */
export const openingsOfRow = (plan: WorkedJob, row: PlannedRow, rules: Rulebook): readonly MarkedOpening[] =>
  markedRow(plan, row, rules).openings;

/** All openings of the plan, row by row. */
export const markedOpenings = (plan: WorkedJob, rules: Rulebook): readonly MarkedOpening[] =>
  plan.rows.flatMap((row) => openingsOfRow(plan, row, rules));

/** What is said at each opening of the plan beside its marks: what lies behind flues, what reaches over the marriage line, where a hose has no room. */
export function saidOfMarks(plan: WorkedJob, rules: Rulebook): readonly (readonly Remark[])[] {
  const rows = plan.rows.map((row) => markedRow(plan, row, rules));
  const [first] = rows.flatMap(({ openings }) => openings);
  const room = first?.values.across ? roomOnPushes(plan, first.values.across, rules) : [];
  return rows.flatMap(({ openings, shadows }) => {
    const behind = behindFlues(
      openings.map(({ title, values }) => ({
        name: title,
        marks: () => unlessTheyClash(() => marksFrom(values as Values<typeof hoseMarkFields>, rules)),
      })),
      shadows,
    );
    return openings.map(({ side, hole }, place) => [
      ...(behind[place] ?? []),
      ...ofMarriageLine(plan, { side, ...hole }),
      ...room,
    ]);
  });
}

function alone(
  plan: WorkedJob,
  {
    side,
    hole,
    across,
    double,
  }: Pick<Worked, 'side' | 'hole'> & { readonly across: Quantity<'length'>; readonly double: boolean },
): Worked {
  const { cavity, hose, roof } = plan.job;
  const met = hotInTheWay(plan, double ? side : undefined).filter((each) => meets(asFlue(each), hole));
  return {
    title: `Opening ${hole.number}${double ? `, ${side} side` : ''}`,
    side,
    hole,
    values: {
      along: hole.along,
      from: hole.from,
      to: hole.to,
      width: cavity.width,
      across,
      stream_reach: hose.stream_reach,
      stand_off: hose.stand_off,
      // From the back side the starting end lies on the right hand; from the front it lies on the left.
      starting_end: side === 'back' ? 'right hand' : 'left hand',
      reach: hose.reach,
      truss_spacing: roof.truss_spacing,
      first_truss: roof.first_truss,
      trusses_measured: roof.trusses_measured,
      flues: met.map(asFlue),
    },
    flues: met.map(({ entry }) => entry),
  };
}

/** Nothing lies behind a flue, as far as is known, while an entry that the marks need is missing. */
function withFluesOfNeighbours(row: readonly Worked[], rules: Rulebook): MarkedRow {
  const known =
    row.some(({ flues }) => flues.length > 0) && row.every(({ values }) => values.stream_reach !== undefined);
  const shadows = known
    ? shadowsOf(
        row.map(({ hole, values }) => ({
          bags: hole.bags,
          found: unlessTheyClash(() =>
            pushesOf(openingFrom(values as Values<typeof hoseMarkFields>, rules), rules, sendRemembered),
          ),
        })),
      )
    : [];
  const openings = row.map((each, place) => ({
    ...shadows
      .filter(({ blownFrom }) => blownFrom === place)
      .reduce((so, shadow) => blowing(so, shadow, row), each),
    ...volumes(place, row, shadows),
  }));
  return { openings, shadows };
}

/** An opening that blows behind a flue of its neighbour: its hose has to do with that flue too. */
function blowing(each: Worked, { from, flue }: Shadow, row: readonly Worked[]): Worked {
  const entry = row[from]?.flues[flue];
  const behind = row[from]?.values.flues?.[flue];
  if (entry === undefined || !behind) return each;
  const others = each.flues.flatMap((other, place) => (other === entry ? [] : [place]));
  return {
    ...each,
    values: {
      ...each.values,
      flues: [
        ...others.flatMap((place) => each.values.flues?.[place] ?? []),
        { ...behind, blownBehind: true } as typeof behind,
      ],
    },
    flues: [...others.flatMap((place) => each.flues[place] ?? []), entry],
  };
}

/** What is blown through an opening, by what it holds back and what its neighbours do. */
function volumes(
  place: number,
  row: readonly Worked[],
  shadows: readonly Shadow[],
): Pick<MarkedOpening, 'blown' | 'ofNeighbours'> {
  const behind = (those: (shadow: Shadow) => boolean) =>
    shadows.filter(those).flatMap(({ from, share }) => {
      const volume = row[from]?.hole.volume;
      return volume ? [times(volume, share)] : [];
    });
  const own = (row[place] as Worked).hole.volume;
  const given = behind(({ from }) => from === place);
  const taken = behind(({ blownFrom }) => blownFrom === place);
  if (given.length + taken.length === 0) return { blown: own, ofNeighbours: undefined };
  return {
    blown: named(
      taken.reduce(
        (sum, each) => plus(sum, each),
        given.reduce((rest, each) => minus(rest, each), own),
      ),
      'Vb',
      'Volume that is blown through it',
    ),
    ofNeighbours: taken.length > 0 ? taken.reduce((sum, each) => plus(sum, each)) : undefined,
  };
}

/** What was found of one opening; nothing where its entries clash, which its own run tells of. */
function unlessTheyClash<Found>(find: () => Found): Found | undefined {
  try {
    return find();
  } catch (error) {
    if (error instanceof EntriesClash) return undefined;
    throw error;
  }
}

/** Does a ring reach into the stretch that is filled through an opening? */
function meets(
  { along, across, ring }: ReturnType<typeof asFlue>,
  { from, to }: Pick<PlannedHole, 'from' | 'to'>,
): boolean {
  const half = amountIn(across, 'in') / 2 + amountIn(ring, 'in');
  return (
    amountIn(along, 'in') + half > amountIn(from, 'in') && amountIn(along, 'in') - half < amountIn(to, 'in')
  );
}
