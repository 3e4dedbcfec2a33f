import { EntriesClash } from '../calc/declare/calculation.ts';
import { inQuarters } from '../calc/log/opening.ts';
import type { Way } from '../calc/ways/compare.ts';
import type { JobValues } from './job-fields.ts';
import { USUAL_WAY } from './way-taken.ts';

/** What was counted at one opening. */
export type LogEntry = NonNullable<JobValues['log']['openings']>[number];

/** The way that was taken when an entry was made. */
export const wayOf = ({ way = USUAL_WAY }: LogEntry): Way => way;

/** What an entry is called whose opening is no longer in the plan: by its way, since the plan may go by another. */
export const strayName = (entry: LogEntry): string =>
  `${openingNames[wayOf(entry)]} ${entry.opening} of the ${wayOf(entry)}, ${entry.side} side`;

/** What an opening of each way in is called. */
export const openingNames = {
  'roof holes': 'Hole',
  'gable end': 'Lane',
  'lifted roof edge': 'Bay',
} as const satisfies Readonly<Record<Way, string>>;

/** Can the entries of a log be true? @throws EntriesClash for bags not in quarters, and for an opening entered twice. */
export function checkLog({ openings = [] }: JobValues['log']): void {
  for (const [place, entry] of openings.entries()) checkEntry(entry, place, openings);
}

function checkEntry(entry: LogEntry, place: number, all: readonly LogEntry[]): void {
  const { side, opening, bags } = entry;
  const field = `log.openings.${place}`;
  if (!inQuarters(bags)) {
    throw new EntriesClash({
      field: `${field}.bags`,
      label: 'Bags blown so far',
      found: `${bags.amount} bags`,
      expected: 'whole quarters of a bag, such as 2.25 bags or 2 1/2 bags',
    });
  }
  if (
    all.findIndex((each) => wayOf(each) === wayOf(entry) && each.side === side && each.opening === opening) <
    place
  ) {
    throw new EntriesClash({
      field: `${field}.opening`,
      label: 'Opening',
      found: `opening ${opening} on the ${side} side a second time`,
      expected: 'one entry for each opening',
    });
  }
}
