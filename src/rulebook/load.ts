import { readReleases, recallProblems, releaseProblems } from './changes/releases.ts';
import { workOut } from './formula.ts';
import { lints as everyLint } from './lints/index.ts';
import type { Lint, LintContext } from './lints/lint.ts';
import { DataError, type Problem } from './problem.ts';
import { type Entry, type RuleFiles, readRuleFiles } from './rule-files.ts';
import type { LoadedCaution, Rule, RulebookData } from './rulebook.ts';
import type { RawRule } from './schema.ts';

/** Asks every lint of files that could all be read; where one could not, its own mistakes are told first. */
export function problemsOf(
  files: RuleFiles,
  context: LintContext,
  lints: readonly Lint[] = everyLint,
): Problem[] {
  return [...files.problems, ...lints.flatMap((lint) => lint.look(files, context))];
}

/**
 * Loads a rulebook folder: reads each file once, checks, works out the derived values. What the lints may look at besides can follow from
 * the files, since they name each other.
 * @throws DataError with every mistake at once, as `file:line:column  found ...  expected ...  (check)`.
 */
export function loadRulebook(
  folder: string,
  contextOf: (files: RuleFiles) => LintContext,
  lints: readonly Lint[] = everyLint,
): {
  readonly data: RulebookData;
  readonly files: RuleFiles;
  readonly releases: readonly RulebookData[];
} {
  const files = readRuleFiles(folder);
  const problems = problemsOf(files, contextOf(files), lints);
  if (problems.length > 0) throw new DataError(problems);
  const data = resolve(files);
  const releases = readReleases(folder);
  const published = [...releaseProblems(data, files, releases), ...recallProblems(files, releases)];
  if (published.length > 0) throw new DataError(published);
  return { data, files, releases };
}

/** The rulebook of files that passed every lint. */
export function resolve(files: RuleFiles): RulebookData {
  const raw = new Map(files.rules.map(({ id, entry }) => [id, entry]));
  return {
    version: files.version,
    rules: Object.fromEntries(files.rules.map((entry) => [entry.id, resolvedRule(entry, raw)])),
    documents: Object.fromEntries(files.documents.map(({ id, entry }) => [id, entry])),
    cautions: Object.fromEntries(
      files.cautions.map((entry): [string, LoadedCaution] => [
        entry.id,
        { ...entry.entry, ...placed(entry) },
      ]),
    ),
  };
}

const placed = ({ id, file, path }: Entry<unknown>) => ({
  id,
  file: file.name,
  line: file.placeOfKey(path).line,
});

function resolvedRule(entry: Entry<RawRule>, raw: ReadonlyMap<string, RawRule>): Rule {
  const { value } = entry.entry;
  const worked =
    value.kind === 'exact' && value.formula !== undefined
      ? // In the order of the schema, so that an exported rulebook comes out the same again.
        { kind: value.kind, number: workOut(entry.id, raw), formula: value.formula, unit: value.unit }
      : value;
  return { ...entry.entry, value: worked, ...placed(entry) };
}
