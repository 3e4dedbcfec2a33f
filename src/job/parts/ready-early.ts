import { readinessCheck } from '../../calc/before/readiness-declaration.ts';
import { groupField, optional } from '../../calc/declare/field.ts';
import { readFields } from '../../calc/declare/read-fields.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { without } from '../aside.ts';
import { jobFields } from '../job-fields.ts';
import type { JobEntries } from '../job-file.ts';
import { surveyOf } from '../survey-agrees.ts';
import type { PartOutcome } from './part.ts';

const { survey, home, roof, fill, ways } = jobFields;

/** All that readiness rests on. */
const fields = {
  survey,
  ways,
  home: groupField(home.label, home.hint, { built: optional(home.of.built) }),
  roof: groupField(roof.label, roof.hint, { obstacles: roof.of.obstacles }),
  fill: groupField(fill.label, fill.hint, { material: optional(fill.of.material) }),
};

/** The entries of those fields alone. */
const ofThose = (entries: JobEntries): JobEntries =>
  Object.fromEntries(
    Object.entries(fields).map(([group, { of }]) => {
      const all = (entries[group] ?? {}) as JobEntries;
      return [group, Object.fromEntries(Object.keys(of).map((name) => [name, all[name]]))];
    }),
  );

/**
 * Is the home ready, by what is entered so far? That rests on the survey, the year and the material, so a stop is told before anything is measured. What
 * can't be read counts as not entered.
 * @example readyEarly({ survey: { leaks: 'leaks found' } }, rules)?.state // => 'answered'
 */
export function readyEarly(entries: JobEntries, rules: Rulebook): PartOutcome | undefined {
  const typed = ofThose(entries);
  const first = readFields(fields, typed);
  const read = first.ok
    ? first
    : readFields(
        fields,
        first.problems.reduce((all, { field }) => without(all, field), typed),
      );
  if (!read.ok) return undefined;
  const { name, title, work } = readinessCheck;
  const values = { ...surveyOf(read.value), built: read.value.home.built, under_fill: undefined };
  return { name, title, state: 'answered', answer: work(values, rules), values };
}
