import { nearest } from '../nearest.ts';
import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Does every document that is cited stand in sources.yaml? */
export const unknownSource: Lint = {
  name: 'unknown-source',
  look: ({ rules, cautions, checks, documents }) => {
    const known = documents.map(({ id }) => id);
    const cited = [
      ...[...rules, ...cautions].map((entry) => ({ entry, key: 'source', from: entry.entry.source })),
      ...checks.map((entry) => ({ entry, key: 'from', from: entry.entry.from })),
    ];
    return cited.flatMap(({ entry, key, from }) => {
      if (from.kind !== 'document' || known.includes(from.document)) return [];
      const guess = nearest(from.document, known);
      return [
        problemAt(
          entry,
          [key, 'document'],
          `the document "${from.document}"`,
          guess ? `an id of sources.yaml; did you mean "${guess}"?` : 'an id of sources.yaml',
          'unknown-source',
        ),
      ];
    });
  },
};
