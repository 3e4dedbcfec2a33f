import { calculationNamed } from '../calc/calculations.ts';
import { readFields } from '../calc/declare/read-fields.ts';
import { format } from '../quantity/format.ts';
import type { Quantity } from '../quantity/quantity.ts';
import type { RawAnswer } from './schema.ts';

/** What is given in a question, by its way: `depth`, or `fills.0.gross` in a list. */
export interface GivenEntries {
  /** The names at the top, to say which one may have been meant. */
  readonly names: readonly string[];
  /** An entry as it stands in a sentence; undefined where the way leads to no single value. */
  readonly text: (way: string) => string | undefined;
}

const at = (entries: unknown, way: string): unknown =>
  way
    .split('.')
    .reduce<unknown>(
      (each, key) =>
        typeof each === 'object' && each !== null && Object.hasOwn(each, key)
          ? (each as Record<string, unknown>)[key]
          : undefined,
      entries,
    );

const isQuantity = (value: unknown): value is Quantity =>
  typeof value === 'object' && value !== null && 'dimension' in value && 'amount' in value;

/** Entries are printed as everywhere on the site; a length stands as it is typed, since people read it off a tape. */
export function givenEntries(answer: RawAnswer): GivenEntries {
  if (!('calculation' in answer)) return { names: [], text: () => undefined };
  const declared = calculationNamed(answer.calculation);
  const read = declared && readFields(declared.fields, answer.given);
  const values: unknown = read?.ok ? read.value : {};
  return {
    names: Object.keys(answer.given),
    text: (way) => {
      const [value, typed] = [at(values, way), at(answer.given, way)];
      if (isQuantity(value) && value.dimension !== 'length') return format(value);
      return typeof typed === 'string' || typeof typed === 'number' ? String(typed) : undefined;
    },
  };
}
