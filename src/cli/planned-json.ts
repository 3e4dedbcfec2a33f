import { asLimit, besideLimit, mostThatPasses } from '../calc/ceiling/load.ts';
import { remarkText } from '../calc/declare/remark.ts';
import { highEnd, lowEnd } from '../calc/fill/ends.ts';
import type { CautionId } from '../generated/rule-types.ts';
import { heldBy } from '../job/cautions.ts';
import { fillLog } from '../job/fill-log.ts';
import type { PartOutcome } from '../job/parts/part.ts';
import { workParts } from '../job/parts/parts.ts';
import type { PlannedHole, WorkedJob } from '../job/planned.ts';
import { holesAreCut, saidOfCeiling, saidOfFill, saidOfHoles } from '../job/said-beside.ts';
import { settling } from '../job/settling.ts';
import type { CautionWords, Rulebook } from '../rulebook/rulebook.ts';
import { cautionsJson, figuresJson, quantityJson, tablesJson, whoseJson } from './figures-json.ts';
import { partJson } from './part-json.ts';

const tape = { tape: 8 } as const;

type CautionsJson = (ids: readonly CautionId[]) => ReturnType<typeof cautionsJson>;

const outcomeJson = (outcome: PartOutcome, said: CautionsJson) => {
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
        cautions: said(cautions),
        remarks: remarks.map(remarkText),
      };
    }
    case 'waiting':
      return { name, title, state, waits_for: outcome.wanted };
    case 'wrong':
      return { name, title, state, problem: outcome.problem };
    case 'nothing':
      return { name, title, state, why: outcome.why };
    case 'held':
      return { name, title, state };
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

/** What a stop holds back: where the holes go, how much goes in, what came of it. */
const figuresHeld = (plan: WorkedJob, rules: Rulebook) => ({
  section: {
    area: quantityJson(plan.section.area),
    mean_depth: quantityJson(plan.section.meanDepth, tape),
    deepest: quantityJson(plan.section.deepest, tape),
    free_area: quantityJson(plan.free.free),
  },
  // Holes that are not to be cut are no holes of this plan.
  rows: (holesAreCut(plan) ? plan.rows : []).map((row) => ({
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
    low: quantityJson(plan.resistance.low, lowEnd).text,
    high: quantityJson(plan.resistance.high, highEnd).text,
  },
  log: partJson(fillLog(plan, rules)),
});

/**
 * A worked job as the command line prints it. While a stop holds the plan, its figures stay behind it unless `behindStops` asks for them;
 * what the ceiling carries and what settles the stops is told all the same.
 */
export function plannedJson(
  plan: WorkedJob,
  rules: Rulebook,
  cautions: Readonly<Record<string, CautionWords>>,
  behindStops: boolean,
) {
  const said: CautionsJson = (ids) => cautionsJson(ids, cautions, rules);
  const held = heldBy(plan).map(({ id }) => id);
  const shown = held.length === 0 || behindStops;
  const told = {
    job: plan.job.name,
    rulebook: plan.rulebook,
    /** Stops that keep the figures behind them until they are settled. */
    held: said(held),
    settled_by: settling(plan, rules).map(({ id, entries }) => ({ id, entries })),
    ceiling: {
      verdict: plan.load.verdict,
      total: quantityJson(plan.load.total, besideLimit(plan.load.total, plan.load.limit)),
      limit: plan.load.limit && quantityJson(plan.load.limit, asLimit),
      highest_density: plan.load.highestDensity && quantityJson(plan.load.highestDensity, mostThatPasses),
      greatest_depth: plan.load.greatestDepth && quantityJson(plan.load.greatestDepth, mostThatPasses),
      remarks: saidOfCeiling(plan, rules).map(remarkText),
    },
    ...(shown ? figuresHeld(plan, rules) : {}),
    parts: workParts(plan, rules, behindStops).map((outcome) => outcomeJson(outcome, said)),
    cautions: plan.cautions.map(({ id, at }) => ({ ...said([id])[0], at })),
    remarks: shown ? [...saidOfHoles(plan), ...saidOfFill(plan)].map(remarkText) : [],
  };
  return { ...told, ...whoseJson(told, rules) };
}
