import type { Entries } from './declare/entries.ts';
import type { Field, Fields } from './declare/field.ts';

/** A field's own example, as it is typed; of a list one row. */
function exampleOf(field: Field): unknown {
  switch (field.kind) {
    case 'choice':
      return field.choices[0];
    case 'list':
      return [examplesOf(field.of)];
    case 'group':
      return examplesOf(field.of);
    default:
      return field.example;
  }
}

const examplesOf = (fields: Fields): Entries =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]) => (field.optional ? [] : [[name, exampleOf(field)]])),
  );

type Changes = (field: Fields[string], given: unknown) => readonly unknown[];

/** The entries with one of them changed, each in turn and in each of its ways, down through groups and rows. */
const changedOnce = (fields: Fields, entries: Entries, changes: Changes): Entries[] =>
  Object.entries(fields).flatMap(([name, field]) => {
    const given = entries[name];
    return [...changes(field, given), ...changedInside(field, given, changes)].map((next) => ({
      ...entries,
      [name]: next,
    }));
  });

function changedInside(field: Field, given: unknown, changes: Changes): unknown[] {
  if (field.kind === 'group') return changedOnce(field.of, (given ?? {}) as Entries, changes);
  if (field.kind !== 'list') return [];
  const rows = (given ?? []) as readonly Entries[];
  return rows.flatMap((row, place) =>
    changedOnce(field.of, row, changes).map((next) => rows.with(place, next)),
  );
}

/**
 * The same with each left-out entry given its own example, in turn.
 * @example filledIn({ name: { kind: 'words', example: 'Oak Street', optional: true } }, {}) // => [{ name: 'Oak Street' }]
 */
export const filledIn = (fields: Fields, entries: Entries): Entries[] =>
  changedOnce(fields, entries, (field, given) =>
    field.optional && given === undefined ? [exampleOf(field)] : [],
  );

/**
 * The same with one choice made otherwise, or with one entry left out that may be.
 * @example otherwise({ cover: { kind: 'choice', choices: ['metal', 'shingle'] } }, { cover: 'metal' }) // => [{ cover: 'shingle' }]
 */
export const otherwise = (fields: Fields, entries: Entries): Entries[] =>
  changedOnce(fields, entries, (field, given) => [
    ...(field.kind === 'choice' ? field.choices.filter((each) => each !== given) : []),
    ...(field.optional && given !== undefined ? [undefined] : []),
  ]);
