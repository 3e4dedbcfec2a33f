import type { Fields, QuantityField } from '../../../src/calc/declare/field.ts';
import { parseQuantity } from '../../../src/quantity/parse.ts';
import { amountIn, type Quantity } from '../../../src/quantity/quantity.ts';
import { type UnitName, units } from '../../../src/quantity/units.ts';

/** Entries as a form or a file gives them. */
export type Entries = Readonly<Record<string, unknown>>;

/** A field that holds one value, and the way to it through groups and lists. */
export interface Leaf {
  readonly way: readonly string[];
  readonly field: Fields[string];
  readonly given: unknown;
}

/** Every field that the entries give a value to. */
export const leavesIn = (fields: Fields, entries: Entries, way: readonly string[] = []): Leaf[] =>
  Object.entries(fields).flatMap(([name, field]): Leaf[] => {
    const given = entries[name];
    const here = [...way, name];
    if (given === undefined || given === null || given === '') return [];
    if (field.kind === 'group') return leavesIn(field.of, given as Entries, here);
    if (field.kind === 'list')
      return (given as readonly Entries[]).flatMap((one, place) =>
        leavesIn(field.of, one, [...here, String(place)]),
      );
    return [{ way: here, field, given }];
  });

/** Every field that could be given a value beside those entries: those left out too, in each group and each entry of a list. */
export const fieldsFrom = (fields: Fields, entries: Entries, way: readonly string[] = []): Leaf[] =>
  Object.entries(fields).flatMap(([name, field]): Leaf[] => {
    const given = entries[name];
    const here = [...way, name];
    if (field.kind === 'group') return fieldsFrom(field.of, (given ?? {}) as Entries, here);
    if (field.kind === 'list')
      return ((given ?? []) as readonly Entries[]).flatMap((one, place) =>
        fieldsFrom(field.of, one, [...here, String(place)]),
      );
    return [{ way: here, field, given }];
  });

/** The same entries with another value at the end of a way; `undefined` leaves it out. */
export function withAt(entries: unknown, way: readonly string[], value: unknown): Entries {
  const [name, ...rest] = way;
  if (name === undefined) return value as Entries;
  if (Array.isArray(entries))
    return entries.map((one, place) =>
      String(place) === name ? withAt(one, rest, value) : one,
    ) as unknown as Entries;
  const old = (entries ?? {}) as Entries;
  return { ...old, [name]: withAt(old[name], rest, value) };
}

/** Does a way through the fields lead to something, a whole list or group included? */
export function leadsSomewhere(fields: Fields, way: readonly string[]): boolean {
  const [name = '', ...rest] = way;
  const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
  if (!field) return false;
  if (rest.length === 0) return true;
  if (field.kind === 'group') return leadsSomewhere(field.of, rest);
  if (field.kind !== 'list') return false;
  const [place = '', ...inside] = rest;
  return /^\d+$/.test(place) && (inside.length === 0 || leadsSomewhere(field.of, inside));
}

/** Is a fuel sold, or its heat told, by the gallon? What is sold as a liquid is not sold by the cubic foot of gas. */
const byGallon = (written: string): boolean => /gal$/.test(written);

/**
 * The units that a field may be told in: what is counted is counted in pieces of one kind, a share beside a percent sign is never a bare number,
 * and a fuel that was told by the gallon stays so.
 */
export const unitsOf = ({ dimension, beside }: QuantityField, given?: unknown): UnitName[] =>
  (Object.keys(units) as UnitName[]).filter(
    (unit) =>
      units[unit].dimension === dimension &&
      (dimension !== 'pieces' || unit === beside) &&
      (unit !== '1' || beside === undefined) &&
      (given === undefined || !/per volume$/.test(dimension) || byGallon(unit) === byGallon(String(given))),
  );

/** A number in all its digits, with no power of ten: so that it is read back as the same number, or nearly. */
export function digits(amount: number): string {
  if (amount < 0) return `-${digits(-amount)}`;
  const plain = String(amount);
  if (!plain.includes('e')) return plain;
  if (amount >= 1) return BigInt(amount).toString();
  const places = 17 - Math.floor(Math.log10(amount));
  return amount.toFixed(Math.min(50, places)).replace(/0+$/, '');
}

/** How a field's value reads in another unit. */
export function rewritten(field: QuantityField, given: unknown, unit: UnitName): string {
  const read = parseQuantity(String(given), { dimension: field.dimension }) as Quantity;
  return `${digits(amountIn(read, unit as never))} ${unit}`;
}

/** So many times what a field was given; nothing times anything is nothing, so there one unit stands in. */
export function movedBy(field: QuantityField, given: unknown, share: number): string {
  const { amount, unit } = parseQuantity(String(given), { dimension: field.dimension });
  return `${digits(amount === 0 ? share : amount * share)} ${unit}`;
}
