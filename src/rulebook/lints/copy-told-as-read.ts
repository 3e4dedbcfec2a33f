import { citedByCheck } from '../cited-by-check.ts';
import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Words by which a remark owns that somebody else's copy was read, and not the publisher's own text. */
const OF_A_COPY = /republish|law library|as others (quote|cite|tell)|stored copy|archive|extract/i;

/**
 * Is a text that was read in a copy told as a reprint? Where only a part was, the weaker word stands for all of it. That it was a copy is told by the remark, or
 * by the document's own `read_in`.
 */
export const copyToldAsRead: Lint = {
  name: 'copy-told-as-read',
  look: ({ rules, cautions, checks, documents }) => {
    const inCopies = new Set(documents.filter(({ entry }) => entry.read_in).map(({ id }) => id));
    const cited = [
      ...[...rules, ...cautions].map((entry) => {
        const { source } = entry.entry;
        return { entry, way: ['source'], from: source.kind === 'document' ? source : undefined };
      }),
      ...checks.map((entry) => {
        const { from } = entry.entry;
        return {
          entry,
          way: from.kind === 'document' ? ['from'] : ['from', 'rests_on'],
          from: citedByCheck(from),
        };
      }),
    ];
    return cited.flatMap(({ entry, way, from }) => {
      if (from?.read !== 'read') return [];
      const told = (found: string, expected: string) => [
        problemAt(entry, [...way, 'read'], found, expected, 'copy-told-as-read'),
      ];
      const copy = OF_A_COPY.exec(from.remark ?? '')?.[0];
      if (copy !== undefined)
        return told(
          `"read", with "${copy}" in its remark`,
          '"reprint" for what was read in a copy, with the copy named in the remark',
        );
      return inCopies.has(from.document)
        ? told(
            `"read" of "${from.document}", which sources.yaml says was read in a copy`,
            '"reprint", or a document of its own in sources.yaml for what was read in the publisher’s own text',
          )
        : [];
    });
  },
};
