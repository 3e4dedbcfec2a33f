import type { WorkedJob } from '../job/planned.ts';
import { remembering } from '../job/remembering.ts';
import { format } from '../quantity/format.ts';
import { inches } from '../quantity/quantity.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { dimension } from './dimension.ts';
import { line, path } from './lines.ts';
import { belowPeakTold } from './roof-below-peak.ts';
import { roofChain } from './roof-chain.ts';
import { roofEnds } from './roof-ends.ts';
import { bagsShape, type HoleSizes, holeShapes, roofHoles, sideOf } from './roof-holes.ts';
import { roofThings, takenBy, thingNames, thingShapes } from './roof-things.ts';
import { type Orientation, type RoofView, roofView } from './roof-view.ts';
import { roofInWords } from './roof-words.ts';
import { type Box, boxOf, grown, linesTaken, NEVER, type Taken, wordsTaken } from './room.ts';
import { scaleBar } from './scale-bar.ts';
import type { Drawing, Shape } from './svg.ts';

export type { Orientation } from './roof-view.ts';

/** Words keep so far off the roof's edge, and off one another. */
const MARGIN = 3;
const APART = 2;
/** What it costs words to stand on a line, that they can be read on. */
const ON = { truss: 0.3, seam: 1, centre: 3 } as const;
/** From the roof's edge to its length; beyond the chain of a second row of holes. */
const LENGTH = { single: 26, double: 58 } as const;

/** To find them is most of the work of a roof, and few keys move anything that they keep off: of each orientation some are remembered. */
const namesRemembered = remembering(thingNames, 6);

const covering = (box: Box): Taken => ({ box: grown(box, APART), cost: NEVER });

/**
 * The roof from above, to scale: outline, ridge, trusses, seams, what comes through, holes with their patches, the stretch filled
 * through each, all dimensioned. The back side is drawn at the top; an upright sheet is the same turned by a quarter, with the back side at
 * the right, so that on both the starting end lies on the right hand of whoever faces the ridge from the back side. A single slope has its
 * ridge at its high edge. Words go where they hide nothing: first the numbers of the holes, last the names of what comes through.
 */
export function roofPlan(plan: WorkedJob, rules: Rulebook, orientation: Orientation): Drawing {
  const belowPeak = rules.value('access.roof-holes.below-peak');
  const view = roofView(plan, inches(belowPeak), orientation);
  const { at, back, front, length, out, perInch, upright, sheet } = view;
  const sizes: HoleSizes = {
    radius: (inches(rules.value('access.roof-holes.diameter')) / 2) * perInch,
    metal: inches(rules.value('patch.layers.metal-side')) * perInch,
    membrane: inches(rules.value('patch.layers.membrane-side')) * perInch,
  };
  const room = grown(boxOf(at(0, -back), at(length, front)), -MARGIN);
  const lines = linesOf(plan, view);
  const things = roofThings(plan, view);
  const holes = roofHoles(plan, view, inches(belowPeak));

  const solid = holes.map(({ centre }) => covering(grown(boxOf(centre, centre), sizes.membrane / 2)));
  const standing = things.map((thing) => covering(takenBy(thing)));
  const drawnHoles = holes.map((each) => {
    const drawn = holeShapes(each, sizes, view, [...solid, ...standing], room);
    solid.push(covering(drawn.box));
    return drawn;
  });
  const told = belowPeakTold(holes, belowPeak, view, sizes.membrane, [...solid, ...standing], room);
  solid.push(...told.boxes.map(covering));
  const onLines = lines.flatMap(({ taken }) => taken);
  const bags = holes.map((each) => {
    const drawn = bagsShape(each, view, [...solid, ...standing, ...onLines], room);
    solid.push(covering(drawn.box));
    return drawn;
  });
  const around = [
    ...plan.rows.flatMap((row) => roofChain(row, view)),
    ...dimension(
      at(0, front),
      at(length, front),
      out * LENGTH[view.double ? 'double' : 'single'],
      format(plan.job.home.length, { tape: 8 }),
    ),
  ];
  const names = namesRemembered({
    things,
    upright,
    sheet,
    edges: { back: at(0, -back), front: at(0, front) },
    taken: [...solid, ...onLines, ...wordsTaken(around), ...linesTaken(around, ON.centre)],
    room,
  });

  return {
    ...sheet,
    title: 'The roof from above',
    description: roofInWords(plan, belowPeak),
    shapes: [
      ...lines.flatMap(({ shapes }) => shapes),
      path('outline', [at(0, -back), at(length, -back), at(length, front), at(0, front)], true),
      ...things.flatMap(thingShapes),
      ...drawnHoles.flatMap(({ shapes }) => shapes),
      ...bags.map(({ shape }) => shape),
      ...names,
      ...around,
      ...told.shapes,
      ...roofEnds(view),
      ...scaleBar(
        [view.foot[0], sheet.height - (upright ? 30 : 26)],
        upright ? back + front : length,
        perInch,
      ),
    ],
  };
}

interface Lines {
  readonly shapes: readonly Shape[];
  readonly taken: readonly Taken[];
}

/** Trusses and seams across the roof, its ridge, and the ends of the stretches, each on the side of its row. */
function linesOf(plan: WorkedJob, { at, back, front, length, double, perInch }: RoofView): Lines[] {
  const across = (place: number, from = -back, to = front) => [at(place, from), at(place, to)] as const;
  const ends = plan.rows.flatMap((row) =>
    row.holes
      .slice(0, -1)
      .map(({ to }) =>
        double ? across(inches(to), 0, sideOf(row) < 0 ? -back : front) : across(inches(to)),
      ),
  );
  const past = 10 / perInch;
  return (
    [
      ['hidden', ON.truss, plan.trusses.map((place) => across(place))],
      ['thin', ON.seam, plan.seams.map((place) => across(place))],
      ['centre', ON.centre, [[at(-past, 0), at(length + past, 0)]]],
      ['boundary', ON.centre, ends],
    ] as const
  ).map(([type, cost, all]) => ({
    shapes: all.map(([a, b]) => line(type, a, b)),
    taken: all.map(([a, b]) => ({ box: boxOf(a, b), cost })),
  }));
}
