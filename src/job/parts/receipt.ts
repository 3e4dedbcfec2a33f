import { printed, type Remark, said } from '../../calc/declare/remark.ts';
import { receipt } from '../../calc/receipt/declaration.ts';
import type { LogSays, PartValues, ReceiptValues } from '../../calc/receipt/fields.ts';
import {
  compare,
  inUnit,
  minus,
  named,
  number,
  type Origin,
  over,
  plus,
  type Quantity,
  times,
} from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type FillLog, fillLog } from '../fill-log.ts';
import { type Filled, filled } from '../filled.ts';
import type { WorkedJob } from '../planned.ts';
import { floorOf } from './home.ts';
import { part } from './part.ts';

/** The bags that went in, once every opening is full; before that the receipt has no number to tell. */
const bagsUsed = ({ openings, used }: FillLog): Quantity<'pieces'> | undefined =>
  openings.length > 0 && openings.every(({ state, notFilled }) => state === 'full' || notFilled)
    ? used
    : undefined;

/** What the log says against the receipt; undefined while no bag went in. */
function saidByLog({ openings, groups, used }: FillLog): LogSays | undefined {
  if (used.amount === 0) return undefined;
  const all = [...openings, ...groups];
  if (all.some(({ cautions }) => cautions.includes('caution.log.overloaded')))
    return 'a ceiling is overloaded';
  return all.some(({ verdict }) => verdict === 'full, light') ? 'an opening is light' : 'nothing against it';
}

/** What that rests on. */
const restsOn = (plan: WorkedJob, rules: Rulebook): Origin => ({
  from: 'method',
  method: 'the bags that went in, against the plan and what the ceiling may carry',
  operands: [
    plan.load.highestDensity,
    plan.load.limit,
    ...fillLog(plan, rules).openings.map(({ planned }) => planned),
  ].filter((each) => each !== undefined),
});

const density = (
  bags: Quantity<'pieces'>,
  { job }: WorkedJob,
  { volume }: Pick<Filled, 'volume'>,
): Quantity<'density'> =>
  named(
    inUnit(over(times(bags, job.fill.bag_weight), volume), 'lb/ft3'),
    'ρi',
    'Installed density, bags used over the volume filled',
  );

/**
 * What the receipt tells of this job, as far as plan and log know it. R is what was typed from the maker's paper, and nothing else: our own
 * estimate has no way in here. Area and density are those of the whole cavity, so where a part of it is not filled the crew enters them.
 */
export function receiptValues(plan: WorkedJob, rules: Rulebook): ReceiptValues {
  const { job } = plan;
  const { installer, date, fact_sheet, other_parts, bags, area, installed_density, ...typed } = job.receipt;
  const log = fillLog(plan, rules);
  const whole = wholeOf(log);
  const used = bags ?? bagsUsed(log);
  const cavity: PartValues = {
    ...typed,
    part: 'roof cavity',
    insulation: job.fill.material,
    area: area ?? (whole && floorOf(job)),
    bags: used,
    bag_weight: job.fill.bag_weight,
    installed_density: installed_density ?? (whole && used && density(used, plan, whole)),
  };
  return {
    home: job.name,
    installer: installer ?? job.agency,
    date,
    fact_sheet,
    log_says: saidByLog(log),
    parts: [cavity, ...(other_parts ?? [])],
  };
}

/** All of the cavity, where all of it is filled. */
function wholeOf(log: FillLog): Filled | undefined {
  const found = filled(log);
  return found?.leavesOut.length === 0 ? found : undefined;
}

/** Where the paper tells another story than the log, the plan or the cavity: a word, and no block, since the paper may be the one that is right. */
function againstTheJob(plan: WorkedJob, rules: Rulebook): Remark[] {
  const { settled_thickness, initial_thickness } = plan.job.receipt;
  const log = fillLog(plan, rules);
  const thickness = initial_thickness ?? settled_thickness;
  const room = plan.oldOnceFilled ? minus(plan.section.deepest, plan.oldOnceFilled) : plan.section.deepest;
  return [
    ...ofBags(plan, log, rules),
    ...ofPart(plan, log),
    ...(thickness && compare(thickness, room) > 0
      ? [
          said`The receipt states a thickness of ${thickness}, and the cavity leaves ${printed(room, { tape: 8 })} for new fill at its deepest place: measure again.`,
        ]
      : []),
  ];
}

/** Are the bags that were typed those of the log, and about those that the plan asks for in what is filled? */
function ofBags(plan: WorkedJob, log: FillLog, rules: Rulebook): Remark[] {
  const { bags } = plan.job.receipt;
  if (!bags) return [];
  const { openings, used } = log;
  const open = openings.filter(({ state, notFilled }) => state !== 'full' && !notFilled).length;
  const near = rules.value('fill.bag.near-enough');
  const found = filled(log);
  const far =
    found &&
    (compare(bags, times(found.planned, plus(number(1), near))) > 0 ||
      compare(bags, times(found.planned, minus(number(1), near))) < 0);
  return [
    ...(used.amount > 0 && compare(bags, used) !== 0
      ? [said`The receipt says ${bags}, the fill log counts ${used}: correct one of the two.`]
      : []),
    ...(used.amount > 0 && open > 0
      ? [`By the fill log ${open} of the ${openings.length} openings are not full yet.`]
      : []),
    ...(found && far
      ? [
          said`The receipt says ${bags}, the plan asks for ${printed(found.planned, { figures: 3 })}${found.leavesOut.length > 0 ? ' in what is filled' : ''}, and that is farther apart than the usual spread of ${near}.`,
        ]
      : []),
  ];
}

/** Why area and density are left to the crew, where they are. */
function ofPart(plan: WorkedJob, log: FillLog): Remark[] {
  const found = filled(log);
  if (!found)
    return [
      'Which part of the cavity is filled is not known yet, so area and installed density are left for you to enter.',
    ];
  if (found.leavesOut.length === 0) return [];
  return [
    'Part of the cavity is not filled, so area and installed density of the whole would be false. Enter those of the part that is filled.',
    ...found.leavesOut,
    ...(found.bags.amount > 0
      ? [said`The bags in what is filled make ${density(found.bags, plan, found)} there, by the fill log.`]
      : []),
  ];
}

export const receiptPart = part({
  calculation: receipt,
  asked: {
    home: 'name',
    installer: 'receipt.installer',
    date: 'receipt.date',
    fact_sheet: 'receipt.fact_sheet',
    parts: 'receipt.other_parts',
  },
  needs: ['receipt'],
  // The first part is the roof cavity, whose entries are the job's own.
  askedIn: (field) => {
    const [, place, name] = /^parts\.(\d+)\.(\w+)$/.exec(field) ?? [];
    if (place === undefined) return undefined;
    return place === '0' ? `receipt.${name}` : `receipt.other_parts.${Number(place) - 1}.${name}`;
  },
  runs: (plan, rules) => [
    {
      values: receiptValues(plan, rules),
      found: { log_says: restsOn(plan, rules) },
      remarks: againstTheJob(plan, rules),
    },
  ],
});
