import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Was every text read today or before? */
export const dateInFuture: Lint = {
  name: 'date-in-future',
  look: ({ rules, cautions }, { today }) =>
    [...rules, ...cautions].flatMap((entry) => {
      const { source } = entry.entry;
      return source.kind === 'document' && source.on !== undefined && source.on > today
        ? [problemAt(entry, ['source', 'on'], source.on, `a day not after today, ${today}`, 'date-in-future')]
        : [];
    }),
};
