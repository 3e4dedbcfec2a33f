import { bareQuantitiesIn } from '../bare-quantity.ts';
import { problemAt } from '../rule-files.ts';
import type { Lint } from './lint.ts';

/** Do cautions leave every number with a unit to a rule? */
export const bareQuantity: Lint = {
  name: 'bare-quantity',
  look: ({ cautions }) =>
    cautions.flatMap((caution) =>
      (['says', 'do'] as const).flatMap((key) =>
        bareQuantitiesIn(caution.entry[key]).map(({ text }) =>
          problemAt(
            caution,
            [key],
            `"${text}"`,
            'a rule in braces, such as {safety.roof.fall-height}',
            'bare-quantity',
          ),
        ),
      ),
    ),
};
