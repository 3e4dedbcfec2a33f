import { z } from 'zod';
import { formMeant } from './form-meant.ts';
import { nearest } from './nearest.ts';
import type { Problem } from './problem.ts';
import type { YamlFile } from './yaml-file.ts';

type Issue = z.core.$ZodIssue;

/** Makes a schema's complaint of an unknown key name the keys it knows, so that the one that was meant can be named. */
export const namingKnownKeys: z.core.$ZodErrorMap = (issue) =>
  issue.code === 'unrecognized_keys' && issue.inst instanceof z.ZodObject
    ? Object.keys(issue.inst.shape).join(' ')
    : undefined;

const shown = (value: unknown): string => {
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
};

const valueAt = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((each, key) => (each as Record<PropertyKey, unknown> | undefined)?.[key], value);

/** Further on in a list its number is easier to count to than its ordinal is to read. */
const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];

/**
 * A place in an entry, in words, for somebody who never saw how a program writes one: a field by its name, one of a list by its place in it.
 * @example placeInWords(['value', 'rows', 1]) // => 'the second of "rows" in "value"'
 */
export function placeInWords(path: readonly PropertyKey[]): string {
  const last = path.at(-1);
  if (typeof last === 'number') {
    const which = ordinals[last] ? `the ${ordinals[last]}` : `number ${last + 1}`;
    return `${which} of ${placeInWords(path.slice(0, -1))}`;
  }
  return `"${String(last)}"${inField(path)}`;
}

const inField = (path: readonly PropertyKey[]): string =>
  path.length > 1 ? ` in ${placeInWords(path.slice(0, -1))}` : '';

/** What was found, and where in its entry. */
function foundAt(path: readonly PropertyKey[], value: unknown, base: readonly PropertyKey[]): string {
  const last = path.at(-1);
  const ofList = typeof last === 'number';
  if (value === undefined) return `no${ofList ? 'thing as' : ''} ${placeInWords(path)}`;
  if (value === null) {
    const named = path.length > 0 ? path : base;
    return `nothing that is read${named.length > 0 ? ` ${ofList ? 'as' : 'behind'} ${placeInWords(named)}` : ''}`;
  }
  if (last === undefined) return shown(value);
  return ofList
    ? `${shown(value)} as ${placeInWords(path)}`
    : `${String(last)} ${shown(value)}${inField(path)}`;
}

/** Says a schema's complaints in the words of this project, each at the line it is about. */
export function explainIssues(
  issues: readonly Issue[],
  raw: unknown,
  file: YamlFile,
  base: readonly PropertyKey[],
): Problem[] {
  // A misspelt key is one mistake: it is not told a second time as the key that is missing.
  const meant = new Set(
    issues.flatMap((issue) =>
      issue.code === 'unrecognized_keys'
        ? issue.keys.map((key) => [...issue.path, nearest(key, knownKeys(issue))].join('.'))
        : [],
    ),
  );
  return issues
    .filter(({ path }) => valueAt(raw, path) !== undefined || !meant.has(path.join('.')))
    .flatMap((issue) => explainIssue(issue, raw, file, base));
}

const knownKeys = ({ message }: Issue): string[] => message.split(' ');

function explainIssue(issue: Issue, raw: unknown, file: YamlFile, base: readonly PropertyKey[]): Problem[] {
  // A union that failed in every branch: the branch that got furthest is the one that was meant.
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    const branches = issue.errors.filter((branch) => branch.length > 0);
    const deepest = branches.sort((a, b) => depth(b) - depth(a) || a.length - b.length)[0]?.[0];
    if (deepest && deepest.path.length > 0) {
      return explainIssue({ ...deepest, path: [...issue.path, ...deepest.path] } as Issue, raw, file, base);
    }
  }
  const path = [...base, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      file: file.name,
      ...file.placeOfKey([...path, key]),
      found: `the unknown key "${key}"`,
      expected: keyMeant(key, knownKeys(issue)),
      check: 'shape',
    }));
  }
  const value = valueAt(raw, issue.path);
  const found = foundAt(issue.path, value, base);
  const last = path.at(-1);
  const form = {
    key: typeof last === 'string' && issue.path.length > 0 ? last : undefined,
    value,
    whole: issue.path.length > 0 ? undefined : base.length === 0 ? ('file' as const) : ('entry' as const),
  };
  const expected =
    issue.code === 'invalid_type' ? formMeant({ ...form, asked: issue.expected }) : expectation(issue);
  return [{ file: file.name, ...file.placeOf(path), found, expected, check: 'shape' }];
}

function keyMeant(key: string, known: readonly string[]): string {
  // In braces a comma ends a field, so what stands behind a decimal comma reads as a key.
  if (/^\d+$/.test(key)) return 'a point in a number, as in 2.5: a comma begins the next field';
  const guess = nearest(key, known);
  return guess ? `a key of the schema; did you mean "${guess}"?` : `one of ${known.join(', ')}`;
}

function expectation(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}`;
    case 'invalid_union':
      return 'options' in issue && Array.isArray(issue.options)
        ? `one of ${issue.options.join(', ')}`
        : 'one of the forms of the schema';
    case 'too_small':
      return issue.origin === 'string' ? 'words, not an empty text' : `${issue.minimum} or more`;
    case 'invalid_format':
      return issue.format === 'date'
        ? 'a day such as 2026-11-25'
        : issue.message.replace(/^Invalid string: ?/, '');
    default:
      return issue.message;
  }
}

const depth = (issues: readonly Issue[]): number => Math.max(...issues.map(({ path }) => path.length));
