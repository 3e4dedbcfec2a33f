import type { Dimension } from '../../quantity/dimension.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import type { UnitOf } from '../../quantity/units.ts';

/**
 * Inputs are declared once. The form, the command line, the checks, the job file, its JSON Schema and the pages that
 * describe them are all made from the declaration.
 */
interface Described {
  /** The field's name on the form. */
  readonly label: string;
  /** What to measure or choose, one sentence. */
  readonly hint: string;
}

type Zero = 'allowed' | 'or none' | 'refused';

export interface QuantityField<D extends Dimension = Dimension> extends Described {
  readonly kind: 'quantity';
  readonly dimension: D;
  /** The letter that stands for it in a working. */
  readonly symbol: string;
  /** As a person would write it. */
  readonly example: string;
  /** The unit that the form states beside the box: a bare number typed there is given it. Files always write the unit. */
  readonly beside?: UnitOf<D>;
  /**
   * Is nought allowed? A negative amount never is. `or none`: it may be written as "none" too. Of a place or a clearance it may not, where
   * "none" would mean that nobody knows it.
   */
  readonly zero: Zero;
  /** Is an amount below nought allowed? Only for a thermometer's reading, or a rate that may fall. */
  readonly negative?: 'allowed';
  /** More than this is taken for a slip; with its unit, as written. */
  readonly most?: string;
  /** Makes one amount of what people write in another way, before it is read. @throws ParseError for what could be meant two ways */
  readonly plainly?: (written: string) => string;
}

export interface ChoiceField<C extends string = string> extends Described {
  readonly kind: 'choice';
  readonly choices: readonly C[];
}

export interface WordsField extends Described {
  readonly kind: 'words';
  readonly example: string;
}

export interface YearField extends Described {
  readonly kind: 'year';
  readonly example: string;
}

/** A whole number of things: people, rooms, layers. */
export interface CountField extends Described {
  readonly kind: 'count';
  readonly example: string;
  readonly least: number;
  readonly most: number;
}

/** A day of the calendar, as 2026-11-25. */
export interface DateField extends Described {
  readonly kind: 'date';
  readonly example: string;
}

export interface ListField<F extends Fields = Fields> extends Described {
  readonly kind: 'list';
  /** What one of them is called: "a vent or flue". */
  readonly one: string;
  readonly of: F;
  readonly most: number;
}

export interface GroupField<F extends Fields = Fields> extends Described {
  readonly kind: 'group';
  readonly of: F;
}

export type Field =
  | QuantityField
  | ChoiceField
  | WordsField
  | YearField
  | CountField
  | DateField
  | ListField
  | GroupField;

/** May a field be left empty? `if any`: the form says so beside its label, since neither hint nor answer would. */
type Empty = true | 'if any';

/** A field that may be left empty. */
export type Optional<F extends Field> = F & { readonly optional: Empty };

export type Fields = { readonly [name: string]: Field & { readonly optional?: Empty } };

type ValueOf<F> =
  F extends QuantityField<infer D>
    ? Quantity<D>
    : F extends ChoiceField<infer C>
      ? C
      : F extends WordsField
        ? string
        : F extends YearField | CountField
          ? number
          : F extends DateField
            ? string
            : F extends ListField<infer G>
              ? readonly Values<G>[]
              : F extends GroupField<infer G>
                ? Values<G>
                : never;

/** What comes out of a set of fields once it is read: each field's value, an optional one perhaps undefined. */
export type Values<F extends Fields> = {
  readonly [N in keyof F]: F[N] extends { readonly optional: Empty }
    ? ValueOf<F[N]> | undefined
    : ValueOf<F[N]>;
};

/** A field that is left empty where its hint says so, or as long as nothing that needs it is asked for. */
export const optional = <F extends Field>(field: F): Optional<F> => ({ ...field, optional: true });

/** A field of which there may be none. */
export const ifAny = <F extends Field>(field: F): Optional<F> => ({ ...field, optional: 'if any' });

/** A set of fields, each of which may be left empty. */
export const allOptional = <F extends Fields>(fields: F): { readonly [N in keyof F]: Optional<F[N]> } =>
  Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [name, field.optional ? field : optional(field)]),
  ) as { readonly [N in keyof F]: Optional<F[N]> };

export const quantityField = <D extends Dimension>(
  field: Omit<QuantityField<D>, 'kind'>,
): QuantityField<D> => ({
  kind: 'quantity',
  ...field,
});

export const lengthField = (
  symbol: string,
  label: string,
  hint: string,
  example: string,
  more: { readonly zero?: Zero; readonly most?: string } = {},
): QuantityField<'length'> => ({
  kind: 'quantity',
  dimension: 'length',
  symbol,
  label,
  hint,
  example,
  zero: more.zero ?? 'refused',
  most: more.most ?? '200 ft',
});

export const choiceField = <const C extends string>(
  label: string,
  hint: string,
  choices: readonly C[],
): ChoiceField<C> => ({ kind: 'choice', label, hint, choices });

export const wordsField = (label: string, hint: string, example: string): WordsField => ({
  kind: 'words',
  label,
  hint,
  example,
});

export const yearField = (label: string, hint: string, example: string): YearField => ({
  kind: 'year',
  label,
  hint,
  example,
});

export const countField = (
  label: string,
  hint: string,
  example: string,
  more: { readonly least?: number; readonly most?: number } = {},
): CountField => ({ kind: 'count', label, hint, example, least: more.least ?? 0, most: more.most ?? 1000 });

export const dateField = (label: string, hint: string, example: string): DateField => ({
  kind: 'date',
  label,
  hint,
  example,
});

export const listField = <const F extends Fields>(
  label: string,
  hint: string,
  one: string,
  of: F,
  most = 40,
): ListField<F> => ({ kind: 'list', label, hint, one, of, most });

export const groupField = <const F extends Fields>(label: string, hint: string, of: F): GroupField<F> => ({
  kind: 'group',
  label,
  hint,
  of,
});
