import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { z } from 'zod';
import type { Problem } from './problem.ts';
import {
  type Caution,
  type Check,
  cautionSchema,
  checkSchema,
  documentSchema,
  type RawRule,
  type Reason,
  type Recall,
  reasonSchema,
  rulebookSchema,
  ruleSchema,
  type SourceDocument,
  type Unguarded,
  unguardedSchema,
} from './schema.ts';
import { readYaml, type YamlFile } from './yaml-file.ts';
import { explainIssues, namingKnownKeys } from './zod-issue.ts';

/** An entry of a rule file, with the means to say where each part of it stands. */
export interface Entry<T> {
  readonly id: string;
  readonly entry: T;
  readonly file: YamlFile;
  /** The path of the entry inside its file. */
  readonly path: readonly PropertyKey[];
}

/**
 * What stands in a file but could not be read: an entry, or a file whole. What names it names something all the same, and what it names is
 * used: its own mistake is told, and nothing that only follows from it.
 */
export interface Unread {
  /** Is the id one of it? */
  readonly holds: (id: string) => boolean;
  readonly text: string;
}

/** Does an id belong to what could not be read? */
export const isUnread = (unread: readonly Unread[], id: string): boolean =>
  unread.some(({ holds }) => holds(id));

/** Is an id named in what could not be read? */
export const namedUnread = (unread: readonly Unread[], id: string): boolean =>
  unread.some(({ text }) => text.includes(id));

/** All files of a rulebook folder, each entry checked against its schema; what failed stands in `problems`. */
export interface RuleFiles {
  readonly version: string;
  readonly rules: readonly Entry<RawRule>[];
  readonly documents: readonly Entry<SourceDocument>[];
  readonly cautions: readonly Entry<Caution>[];
  readonly checks: readonly Entry<Check>[];
  /** Why safety values were let looser. */
  readonly reasons: readonly Entry<Reason>[];
  /** Versions that are recalled. */
  readonly recalls: readonly Entry<Recall>[];
  /** Why no check guards some values. */
  readonly unguarded: readonly Entry<Unguarded>[];
  /** Where the version stands. */
  readonly versionFile: Pick<Problem, 'file' | 'line' | 'column'>;
  readonly problems: readonly Problem[];
  readonly unread: readonly Unread[];
}

const VERSION = /^\d{4}\.\d+$/;

function yamlFilesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml') && !name.startsWith(`local${sep}`))
    .sort();
}

/** The problem of one part of an entry. */
export const problemAt = (
  { file, path }: Entry<unknown>,
  within: readonly PropertyKey[],
  found: string,
  expected: string,
  check: string,
): Problem => ({ file: file.name, ...file.placeOf([...path, ...within]), found, expected, check });

/** The problem of an entry as a whole, at its key. */
export const problemAtKey = (
  { file, path }: Entry<unknown>,
  found: string,
  expected: string,
  check: string,
): Problem => ({ file: file.name, ...file.placeOfKey(path), found, expected, check });

/**
 * Reads every YAML file of a rulebook folder. Nothing is thrown for a mistake in a file: it is reported, with all the others.
 * A rule's id is its file's path and its key: `spacing` in `access/roof-holes.yaml` is `access.roof-holes.spacing`.
 */
export function readRuleFiles(folder: string): RuleFiles {
  const problems: Problem[] = [];
  const rules: Entry<RawRule>[] = [];
  const documents: Entry<SourceDocument>[] = [];
  const cautions: Entry<Caution>[] = [];
  const checks: Entry<Check>[] = [];
  const reasons: Entry<Reason>[] = [];
  const recalls: Entry<Recall>[] = [];
  const unguarded: Entry<Unguarded>[] = [];
  const unread: Unread[] = [];
  let version = '';
  let versionFile = { file: relative(process.cwd(), join(folder, 'rulebook.yaml')), line: 1, column: 1 };
  const names = yamlFilesIn(folder);

  for (const name of names) {
    const shown = relative(process.cwd(), join(folder, name)) || name;
    const text = readFileSync(join(folder, name), 'utf8');
    const file = readYaml(shown, text);
    const parts = name.replace(/\.yaml$/, '').split(sep);
    const [topic = ''] = parts;
    problems.push(...file.problems);
    if (file.value === null || typeof file.value !== 'object') {
      const begins = `${topic === 'cautions' ? ['caution', ...parts.slice(1)].join('.') : parts.join('.')}.`;
      // The id of a document has no file before it, and no dot.
      const holds = (id: string) => (name === 'sources.yaml' ? !id.includes('.') : id.startsWith(begins));
      unread.push({ holds, text });
    }
    if (file.problems.length > 0) continue;
    const collect = <T>(schema: z.ZodType<T>, into: Entry<T>[], idOf: (key: PropertyKey) => string) =>
      problems.push(...entriesOf(file, schema, into, idOf, unread));
    if (name === 'rulebook.yaml') {
      const head = readHead(file);
      version = head.version ?? '';
      versionFile = { file: shown, ...file.placeOf(['version']) };
      recalls.push(...head.recalls);
      problems.push(...head.problems);
    } else if (name === 'sources.yaml') collect(documentSchema, documents, String);
    else if (name === 'reasons.yaml') collect(reasonSchema, reasons, String);
    else if (name === 'unguarded.yaml') collect(unguardedSchema, unguarded, String);
    else if (topic === 'checks')
      collect(checkSchema, checks, (key) => `${parts.slice(1).join('.')}.${Number(key) + 1}`);
    else if (topic === 'cautions')
      collect(cautionSchema, cautions, (key) => ['caution', ...parts.slice(1), key].join('.'));
    else collect(ruleSchema, rules, (key) => [...parts, key].join('.'));
  }
  if (!names.includes('rulebook.yaml')) {
    problems.push({
      ...versionFile,
      found: 'no such file',
      expected: 'one with version: "2026.1"',
      check: 'version',
    });
  }
  return {
    version,
    rules,
    documents,
    cautions,
    checks,
    reasons,
    recalls,
    unguarded,
    versionFile,
    problems,
    unread,
  };
}

/** What `rulebook.yaml` says: its version, undefined where it can’t be told, and what it recalls, which is not asked before its version is known. */
function readHead(file: YamlFile): {
  readonly version: string | undefined;
  readonly recalls: readonly Entry<Recall>[];
  readonly problems: readonly Problem[];
} {
  const given = (file.value as { version?: unknown } | null)?.version;
  // Without its quotes 2026.10 would be read as the number 2026.1.
  if (typeof given !== 'string' || !VERSION.test(given)) {
    const problem: Problem = {
      file: file.name,
      ...file.placeOf(['version']),
      found: given === undefined ? 'no version' : `version ${JSON.stringify(given)}`,
      expected: 'year and number in quotes, such as "2026.1"',
      check: 'version',
    };
    return { version: undefined, recalls: [], problems: [problem] };
  }
  const read = rulebookSchema.safeParse(file.value, { error: namingKnownKeys });
  return {
    version: given,
    recalls: (read.data?.recall ?? []).map((entry, place) => ({
      id: entry.version,
      entry,
      file,
      path: ['recall', place],
    })),
    problems: read.success ? [] : explainIssues(read.error.issues, file.value, file, []),
  };
}

/** Reads a folder of check files alone: a reviewer's own, say. */
export function readCheckFiles(folder: string): {
  readonly checks: readonly Entry<Check>[];
  readonly problems: readonly Problem[];
} {
  const checks: Entry<Check>[] = [];
  const problems: Problem[] = [];
  for (const name of yamlFilesIn(folder)) {
    const file = readYaml(
      relative(process.cwd(), join(folder, name)),
      readFileSync(join(folder, name), 'utf8'),
    );
    problems.push(...file.problems);
    if (file.problems.length > 0) continue;
    problems.push(
      ...entriesOf(file, checkSchema, checks, (key) => `${name.replace(/\.yaml$/, '')}.${Number(key) + 1}`),
    );
  }
  return { checks, problems };
}

/** Every entry of one file held against its schema: what passed goes into `into`, what did not into `unread`, and its problems come back. */
export function entriesOf<T>(
  file: YamlFile,
  schema: z.ZodType<T>,
  into: Entry<T>[],
  idOf: (key: PropertyKey) => string,
  unread: Unread[] = [],
): Problem[] {
  const { value } = file;
  if (value === null || typeof value !== 'object') {
    return [
      { file: file.name, line: 1, column: 1, found: 'nothing to read', expected: 'entries', check: 'shape' },
    ];
  }
  const keys: PropertyKey[] = Array.isArray(value) ? value.map((_, place) => place) : Object.keys(value);
  return keys.flatMap((key) => {
    const raw = (value as Record<PropertyKey, unknown>)[key];
    const parsed = schema.safeParse(raw, { error: namingKnownKeys });
    if (parsed.success) {
      into.push({ id: idOf(key), entry: parsed.data, file, path: [key] });
      return [];
    }
    unread.push({ holds: (id) => id === idOf(key), text: JSON.stringify(raw) ?? '' });
    return explainIssues(parsed.error.issues, raw, file, [key]);
  });
}
