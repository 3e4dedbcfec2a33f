import { citedByCheck } from '../cited-by-check.ts';
import { nearest } from '../nearest.ts';
import { isUnread, problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Does every document that is cited stand in sources.yaml? */
export const unknownSource: Lint = {
  name: 'unknown-source',
  look: ({ rules, cautions, checks, documents, unread }) => {
    const known = documents.map(({ id }) => id);
    const cited = [
      ...[...rules, ...cautions].map((entry) => {
        const { source } = entry.entry;
        return {
          entry,
          way: ['source'],
          document: source.kind === 'document' ? source.document : undefined,
        };
      }),
      ...checks.map((entry) => {
        const { from } = entry.entry;
        return {
          entry,
          way: from.kind === 'document' ? ['from'] : ['from', 'rests_on'],
          document: citedByCheck(from)?.document,
        };
      }),
    ];
    return cited.flatMap(({ entry, way, document }) => {
      if (document === undefined || known.includes(document) || isUnread(unread, document)) return [];
      const guess = nearest(document, known);
      return [
        problemAt(
          entry,
          [...way, 'document'],
          `the document "${document}"`,
          guess ? `an id of sources.yaml; did you mean "${guess}"?` : 'an id of sources.yaml',
          'unknown-source',
        ),
      ];
    });
  },
};
