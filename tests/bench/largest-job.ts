import { readFileSync } from 'node:fs';
import { withEntry } from '../../src/calc/declare/entries.ts';
import type { JobEntries } from '../../src/job/job-file.ts';

/** Feet along the roof at which something stands, on each side. */
const AT = [9, 20, 33, 46, 58, 71];

/** What stands there, by turns; a flue with its kind, or the plan would be held until somebody has read it. */
const things = [
  { what: 'plumbing vent' },
  { what: 'furnace flue', kind: 'listed double-wall vent or chimney' },
] as const;

/** Each way to an entry with what it is to be. */
const changed = (
  entries: JobEntries,
  changes: readonly (readonly [way: string, value: unknown])[],
): JobEntries =>
  changes.reduce<JobEntries>((all, [way, value]) => withEntry(all, way.split('.'), value), entries);

/**
 * The largest job that a crew meets, out of the example's entries: a double-section home with a roof so many feet long, 80 unless told, six
 * things on either side, and a truss every 24 in.
 */
export function largestJob(feet = 80): JobEntries {
  const {
    format: _format,
    version: _version,
    ...example
  } = JSON.parse(readFileSync('public/example-job.json', 'utf8')) as Record<string, unknown>;
  const obstacles = (['back', 'front'] as const).flatMap((side, place) =>
    AT.map((along, count) => ({
      ...things[count % things.length],
      // As far along as they would be on 80 ft, and not at the same places on both sides.
      along: `${Math.round((along + 2 * place) * 12 * (feet / 80))} in`,
      side,
      from_peak: '2 ft',
      across: '8 in',
    })),
  );
  return changed(example, [
    ['home.sections', 'double'],
    ['home.length', `${feet} ft`],
    // A double-section home is told by one half of it, from eave to marriage line.
    ['cavity.shape', 'one-slope'],
    ['roof.obstacles', obstacles],
  ]);
}
