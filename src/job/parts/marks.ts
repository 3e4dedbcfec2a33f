import { openingAcross } from '../../calc/cavity/opening.ts';
import { EntriesClash } from '../../calc/declare/calculation.ts';
import type { Values } from '../../calc/declare/field.ts';
import type { Remark } from '../../calc/declare/remark.ts';
import { type hoseMarkFields, hoseMarkings, marksFrom } from '../../calc/marks/declaration.ts';
import type { HoseMarks } from '../../calc/marks/marks.ts';
import { amountIn } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import type { PlannedHole } from '../planned.ts';
import { USUAL_WAY, wayTaken } from '../way-taken.ts';
import { behindFlues } from './behind-flue.ts';
import { asFlue, hotInTheWay } from './flue-rings.ts';
import { type Known, part } from './part.ts';

/** The hose marks of every opening of the plan, each a run of its own. */
export const marksPart = part({
  calculation: hoseMarkings,
  asked: {
    along: 'roof.truss_spacing',
    width: 'cavity.width',
    stream_reach: 'hose.stream_reach',
    stand_off: 'hose.stand_off',
    reach: 'hose.reach',
    truss_spacing: 'roof.truss_spacing',
    first_truss: 'roof.first_truss',
    trusses_measured: 'roof.trusses_measured',
    flues: 'roof.obstacles',
  },
  runs: (plan, rules) => {
    const { job, rows, section } = plan;
    const double = rows.length > 1;
    const openings = rows.flatMap(({ side, holes }) => holes.map((hole) => ({ side, hole })));
    const way = wayTaken(job);
    if (way !== USUAL_WAY)
      return `The way taken is the ${way}: the sheet of the ways in tells how far the hose goes in.`;
    if (openings.length === 0) return 'The plan has no openings yet, so there is nothing to mark.';
    const across = openingAcross(section, rules, double ? section.width : undefined);
    const runs = openings.map(({ side, hole }) => {
      const met = hotInTheWay(plan, double ? side : undefined).filter((each) => meets(asFlue(each), hole));
      return {
        title: `Opening ${hole.number}${double ? `, ${side} side` : ''}`,
        side,
        hole,
        values: {
          along: hole.along,
          from: hole.from,
          to: hole.to,
          width: job.cavity.width,
          across,
          stream_reach: job.hose.stream_reach,
          stand_off: job.hose.stand_off,
          // From the back side the starting end lies on the right hand; from the front it lies on the left.
          starting_end: side === 'back' ? ('right hand' as const) : ('left hand' as const),
          reach: job.hose.reach,
          truss_spacing: job.roof.truss_spacing,
          first_truss: job.roof.first_truss,
          trusses_measured: job.roof.trusses_measured,
          flues: met.map(asFlue),
        },
        entries: { flues: met.map(({ entry }) => entry) },
      };
    });
    const beside = rows.flatMap((row) =>
      besideFlues(
        runs.filter(({ side }) => side === row.side),
        rules,
      ),
    );
    return runs.map(({ title, values, entries }, place) => ({
      title,
      values,
      entries,
      remarks: beside[place] ?? [],
    }));
  },
});

/** What is said at each opening of a row beside its marks; nothing while an entry that they need is missing. */
function besideFlues(
  row: readonly {
    readonly title: string;
    readonly hole: PlannedHole;
    readonly values: Known<typeof hoseMarkFields>;
  }[],
  rules: Rulebook,
): readonly (readonly Remark[])[] {
  const flues = row.some(({ values }) => (values.flues?.length ?? 0) > 0);
  if (!flues || row.some(({ values }) => values.stream_reach === undefined)) return row.map(() => []);
  return behindFlues(
    row.map(({ title, hole, values }) => ({
      name: title,
      bags: hole.bags,
      found: marksOf(values as Values<typeof hoseMarkFields>, rules),
    })),
  );
}

/** The marks of one opening; none where its entries clash, which its own run tells of. */
function marksOf(values: Values<typeof hoseMarkFields>, rules: Rulebook): HoseMarks | undefined {
  try {
    return marksFrom(values, rules);
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
