import { inUnit } from '../changes/judge.ts';
import type { FiguresFrom } from '../rulebook.ts';
import type { RuleSource, RuleValue } from '../schema.ts';
import { amountText, valueText } from '../value-text.ts';

/** A value for one rule, with whose it is and where from. */
export interface Given {
  readonly by: string;
  readonly value: RuleValue;
  readonly source: RuleSource;
}

/** A number of a value in words, and whether somebody’s value has it too. */
interface Single {
  readonly text: string;
  readonly isOf: (value: RuleValue) => boolean;
}

/**
 * Whose is each figure of a value that no one of them gave whole? The rulebook’s where it is as there, else that of the first who has it. Who has none
 * is left out, and the rulebook stands last.
 * By hand: of 40 to 45 and 39 to 42 the narrowest is 40 to 42.
 * @example mixedFrom({ kind: 'between', low: 40, high: 42, unit: 'in' }, [{ by: 'One', value: { kind: 'between', low: 40, high: 45, unit: 'in' }, source: { kind: 'practice' } }, { by: 'Two', value: { kind: 'between', low: 39, high: 42, unit: 'in' }, source: { kind: 'memory' } }], { by: 'the rulebook', value: { kind: 'between', low: 36, high: 45, unit: 'in' }, source: { kind: 'practice' } }).map(({ by, figures }) => `${by}: ${figures}`) // => ['One: 40 in', 'Two: 42 in']
 */
export function mixedFrom(value: RuleValue, set: readonly Given[], base: Given): readonly FiguresFrom[] {
  const owned = singlesOf(value).map((single) => ({
    single,
    owner: [base, ...set].find((each) => single.isOf(each.value)),
  }));
  return [...set, base].flatMap((each) => {
    const own = owned.filter(({ owner }) => owner === each).map(({ single }) => single);
    if (own.length === 0) return [];
    return [{ figures: own.map(({ text }) => text).join('; '), by: each.by, source: each.source }];
  });
}

function singlesOf(value: RuleValue): readonly Single[] {
  if (value.kind === 'between')
    return (['low', 'high'] as const).map((end) => ({
      text: valueText(value, end) ?? '',
      isOf: (other) => other.kind === 'between' && inUnit(other[end], other.unit, value.unit) === value[end],
    }));
  if (value.kind !== 'table') return [];
  const { columns, rows } = value;
  return rows.flatMap((row, line) => {
    const name = row.filter((_, place) => columns[place]?.key !== undefined).map(String);
    return row.flatMap((cell, place): Single[] => {
      const { key, title = '', unit = '1' } = columns[place] ?? {};
      if (key !== undefined || typeof cell === 'string') return [];
      return [cell].flat().map((amount, end) => ({
        text: `${[...name, title].join(', ')}: ${amountText(amount, unit)}`,
        isOf: (other) => other.kind === 'table' && [other.rows[line]?.[place]].flat()[end] === amount,
      }));
    });
  });
}
