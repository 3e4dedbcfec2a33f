import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { loadRulebook } from '../../src/rulebook/load.ts';
import { DataError, type Problem } from '../../src/rulebook/problem.ts';

/** The texts of a rule folder, by their names inside it. */
export type Files = Readonly<Record<string, string>>;

/** The day on which the small folders of these tests are read. */
export const TODAY = '2026-11-25';

/** Writes a rule folder, hands it over, and takes it away again. A version is there unless it is given. */
export function inFolder<T>(files: Files, use: (folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'rules-'));
  try {
    for (const [name, text] of Object.entries({ 'rulebook.yaml': 'version: "2026.1"\n', ...files })) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), text);
    }
    return use(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Loads a folder in which everything counts as used, except what is named. */
export const loadFolder = (folder: string, unused: readonly string[] = []) =>
  loadRulebook(folder, ({ rules, cautions }) => ({
    today: TODAY,
    used: new Set([...rules, ...cautions].map(({ id }) => id).filter((id) => !unused.includes(id))),
  }));

/** Every problem of a folder, its file named from inside the folder. */
export const problemsOf = (files: Files, unused: readonly string[] = []): Problem[] =>
  inFolder(files, (folder) => {
    try {
      loadFolder(folder, unused);
      return [];
    } catch (error) {
      if (!(error instanceof DataError)) throw error;
      const fromHere = `${relative(process.cwd(), folder)}/`;
      return error.problems.map((problem) => ({
        ...problem,
        file: problem.file.replace(fromHere, ''),
        found: problem.found.replace(fromHere, ''),
      }));
    }
  });

const MARK = '§';

/** Where the mark § stands in the files, as file:line:column, and the files without it. */
export function marked(files: Files): { readonly files: Files; readonly place: string } {
  const [place = 'no mark'] = Object.entries(files).flatMap(([name, text]) => {
    const before = text.split(MARK)[0] ?? '';
    const lines = before.split('\n');
    return before === text ? [] : [`${name}:${lines.length}:${(lines.at(-1)?.length ?? 0) + 1}`];
  });
  const plain = Object.entries(files).map(([name, text]) => [name, text.replace(MARK, '')]);
  return { files: Object.fromEntries(plain), place };
}

interface Parts {
  readonly value?: string;
  readonly source?: string;
  readonly more?: string;
}

/** The text of one rule, six lines long, or seven with more under it. */
export const rule = (key: string, { value, source, more }: Parts = {}): string =>
  [
    `${key}:`,
    '  title: Width of a thing',
    '  says: It is this wide.',
    `  value: ${value ?? '{ kind: exact, number: 2, unit: in }'}`,
    `  source: ${source ?? '{ kind: practice }'}`,
    '  applies_to: Every home.',
    ...(more === undefined ? [] : [`  ${more}`]),
    '',
  ].join('\n');

/** The text of one caution, four lines long, or five with more under it. */
export const caution = (
  key: string,
  {
    says = 'It hurts.',
    act = 'Leave it.',
    source = '{ kind: practice }',
    more,
  }: Partial<Record<'says' | 'act' | 'source' | 'more', string>> = {},
): string =>
  [
    `${key}:`,
    '  level: warn',
    `  says: ${says}`,
    `  do: ${act}`,
    `  source: ${source}`,
    ...(more === undefined ? [] : [`  ${more}`]),
    '',
  ].join('\n');

/** The text of one document of sources.yaml, seven lines long. */
export const document = (key: string): string =>
  [
    `${key}:`,
    '  kind: handbook',
    '  document: A handbook',
    '  title: Things and their widths',
    '  edition: the first',
    '  publisher: A press',
    '  standing: Advice.',
    '',
  ].join('\n');
