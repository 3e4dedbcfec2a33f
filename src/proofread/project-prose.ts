import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Passage } from './passage.ts';
import { proseInCode, proseInPage, proseInTemplate, proseInYaml } from './prose-in.ts';
import { WORD_LIST } from './spelling.ts';

type Reader = (file: string, source: string) => Passage[];

/** Where words for people stand, and how each kind of file is read. */
const readers: readonly (readonly [folder: string, ending: string, read: Reader])[] = [
  ['content', '.mdx', proseInPage],
  ['content', '.yaml', proseInYaml],
  ['rules', '.yaml', proseInYaml],
  ['src', '.ts', proseInCode],
  ['src', '.tsx', proseInCode],
  ['src', '.astro', proseInTemplate],
];

/** These hold code as text. */
const skipped: readonly string[] = [
  'src/rulebook/generate.ts',
  'src/built/module-links.ts',
  'src/built/search-links.ts',
  'src/generated',
];

/** Everything the project says to people: its pages, its rules, its calculators and its commands. */
export const projectProse = (): Passage[] =>
  readers.flatMap(([folder, ending, read]) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .map((name) => join(folder, name).replaceAll('\\', '/'))
      .filter((file) => file.endsWith(ending) && !skipped.some((each) => file.startsWith(each)))
      .sort()
      .flatMap((file) => read(file, readFileSync(file, 'utf8'))),
  );

/** The trade's own words. */
export const projectWords = (): string[] =>
  readFileSync(WORD_LIST, 'utf8')
    .split('\n')
    .filter((word) => word !== '');

/** A page of content as it is written. */
export interface WrittenPage {
  readonly kind: string;
  readonly file: string;
  readonly source: string;
}

/** Every page of content, by its kind and name. */
export const writtenPages = (): WrittenPage[] =>
  readdirSync('content/en', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.mdx'))
    .sort()
    .map((name) => ({
      kind: name.split(/[\\/]/)[0] ?? '',
      file: join('content/en', name),
      source: readFileSync(join('content/en', name), 'utf8'),
    }));
