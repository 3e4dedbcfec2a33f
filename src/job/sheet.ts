import { asLimit, besideLimit, mostThatPasses } from '../calc/ceiling/load.ts';
import { remarkPieces, remarkText } from '../calc/declare/remark.ts';
import { highEnd, lowEnd } from '../calc/fill/ends.ts';
import { clashSentence, departureSentences } from '../calc/holes/words.ts';
import { format } from '../quantity/format.ts';
import { quantity } from '../quantity/quantity.ts';
import type { CautionWords, Rulebook } from '../rulebook/rulebook.ts';
import { figureText, sentenceOf } from '../rulebook/whose.ts';
import { ofBlownThrough } from './blown-through.ts';
import { cautionSentence } from './caution-sentence.ts';
import { heldBy } from './cautions.ts';
import { blownBehind, fillLog } from './fill-log.ts';
import { strayName } from './log-entries.ts';
import { partLines } from './part-lines.ts';
import { workParts } from './parts/parts.ts';
import type { PlannedRow, WorkedJob } from './planned.ts';
import { holesAreCut, saidOfCeiling, saidOfFill, saidOfHoles } from './said-beside.ts';
import { settling } from './settling.ts';

const tape = { tape: 8 } as const;

/**
 * The worked job as a sheet of plain text, to be read or printed anywhere. While a stop holds the plan, its figures stay behind it: the
 * sheet tells the stops and what settles them, unless it is asked for what stands behind them.
 */
export function jobSheet(
  plan: WorkedJob,
  cautions: Readonly<Record<string, CautionWords>>,
  rules: Rulebook,
  behindStops = false,
): string {
  const held = heldBy(plan);
  const head = `${plan.job.name}${plan.job.agency ? `, ${plan.job.agency}` : ''}   rulebook ${plan.rulebook}`;
  if (held.length === 0) return [head, '', ...planLines(plan, cautions, rules)].join('\n');
  return [
    head,
    '',
    'HELD: nothing is blown before this is settled.',
    ...settling(plan, rules).flatMap(({ id, entries }) => [
      cautionSentence(cautions[id], rules),
      `  Settled by: ${entries.map(({ label, field }) => `${label} (${field})`).join('; ')}.`,
    ]),
    ...(behindStops
      ? ['', 'Behind these stops, to be talked over only:', '', ...planLines(plan, cautions, rules)]
      : [
          '',
          'The figures stay behind these stops. To print them all the same, add --behind-stops.',
          '',
          ...ceilingLines(plan, rules),
          ...workParts(plan, rules).flatMap((outcome) => partLines(outcome, cautions, rules)),
        ]),
  ].join('\n');
}

function planLines(
  plan: WorkedJob,
  cautions: Readonly<Record<string, CautionWords>>,
  rules: Rulebook,
): string[] {
  const said = (at: WorkedJob['cautions'][number]['at']) =>
    plan.cautions.filter((each) => each.at === at).map(({ id }) => cautionSentence(cautions[id], rules));
  return [
    ...said('ceiling'),
    ...ceilingLines(plan, rules),
    '',
    'BEFORE YOU START',
    ...said('before'),
    '',
    'HOLES',
    ...said('layout'),
    ...saidOfHoles(plan).map((remark) => `  ${sentenceOf(remarkPieces(remark), rules)}`),
    ...(holesAreCut(plan) ? plan.rows.flatMap((row) => rowLines(row, plan, rules)) : []),
    '',
    'FILL',
    ...said('fill'),
    `  ${format(plan.weight)} in ${format(plan.bags, { figures: 3 })}; load ${format(plan.bagsToLoad)}`,
    ...(plan.resistance
      ? [
          `  ${format(plan.resistance.value, { figures: 3 })}, between ${format(plan.resistance.low, lowEnd)} and ${format(plan.resistance.high, highEnd)}, from ${plan.resistance.from}`,
        ]
      : []),
    ...saidOfFill(plan).map((remark) => `  ${sentenceOf(remarkPieces(remark), rules)}`),
    ...logLines(plan, cautions, rules),
    ...workParts(plan, rules, true).flatMap((outcome) => partLines(outcome, cautions, rules)),
  ];
}

/** What the ceiling carries, and what would pass. */
function ceilingLines(plan: WorkedJob, rules: Rulebook): string[] {
  const { load } = plan;
  return [
    `CEILING: ${load.verdict}`,
    `  on it at the deepest place ${format(load.total, besideLimit(load.total, load.limit))}${load.limit ? `, it may carry ${figureText(load.limit, format(load.limit, asLimit), rules)}` : ''}`,
    ...(load.highestDensity && load.greatestDepth
      ? [
          `  passes up to ${format(load.highestDensity, mostThatPasses)}, or to ${format(load.greatestDepth, { ...tape, ...mostThatPasses })} of new fill`,
        ]
      : []),
    ...saidOfCeiling(plan, rules).map((remark) => `  ${sentenceOf(remarkPieces(remark), rules)}`),
  ];
}

/** The log, once a bag went in. */
function logLines(
  plan: WorkedJob,
  cautions: Readonly<Record<string, CautionWords>>,
  rules: Rulebook,
): string[] {
  const log = fillLog(plan, rules);
  if (log.used.amount === 0) return [];
  const count = { figures: 3 } as const;
  return [
    '',
    'FILL LOG',
    `  ${format(log.used)} in, ${format(log.left)} left on the truck, ${log.stillToGo ? `${format(log.stillToGo, count)} to go` : 'what is to go is not known'}`,
    ...(log.short.amount > 0 || log.beyondPlan.amount > 0
      ? [
          `  closed ${format(log.short, count)} short of the plan; ${format(log.beyondPlan, count)} beyond it elsewhere`,
        ]
      : []),
    ...(log.unknown ? [`  ${log.unknown}`] : []),
    ...(log.beyondReach
      ? [`  ${format(log.beyondReach, count)} more of the plan are for what none of these openings reaches`]
      : []),
    ...blownBehind(log.openings, plan).map((remark) => `  ${sentenceOf(remarkPieces(remark), rules)}`),
    ...log.openings.map(
      ({ opening, bags, planned, density, verdict, notFilled }) =>
        `  ${opening.name}: ${format(bags)} of ${format(planned, count)}, ${format(density, count)}: ${notFilled ? `not filled, ${notFilled}` : verdict}`,
    ),
    ...log.groups.map(
      ({ name, bags, planned, density, verdict }) =>
        `  ${name} together: ${format(bags)} of ${format(planned, count)}, ${format(density, count)}: ${verdict}`,
    ),
    ...log.strays.map((entry) => `  ${strayName(entry)}: ${format(entry.bags)}, no longer in the plan`),
    ...[...new Set([...log.openings, ...log.groups].flatMap((opening) => opening.cautions))].map((id) =>
      cautionSentence(cautions[id], rules),
    ),
  ];
}

function rowLines(row: PlannedRow, plan: WorkedJob, rules: Rulebook): string[] {
  const heading = `  ${row.side} side: ${format(quantity(row.holes.length, 'hole'))}, ${row.outcome}`;
  const trouble =
    row.clash.length > 0
      ? [`  ${clashSentence(row.clash)}`, ...departureSentences(row.departures).map((each) => `  ${each}`)]
      : [];
  const blownThrough = (number: number) => {
    const remark = ofBlownThrough(plan, row, number, rules);
    return remark ? `, ${remarkText(remark)}` : '';
  };
  const holes = row.holes.map(
    (hole) =>
      `  ${String(hole.number).padStart(2)}  at ${format(hole.along, tape).padEnd(16)} fills ${format(hole.from, tape)} to ${format(hole.to, tape)}: ${format(hole.bags, { figures: 3 })}, ${format(hole.weight)}${hole.overSeam ? ', patch over a seam' : ''}${hole.movedFar ? `, ${format(hole.moved, tape)} from its even place` : ''}${blownThrough(hole.number)}`,
  );
  return [heading, ...trouble, ...holes];
}
