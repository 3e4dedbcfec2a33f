import type { Dimension } from '../../quantity/dimension.ts';
import { isUnitName, units } from '../../quantity/units.ts';
import { type BareQuantity, bareQuantitiesIn } from '../bare-quantity.ts';
import { placeholdersIn } from '../placeholders.ts';
import type { Problem } from '../problem.ts';
import { problemAt } from '../rule-files.ts';
import type { Rule, RulebookData } from '../rulebook.ts';
import type { Layer } from './read.ts';

const CHECK = 'bare-quantity';

/**
 * Which numbers with a unit may an agency's notes and cautions not state? Words can't be held against the rulebook as a value can, so a number in them
 * names its document, as the entry's own source; and where the entry stands on a value for safety, a number of that kind is set as a value, or nowhere.
 */
export const bareNumberProblems = (
  base: Pick<RulebookData, 'rules' | 'cautions'>,
  { notes, cautions }: Pick<Layer, 'notes' | 'cautions'>,
): Problem[] =>
  [...notes, ...cautions].flatMap((entry) => {
    const { on, source, ...words } = entry.entry;
    const guarded = on.flatMap((place) => safetyRulesAt(base, place));
    return (['title', 'says', 'do'] as const).flatMap((key) => {
      const text = (words as Readonly<Partial<Record<typeof key, string>>>)[key] ?? '';
      return bareQuantitiesIn(text).flatMap(({ text: number, dimension }): Problem[] => {
        const safety = guarded.find((rule) => isOfItsKind(rule, dimension));
        if (safety)
          return [
            problemAt(
              entry,
              [key],
              `"${number}", where ${safety.id} is a value for safety`,
              'that value set in values.yaml, where it may be stricter; pages then show it',
              CHECK,
            ),
          ];
        if (source?.kind === 'document') return [];
        return [
          problemAt(
            entry,
            [key],
            `"${number}" from no document`,
            'a value set in values.yaml, or the document that says it as the source of this entry',
            CHECK,
          ),
        ];
      });
    });
  });

/** The rules for safety that an entry at a place speaks of: the place itself, or those that a caution rests on. */
function safetyRulesAt({ rules, cautions }: Pick<RulebookData, 'rules' | 'cautions'>, place: string): Rule[] {
  const caution = Object.hasOwn(cautions, place) ? cautions[place] : undefined;
  const ids = caution
    ? [...(caution.rules ?? []), ...placeholdersIn(`${caution.says} ${caution.do}`).map(({ rule }) => rule)]
    : [place];
  return ids.flatMap((id) => {
    const rule = Object.hasOwn(rules, id) ? rules[id] : undefined;
    return rule?.safety === undefined ? [] : [rule];
  });
}

/** "90 degrees" does not say of what. */
const inDegrees: readonly BareQuantity['dimension'][] = ['angle', 'temperature reading', 'temperature'];

/** Is a number a measure of the same kind as a rule's value? */
function isOfItsKind({ value }: Rule, dimension: BareQuantity['dimension']): boolean {
  if (dimension === undefined) return false;
  const own = value.kind === 'one-of' ? [] : value.kind === 'table' ? value.columns : [value];
  const meant = inDegrees.includes(dimension) ? inDegrees : [dimension];
  return own.some((each) => meant.includes(dimensionOf(each.unit)));
}

const dimensionOf = (unit: string | undefined): Dimension | undefined =>
  unit !== undefined && isUnitName(unit) ? units[unit].dimension : undefined;
