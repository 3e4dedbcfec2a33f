import { printed, type Remark, said } from '../../calc/declare/remark.ts';
import { receipt } from '../../calc/receipt/declaration.ts';
import type { PartValues, ReceiptValues } from '../../calc/receipt/fields.ts';
import { compare, minus, named, number, over, plus, type Quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { fillLog } from '../fill-log.ts';
import type { WorkedJob } from '../planned.ts';
import { floorOf } from './home.ts';
import { part } from './part.ts';

/** The bags that went in, once every opening is full; before that the receipt has no number to tell. */
function bagsUsed(plan: WorkedJob, rules: Rulebook): Quantity<'pieces'> | undefined {
  const { openings, used } = fillLog(plan, rules);
  return openings.length > 0 && openings.every(({ state, notFilled }) => state === 'full' || notFilled)
    ? used
    : undefined;
}

/**
 * What the receipt tells of this job, as far as plan and log know it. R is what was typed from the maker's paper, and nothing else: our own
 * estimate has no way in here.
 */
export function receiptValues(plan: WorkedJob, rules: Rulebook): ReceiptValues {
  const { job } = plan;
  const { installer, date, fact_sheet, other_parts, bags, area, installed_density, ...typed } = job.receipt;
  const used = bags ?? bagsUsed(plan, rules);
  const cavity: PartValues = {
    ...typed,
    part: 'roof cavity',
    insulation: job.fill.material,
    area: area ?? floorOf(job),
    bags: used,
    bag_weight: job.fill.bag_weight,
    installed_density:
      installed_density ??
      (used &&
        named(
          over(times(used, job.fill.bag_weight), plan.volume),
          'ρi',
          'Installed density, bags used over the volume filled',
        )),
  };
  return {
    home: job.name,
    installer: installer ?? job.agency,
    date,
    fact_sheet,
    parts: [cavity, ...(other_parts ?? [])],
  };
}

/** Where the paper tells another story than the log, the plan or the cavity: a word, and no block, since the paper may be the one that is right. */
function againstTheJob(plan: WorkedJob, rules: Rulebook): Remark[] {
  const { bags, settled_thickness, initial_thickness } = plan.job.receipt;
  const { openings, used } = fillLog(plan, rules);
  const says: Remark[] = [];
  const open = openings.filter(({ state, notFilled }) => state !== 'full' && !notFilled).length;
  if (bags && used.amount > 0 && compare(bags, used) !== 0)
    says.push(said`The receipt says ${bags}, the fill log counts ${used}: correct one of the two.`);
  if (bags && used.amount > 0 && open > 0)
    says.push(`By the fill log ${open} of the ${openings.length} openings are not full yet.`);
  const near = rules.value('fill.bag.near-enough');
  if (
    bags &&
    (compare(bags, times(plan.bags, plus(number(1), near))) > 0 ||
      compare(bags, times(plan.bags, minus(number(1), near))) < 0)
  )
    says.push(
      said`The receipt tells ${bags}, the plan asks for ${printed(plan.bags, { figures: 3 })}, and that is farther apart than the usual spread of ${near}.`,
    );
  const thickness = initial_thickness ?? settled_thickness;
  const room = plan.oldOnceFilled ? minus(plan.section.deepest, plan.oldOnceFilled) : plan.section.deepest;
  if (thickness && compare(thickness, room) > 0)
    says.push(
      said`The receipt states a thickness of ${thickness}, and the cavity leaves ${printed(room, { tape: 8 })} for new fill at its deepest place: measure again.`,
    );
  return says;
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
  runs: (plan, rules) => [{ values: receiptValues(plan, rules), remarks: againstTheJob(plan, rules) }],
});
