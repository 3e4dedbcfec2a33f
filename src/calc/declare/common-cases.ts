import type { CautionId } from '../../generated/rule-types.ts';
import { format } from '../../quantity/format.ts';
import { parseQuantity } from '../../quantity/parse.ts';
import { type Quantity, quantity } from '../../quantity/quantity.ts';
import type { Rulebook } from '../../rulebook/rulebook.ts';
import { type AnyCalculation, answer, type Figure } from './calculation.ts';
import { type Entries, entryAt, withEntry } from './entries.ts';
import type { Field, Fields } from './field.ts';
import { readFields, sentence } from './read-fields.ts';
import { usualCases } from './usual-cases.ts';

/** One case: the value that was changed, and what then comes out. */
export interface CommonCase {
  readonly value: string;
  readonly figures: readonly Figure[];
  readonly cautions: readonly CautionId[];
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

/** Half of the example's amount, to half as much again, in round figures: of what nobody knows what is usual. */
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

/** A usual value as it is shown: its unit by its sign; a length as it is read off a tape, which is how it is typed. */
const shownUsual = (typed: string, field: Field): string =>
  field.kind === 'quantity' && field.dimension !== 'length'
    ? format(parseQuantity(typed, { dimension: field.dimension }))
    : typed;

/** The values that an entry takes in turn: the usual ones, each choice, or shares of the example's amount, to two figures. */
function valuesOf({ way, field, usual = usualCases[field.label] }: Place, read: Entries): Typed[] {
  if (usual) return usual.map((typed) => ({ typed, shown: shownUsual(typed, field) }));
  if (field.kind === 'choice')
    return field.choices.slice(0, MOST_CHOICES).map((each) => ({ typed: each, shown: each }));
  const known = entryAt(read, way) as Quantity;
  const negative = field.kind === 'quantity' && field.negative;
  if (known.amount <= 0 || negative) return [];
  return SHARES.map((share) => {
    const amount = share === 1 ? known.amount : Number((known.amount * share).toPrecision(2));
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
 * the calculation itself, for those who read without script or on paper.
 * @throws Error for an example that can't be read, and for an entry that it does not have.
 * @example commonCases(calculationNamed('ceiling-load'), rules)[0].label // => 'Ceiling board'
 */
export function commonCases(declared: AnyCalculation, rules: Rulebook): CommonCases[] {
  const read = readFields(declared.fields, declared.example);
  if (!read.ok) throw new Error(`the example of ${declared.name} can't be read`);
  const tables = chosen(declared, read.value).map((place): CommonCases => {
    const found = valuesOf(place, read.value)
      .map(({ typed, shown }) => ({
        value: shown,
        answered: answer(declared, withEntry(declared.example, place.way, typed), rules),
      }))
      // What is refused for another entry says nothing of this one.
      .filter(
        ({ answered }) => answered.ok || answered.problems.some(({ field }) => field === place.way.join('.')),
      );
    const labels = found.flatMap(({ answered }) =>
      answered.ok ? Object.values(answered.value.figures).map(({ label }) => label) : [],
    );
    // What is changed stands at the head of each row already.
    const columns = [...new Set(labels)]
      .filter((label) => label !== place.field.label)
      .slice(0, MOST_COLUMNS);
    return {
      label: place.field.label,
      columns,
      cases: found.map(({ value, answered }) =>
        answered.ok
          ? {
              value,
              figures: columns.map(
                (label) =>
                  Object.values(answered.value.figures).find((figure) => figure.label === label) ?? {
                    label,
                    value: 'none',
                  },
              ),
              cautions: answered.value.cautions,
            }
          : { value, figures: [], cautions: [], refused: answered.problems.map(sentence).join(' ') },
      ),
    };
  });
  return tables.filter(({ cases }) => cases.length > 1);
}
