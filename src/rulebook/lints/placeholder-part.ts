import { placeholdersIn } from '../placeholders.ts';
import { problemAt } from '../rule-files.ts';
import { valueText } from '../value-text.ts';
import type { Lint } from './lint.ts';

/** Does every rule in the sentence of a caution give one value there, as the sentence asks for it? */
export const placeholderPart: Lint = {
  name: 'placeholder-part',
  look: ({ rules, cautions }) => {
    const values = new Map(rules.map(({ id, entry }) => [id, entry.value]));
    return cautions.flatMap((caution) =>
      (['says', 'do'] as const).flatMap((key) =>
        placeholdersIn(caution.entry[key]).flatMap(({ rule, part, written }) => {
          const value = values.get(rule);
          const whole = part === undefined && (value?.kind === 'between' || value?.kind === 'one-of');
          if (!value || (!whole && valueText(value, part) !== undefined)) return [];
          return [
            problemAt(
              caution,
              [key],
              `${written}, of the kind ${value.kind}`,
              value.kind === 'between' ? `an end of it, as {${rule} low}` : 'a rule with one value',
              'placeholder-part',
            ),
          ];
        }),
      ),
    );
  },
};
