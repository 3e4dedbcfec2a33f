import { receipt } from '../../calc/receipt/declaration.ts';
import type { PartValues, ReceiptValues } from '../../calc/receipt/fields.ts';
import { named, over, type Quantity, times } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { fillLog } from '../fill-log.ts';
import type { WorkedJob } from '../planned.ts';
import { floorOf } from './home.ts';
import { part } from './part.ts';

/** The bags that went in, once every opening is full; before that the receipt has no number to tell. */
function bagsUsed(plan: WorkedJob, rules: Rulebook): Quantity<'pieces'> | undefined {
  const { openings, used } = fillLog(plan, rules);
  return openings.length > 0 && openings.every(({ state }) => state === 'full') ? used : undefined;
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

export const receiptPart = part({
  calculation: receipt,
  asked: {
    home: 'name',
    installer: 'receipt.installer',
    date: 'receipt.date',
    fact_sheet: 'receipt.fact_sheet',
    parts: 'receipt.other_parts',
  },
  // The first part is the roof cavity, whose entries are the job's own.
  askedIn: (field) => {
    const [, place, name] = /^parts\.(\d+)\.(\w+)$/.exec(field) ?? [];
    if (place === undefined) return undefined;
    return place === '0' ? `receipt.${name}` : `receipt.other_parts.${Number(place) - 1}.${name}`;
  },
  runs: (plan, rules) => [{ values: receiptValues(plan, rules) }],
});
