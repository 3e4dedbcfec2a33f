import { citedByCheck } from '../cited-by-check.ts';
import { namedUnread, problemAtKey } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Is every document in sources.yaml cited by something? */
export const unusedSource: Lint = {
  name: 'unused-source',
  look: ({ rules, cautions, checks, documents, unread }) => {
    const sources = [...rules, ...cautions].map(({ entry: { source } }) =>
      source.kind === 'document' ? source.document : undefined,
    );
    const cited = new Set([...sources, ...checks.map(({ entry }) => citedByCheck(entry.from)?.document)]);
    return documents
      .filter(({ id }) => !cited.has(id) && !namedUnread(unread, id))
      .map((document) =>
        problemAtKey(
          document,
          `the document "${document.id}", cited by nothing`,
          'a rule, caution or check that cites it',
          'unused-source',
        ),
      );
  },
};
