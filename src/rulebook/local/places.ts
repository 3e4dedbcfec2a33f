import { nearest } from '../nearest.ts';
import type { Problem } from '../problem.ts';
import { problemAt } from '../rule-files.ts';
import type { RulebookData } from '../rulebook.ts';
import type { WithAgency } from './read.ts';

/** Is every place that a note names a rule or a page, and every place that a caution names one of these or another caution? */
export function placeProblems(
  base: RulebookData,
  { notes, cautions, pages, agency }: WithAgency,
  paths: readonly string[],
): Problem[] {
  const own = pages.map(({ slug }) => `local/${agency.id}/${slug}`);
  const places = [...Object.keys(base.rules), ...paths, ...own];
  const besides = Object.keys(base.cautions);
  return [...notes, ...cautions].flatMap((entry) =>
    entry.entry.on.flatMap((place, at): Problem[] => {
      const known = 'level' in entry.entry ? [...places, ...besides] : places;
      if (known.includes(place)) return [];
      const guess = nearest(place.slice(0, 100), known);
      return [
        problemAt(
          entry,
          ['on', at],
          `"${place.slice(0, 100)}"`,
          `the id of a rule${'level' in entry.entry ? ', of a caution' : ''} or the path of a page${guess ? `; did you mean "${guess}"?` : ', such as do/patching'}`,
          'unknown-place',
        ),
      ];
    }),
  );
}
