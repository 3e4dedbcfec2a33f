import { nearest } from '../nearest.ts';
import type { Problem } from '../problem.ts';
import { isUnread, problemAt, problemAtKey } from '../rule-files.ts';
import type { RulebookData } from '../rulebook.ts';
import type { Layer } from './read.ts';

/** Is every document of a folder called otherwise than those of the rulebook? */
export function documentProblems(base: RulebookData, { documents }: Layer): Problem[] {
  return documents
    .filter(({ id }) => Object.hasOwn(base.documents, id))
    .map((entry) =>
      problemAtKey(entry, `"${entry.id}", a document of the rulebook`, 'an id of its own', 'local-source'),
    );
}

/** Does every document that is cited exist, and was none read tomorrow? */
export function sourceProblems(
  base: RulebookData,
  { values, notes, cautions, documents, unreadDocuments }: Layer,
  today: string,
): Problem[] {
  const known = [...documents.map(({ id }) => id), ...Object.keys(base.documents)];
  return [...values, ...notes, ...cautions].flatMap((entry): Problem[] => {
    const { source } = entry.entry;
    if (source?.kind === 'derived')
      return [
        problemAt(
          entry,
          ['source', 'kind'],
          'derived',
          'document, practice or memory: local values are set, not worked out',
          'local-source',
        ),
      ];
    if (source?.kind !== 'document') return [];
    const guess = nearest(source.document.slice(0, 100), known);
    return [
      ...(known.includes(source.document) || isUnread(unreadDocuments, source.document)
        ? []
        : [
            problemAt(
              entry,
              ['source', 'document'],
              `the document "${source.document.slice(0, 100)}"`,
              `an id of your sources.yaml or of the rulebook${guess ? `; did you mean "${guess}"?` : ''}`,
              'unknown-source',
            ),
          ]),
      ...(source.on !== undefined && source.on > today
        ? [problemAt(entry, ['source', 'on'], source.on, `a day not after today, ${today}`, 'date-in-future')]
        : []),
    ];
  });
}
