import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Is each check another? One that asks again what another asked proves nothing more, and is counted all the same. */
export const sameCheck: Lint = {
  name: 'same-check',
  look: ({ checks }) => {
    const titles = new Map<string, string>();
    return checks.flatMap((each) => {
      const { title, from: _, tolerance: __, ...asked } = each.entry;
      const key = JSON.stringify(asked);
      const first = titles.get(key);
      if (first === undefined) titles.set(key, title);
      return first === undefined
        ? []
        : [
            problemAt(
              each,
              ['title'],
              `the same entries and expectations as in "${first}"`,
              'a check that asks something else, or none',
              'same-check',
            ),
          ];
    });
  },
};
