import type { Fields, Values } from './field.ts';
import { type Read, type ReadGroup, readBy, readGroup } from './read-fields.ts';

/**
 * Reads as readFields does, again and again: a group that is the very object it was is not read anew. For entries that are never changed
 * in place, of which one changes at each key.
 * @example fieldsReader({})({ widht: '13 ft' }).ok // => false
 */
export function fieldsReader<F extends Fields>(fields: F): (given: unknown) => Read<Values<F>> {
  const known = new WeakMap<object, { readonly at: string; readonly value: Record<string, unknown> }>();
  const readOnce: ReadGroup = (of, given, path, label, problems) => {
    if (given === null || typeof given !== 'object') return readGroup(of, given, path, label, problems);
    // Each figure tells which entry it comes from: a row that moved up is read anew.
    const at = path.join('.');
    const before = known.get(given);
    if (before?.at === at) return before.value;
    const wrong = problems.length;
    const value = readGroup(of, given, path, label, problems, readOnce);
    if (problems.length === wrong) known.set(given, { at, value });
    return value;
  };
  return (given) => readBy(readOnce, fields, given);
}
