import { format } from '../../quantity/format.ts';
import { type Quantity, quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type AnyCalculation, answer, type Figure } from './calculation.ts';
import { type Entries, entryAt, withEntry } from './entries.ts';
import type { Field, Fields } from './field.ts';
import { readFields, sentence } from './read-fields.ts';

/** One case: the value that was changed, and what then comes out. */
export interface CommonCase {
  readonly value: string;
  readonly figures: readonly Figure[];
  /** Why nothing comes out, where entries clash. */
  readonly refused?: string;
}

/** Cases that differ from the example in one entry. */
export interface CommonCases {
  /** The entry that is changed. */
  readonly label: string;
  /** What comes out, by its name; the columns of the table. */
  readonly columns: readonly string[];
  readonly cases: readonly CommonCase[];
}

/** Half of the example's amount, to half as much again: what a home is likely to be off by. */
const SHARES = [0.5, 0.75, 1, 1.25, 1.5] as const;
/** More columns than these run into each other on paper. */
const MOST_COLUMNS = 3;
const MOST_CHOICES = 8;

interface Place {
  readonly way: readonly string[];
  readonly field: Field;
  /** What the calculation itself says is usual. */
  readonly usual?: readonly string[];
}

/** Every entry of the example with its field; of a list the first row. */
function places(fields: Fields, given: unknown, way: readonly string[] = []): Place[] {
  return Object.entries(fields).flatMap(([name, field]): Place[] => {
    const value = (given as Record<string, unknown> | undefined)?.[name];
    if (value === undefined) return [];
    const here = [...way, name];
    if (field.kind === 'group') return places(field.of, value, here);
    if (field.kind === 'list') return places(field.of, (value as unknown[])[0], [...here, '0']);
    return [{ way: here, field }];
  });
}

/** A value as it is typed, and as it is shown. */
interface Typed {
  readonly typed: string;
  readonly shown: string;
}

/** The values that an entry takes in turn: each choice, or shares of the example's amount, to three figures. */
function valuesOf({ way, field, usual }: Place, read: Entries): Typed[] {
  if (usual) return usual.map((each) => ({ typed: each, shown: each }));
  if (field.kind === 'choice')
    return field.choices.slice(0, MOST_CHOICES).map((each) => ({ typed: each, shown: each }));
  const known = entryAt(read, way) as Quantity;
  const negative = field.kind === 'quantity' && field.negative;
  if (known.amount <= 0 || negative) return [];
  return SHARES.map((share) => {
    const amount = Number((known.amount * share).toPrecision(3));
    return { typed: `${amount} ${known.unit}`, shown: format(quantity(amount, known.unit), { figures: 3 }) };
  });
}

/** The first choice of the example, and its first amount above nought. */
function chosen(declared: AnyCalculation, read: Entries): Place[] {
  const known = places(declared.fields, declared.example);
  if (declared.common)
    return Object.entries(declared.common).map(([way, usual]) => {
      const place = known.find((each) => each.way.join('.') === way);
      if (!place) throw new Error(`found no entry "${way}" in the example of ${declared.name}`);
      return { ...place, usual };
    });
  const all = known.filter(
    (each) =>
      (each.field.kind === 'choice' || each.field.kind === 'quantity') && valuesOf(each, read).length > 1,
  );
  return (['choice', 'quantity'] as const).flatMap((kind) =>
    all.filter(({ field }) => field.kind === kind).slice(0, 1),
  );
}

/**
 * What does a calculation answer in common cases? Its example, with its first choice and its first amount changed in turn; worked out by
 * the calculation itself, for those who read its page without script or on paper.
 * @throws Error for an example that can't be read, and for an entry that it does not have.
 * @example commonCases(calculationNamed('ceiling-load'), rules)[0].label // => 'Ceiling board'
 */
export function commonCases(declared: AnyCalculation, rules: Rulebook): CommonCases[] {
  const read = readFields(declared.fields, declared.example);
  if (!read.ok) throw new Error(`the example of ${declared.name} can't be read`);
  return chosen(declared, read.value).map((place): CommonCases => {
    const found = valuesOf(place, read.value).map(({ typed, shown }) => ({
      value: shown,
      answered: answer(declared, withEntry(declared.example, place.way, typed), rules),
    }));
    const names = new Map<string, string>();
    for (const { answered } of found)
      if (answered.ok)
        for (const [name, { label }] of Object.entries(answered.value.figures))
          if (!names.has(name)) names.set(name, label);
    const columns = [...names].slice(0, MOST_COLUMNS);
    return {
      label: place.field.label,
      columns: columns.map(([, label]) => label),
      cases: found.map(({ value, answered }) =>
        answered.ok
          ? {
              value,
              figures: columns.map(
                ([name, label]) => answered.value.figures[name] ?? { label, value: 'none' },
              ),
            }
          : { value, figures: [], refused: answered.problems.map(sentence).join(' ') },
      ),
    };
  });
}
