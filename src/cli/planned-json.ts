import { mostThatPasses } from '../calc/ceiling/load.ts';
import { remarkText } from '../calc/declare/remark.ts';
import { heldBy } from '../job/cautions.ts';
import type { PartOutcome } from '../job/parts/part.ts';
import { workParts } from '../job/parts/parts.ts';
import type { PlannedHole, WorkedJob } from '../job/planned.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { figuresJson, quantityJson, tablesJson } from './figures-json.ts';
import { partJson } from './part-json.ts';

const tape = { tape: 8 } as const;

const outcomeJson = (outcome: PartOutcome) => {
  const { name, title, state } = outcome;
  switch (state) {
    case 'answered': {
      const { figures, tables, cautions, remarks } = outcome.answer;
      return {
        name,
        title,
        state,
        figures: figuresJson(figures),
        tables: tablesJson(tables),
        cautions,
        remarks: remarks.map(remarkText),
      };
    }
    case 'waiting':
      return { name, title, state, waits_for: outcome.wanted };
    case 'wrong':
      return { name, title, state, problem: outcome.problem };
    case 'nothing':
      return { name, title, state, why: outcome.why };
  }
};

const holeJson = (hole: PlannedHole) => ({
  number: hole.number,
  along: quantityJson(hole.along, tape),
  moved: quantityJson(hole.moved, tape),
  over_seam: hole.overSeam,
  from: quantityJson(hole.from, tape),
  to: quantityJson(hole.to, tape),
  volume: quantityJson(hole.volume),
  weight: quantityJson(hole.weight),
  bags: quantityJson(hole.bags, { figures: 3 }),
});

/** A worked job as the command line prints it. */
export const plannedJson = (plan: WorkedJob, rules: Rulebook) => ({
  job: plan.job.name,
  rulebook: plan.rulebook,
  /** Stops that keep the figures behind them until they are settled. */
  held: heldBy(plan).map(({ id }) => id),
  ceiling: {
    verdict: plan.load.verdict,
    total: quantityJson(plan.load.total, { figures: 3 }),
    limit: plan.load.limit && quantityJson(plan.load.limit),
    highest_density: plan.load.highestDensity && quantityJson(plan.load.highestDensity, mostThatPasses),
    greatest_depth: plan.load.greatestDepth && quantityJson(plan.load.greatestDepth, mostThatPasses),
  },
  section: {
    area: quantityJson(plan.section.area),
    mean_depth: quantityJson(plan.section.meanDepth, tape),
    deepest: quantityJson(plan.section.deepest, tape),
    free_area: quantityJson(plan.free.free),
  },
  rows: plan.rows.map((row) => ({
    side: row.side,
    outcome: row.outcome,
    clash: row.clash,
    departures: row.departures,
    holes: row.holes.map(holeJson),
    gaps: row.gaps.map((gap) => quantityJson(gap, tape).text),
  })),
  totals: {
    volume: quantityJson(plan.volume),
    weight: quantityJson(plan.weight),
    bags: quantityJson(plan.bags, { figures: 3 }),
    bags_to_load: quantityJson(plan.bagsToLoad),
  },
  resistance_per_inch: plan.resistance && {
    from: plan.resistance.from,
    ...quantityJson(plan.resistance.value, { figures: 3 }),
    low: quantityJson(plan.resistance.low, { figures: 3 }).text,
    high: quantityJson(plan.resistance.high, { figures: 3 }).text,
  },
  log: partJson({
    ...plan.log,
    openings: plan.log.openings.map(({ hole, ...opening }) => ({ opening: hole.number, ...opening })),
  }),
  parts: workParts(plan, rules).map(outcomeJson),
  cautions: plan.cautions,
  remarks: plan.remarks.map(remarkText),
});
