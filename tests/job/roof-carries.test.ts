import { expect, test } from 'vitest';
import { workParts } from '../../src/job/parts/parts.ts';
import { exampleWith, planOf, rules } from './entries.ts';

/** The row of a way in, as the comparison of the job's ways tells it. */
function wayIn(carries: string | undefined, way: string): Readonly<Record<string, unknown>> {
  const plan = planOf(exampleWith({ 'survey.roof_carries': carries }));
  const outcome = workParts(plan, rules, true).find(({ name }) => name === 'ways-in');
  const rows = outcome?.state === 'answered' ? (outcome.answer.tables?.ways?.rows ?? []) : [];
  const row = rows.find((each) => each.way === way);
  if (!row) throw new Error(`found no row for ${way}`);
  return row;
}

const NOTHING_RULED_OUT = 'nothing that was entered';
const NOTHING_UNKNOWN = 'nothing that is asked here';

/** Roof holes ask that somebody stands on the roof; a roof in doubt carries nobody yet, and is not ruled out either. */
test.each<[carries: string | undefined, ruledOut: boolean, unknown: boolean]>([
  ['carries the crew', false, false],
  ['nobody goes on it', true, false],
  ['in doubt', false, true],
  ['not looked at', false, true],
  [undefined, false, true],
])(
  'a roof of which was found "%s": are roof holes ruled out, %s; is it not known, %s',
  (carries, ruledOut, unknown) => {
    const row = wayIn(carries, 'roof holes');
    expect([row.ruled_out !== NOTHING_RULED_OUT, row.unknown !== NOTHING_UNKNOWN]).toEqual([
      ruledOut,
      unknown,
    ]);
  },
);

test.each(['gable end', 'lifted roof edge'])(
  'whether the roof carries the crew is nothing to the %s',
  (way) => {
    const [carried, shunned] = [wayIn('carries the crew', way), wayIn('nobody goes on it', way)];
    expect(shunned).toEqual(carried);
  },
);
