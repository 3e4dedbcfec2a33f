import type { Field, Fields } from '../calc/declare/field.ts';
import { guessed } from '../calc/declare/guess.ts';
import {
  type FieldProblem,
  MOST_LETTERS,
  type Read,
  shown,
  unknownKey,
} from '../calc/declare/read-fields.ts';

/** Is this a set of named entries, of whatever kind? @example isSet([]) // => false */
export const isSet = (value: unknown): value is Readonly<Record<string, unknown>> =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/** Beyond these a reader has seen enough, and so has the machine. */
const MOST_PROBLEMS = 20;

/** The entries of a job as they were typed, each in its place; whether they can be worked is not asked. */
export type TypedEntries = Readonly<Record<string, unknown>>;

/**
 * Are these entries of this kind at all? A job that is half typed is one too: it is kept, sent and opened like any other, and its form says
 * what is still wrong. Only what has no place in the form is refused: an unknown key, a list where a text belongs, a text without end.
 * What comes back holds nothing but declared entries; nothing said, and null, are left out.
 * @example readShape({}, { widht: '13 ft' }).ok // => false
 */
export function readShape(fields: Fields, given: unknown): Read<TypedEntries> {
  const problems: FieldProblem[] = [];
  const value = groupIn(fields, given, [], 'The entries', problems);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value };
}

function groupIn(
  fields: Fields,
  given: unknown,
  way: readonly string[],
  label: string,
  problems: FieldProblem[],
): TypedEntries {
  if (!isSet(given)) {
    complain(problems, way, label, shown(given), 'a set of named entries');
    return {};
  }
  const known = new Map(Object.entries(fields));
  const found: [string, unknown][] = [];
  for (const [key, value] of Object.entries(given)) {
    if (problems.length >= MOST_PROBLEMS) break;
    const field = known.get(key);
    if (!field) {
      problems.push(guessed(unknownKey(way, key, [...known.keys()])));
    } else if (value !== undefined && value !== null) {
      found.push([key, entryIn(field, value, [...way, key], problems)]);
    }
  }
  return Object.fromEntries(found);
}

function entryIn(field: Field, given: unknown, way: readonly string[], problems: FieldProblem[]): unknown {
  if (field.kind === 'group') return groupIn(field.of, given, way, field.label, problems);
  if (field.kind === 'list') {
    if (!Array.isArray(given)) return complain(problems, way, field.label, shown(given), 'a list');
    if (given.length > field.most)
      return complain(problems, way, field.label, `${given.length} entries`, `${field.most} at most`);
    return given.map((each, place) => groupIn(field.of, each, [...way, String(place)], field.one, problems));
  }
  if (typeof given === 'number' && Number.isFinite(given)) return given;
  if (typeof given !== 'string') return complain(problems, way, field.label, shown(given), 'a text');
  return given.length <= MOST_LETTERS
    ? given
    : complain(problems, way, field.label, `${given.length} letters`, `${MOST_LETTERS} at most`);
}

function complain(
  problems: FieldProblem[],
  way: readonly string[],
  label: string,
  found: string,
  expected: string,
): undefined {
  if (problems.length < MOST_PROBLEMS) problems.push({ field: way.join('.'), label, found, expected });
}
