import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { z } from 'zod';
import type { Problem } from '../problem.ts';
import { type Entry, entriesOf, type Unread } from '../rule-files.ts';
import type { SourceDocument } from '../schema.ts';
import type { YamlFile } from '../yaml-file.ts';
import { explainIssues, namingKnownKeys } from '../zod-issue.ts';
import { readLocalYaml } from './local-yaml.ts';
import {
  type Agency,
  agencySchema,
  type LocalCaution,
  type LocalValue,
  localCautionSchema,
  localDocumentSchema,
  localValueSchema,
  type Note,
  noteSchema,
  plainlySeen,
} from './schema.ts';
import { ifSeveral } from './several-folders.ts';
import { filesOf, isPageName, strayFile } from './stray-files.ts';
import { unindented } from './unindented.ts';

/** A page of an agency's own, as it was written. */
export interface LocalPageText {
  readonly slug: string;
  /** The file, as problems name it. */
  readonly file: string;
  readonly text: string;
}

/** A picture, as it lies in the folder. */
export interface Logo {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** An agency's folder, each entry checked against its schema; what failed stands in `problems`. */
export interface Layer {
  readonly agency: Entry<Agency> | undefined;
  readonly values: readonly Entry<LocalValue>[];
  readonly notes: readonly Entry<Note>[];
  readonly cautions: readonly Entry<LocalCaution>[];
  readonly documents: readonly Entry<SourceDocument>[];
  /** What of sources.yaml could not be read. */
  readonly unreadDocuments: readonly Unread[];
  readonly pages: readonly LocalPageText[];
  readonly logo: Logo | undefined;
  /** The files in which no entry stands: they are empty, or all in them is behind the mark #. */
  readonly empty: readonly string[];
  readonly problems: readonly Problem[];
}

/** A folder that tells whose it is. */
export type WithAgency = Layer & { readonly agency: Entry<Agency> };

/** A larger file is no notes: it would only slow the build. */
const LARGEST = 200_000;
const LARGEST_LOGO = 500_000;
/** More pages than this is another site. */
const MOST_PAGES = 100;

/** More stray files than this are counted, not named. */
const MOST_STRAYS = 20;

/**
 * Reads an agency's folder. Nothing is thrown for a mistake in it: each is reported, with all the others. Only plain files of the folder itself are
 * read: no links, no devices, nothing above it.
 */
export function readLayer(folder: string): Layer {
  const problems: Problem[] = [];
  const shown = (name: string): string => relative(process.cwd(), join(folder, name)) || name;
  const complain = (name: string, found: string, expected: string): undefined => {
    problems.push({ file: shown(name), line: 1, column: 1, found, expected, check: 'local-folder' });
    return undefined;
  };

  /** The bytes of a plain file of a fair size; undefined, and a problem, for anything else. */
  const bytesOf = (name: string, largest = LARGEST): Uint8Array<ArrayBuffer> | undefined => {
    const stat = lstatSync(join(folder, name));
    if (!stat.isFile())
      return complain(
        name,
        stat.isSymbolicLink() ? 'a link to another place' : 'no plain file',
        'a plain file',
      );
    if (stat.size > largest) return complain(name, `${stat.size} bytes`, `no more than ${largest}`);
    return new Uint8Array(readFileSync(join(folder, name)));
  };
  const textOf = (name: string): string | undefined => {
    const bytes = bytesOf(name);
    if (!bytes) return undefined;
    try {
      return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    } catch {
      return complain(name, 'bytes that are no UTF-8', 'a text saved as UTF-8');
    }
  };

  const nothing: Layer = {
    agency: undefined,
    values: [],
    notes: [],
    cautions: [],
    documents: [],
    unreadDocuments: [],
    pages: [],
    logo: undefined,
    empty: [],
    problems,
  };
  const names = namesIn(folder);
  if (!names) {
    complain('', 'no folder here', `an agency's folder, with agency.yaml in it${ifSeveral(folder)}`);
    return nothing;
  }

  const yaml = (name: string, fields: readonly string[] = []): YamlFile | undefined => {
    if (!names.includes(name)) return undefined;
    const text = textOf(name);
    if (text === undefined) return undefined;
    const atHead = unindented(text, fields);
    if (atHead) {
      // One mistake, though every line of the file may follow from it.
      problems.push({
        file: shown(name),
        line: atHead.line,
        column: 1,
        found: `"${atHead.field}" at the very head of a line`,
        expected: 'two spaces before it, and before every other line that belongs to the same name',
        check: 'local-folder',
      });
      return undefined;
    }
    const file = readLocalYaml(shown(name), text);
    problems.push(...(file.problems.length > 0 ? file.problems : unseenIn(file)));
    return file.problems.length > 0 ? undefined : file;
  };
  const empty: string[] = [];
  const entries = <T>(
    name: string,
    schema: z.ZodType<T> & { readonly shape: object },
    unread: Unread[] = [],
  ): Entry<T>[] => {
    const file = yaml(name, Object.keys(schema.shape));
    const into: Entry<T>[] = [];
    const whole: Unread = { holds: () => true, text: '' };
    if (!file) {
      if (names.includes(name)) unread.push(whole);
      return into;
    }
    // A file in which every entry is still a comment holds none, and that is no mistake.
    if (file.value === null || file.value === undefined) {
      empty.push(name);
      return into;
    }
    if (Array.isArray(file.value)) {
      complain(name, 'a list', 'entries, each under a name of its own');
      unread.push(whole);
      return into;
    }
    problems.push(...entriesOf(file, schema, into, String, unread));
    for (const { id, file: at, path } of into)
      if (!/^[a-z0-9-]+(\.[a-z0-9-]+)*$/.test(id))
        problems.push({
          file: at.name,
          ...at.placeOfKey(path),
          found: `the name ${plainlySeen(id) ? JSON.stringify(id.slice(0, 60)) : 'with hidden signs'}`,
          expected: 'small letters, digits and hyphens',
          check: 'local-name',
        });
    return into;
  };

  // Without agency.yaml it may be any folder: then what lies deeper is nothing of it.
  const files = names.includes('agency.yaml')
    ? filesOf(folder)
    : names.filter((name) => !lstatSync(join(folder, name)).isDirectory());
  const strays = files.flatMap((name) => {
    const stray = name === 'pages' ? undefined : strayFile(name, files);
    return stray ? [{ name, ...stray }] : [];
  });
  for (const { name, found, expected } of strays.slice(0, MOST_STRAYS)) complain(name, found, expected);
  if (strays.length > MOST_STRAYS)
    complain('', `${strays.length} files that are not read`, 'only the files of your notes in this folder');

  if (!names.includes('agency.yaml'))
    complain('agency.yaml', 'no such file', 'one that says whose folder this is');
  const agencyFile = yaml('agency.yaml');
  const agency = agencyFile && agencyIn(agencyFile, problems);
  const logoName = agency?.entry.logo;
  const logo = ((): Logo | undefined => {
    if (logoName === undefined) return undefined;
    if (!names.includes(logoName))
      return complain(logoName, 'no such picture', 'the file that "logo" in agency.yaml names');
    const bytes = bytesOf(logoName, LARGEST_LOGO);
    if (!bytes) return undefined;
    return isPicture(bytes)
      ? { name: logoName, bytes }
      : complain(logoName, 'no picture', 'a png, jpg or webp');
  })();

  const unreadDocuments: Unread[] = [];
  return {
    agency,
    values: entries('values.yaml', localValueSchema),
    notes: entries('notes.yaml', noteSchema),
    cautions: entries('cautions.yaml', localCautionSchema),
    documents: entries('sources.yaml', localDocumentSchema, unreadDocuments),
    unreadDocuments,
    pages: names.includes('pages') ? pagesIn(folder, complain, textOf, shown) : [],
    logo,
    empty,
    problems,
  };
}

function namesIn(folder: string): string[] | undefined {
  try {
    return readdirSync(folder).sort();
  } catch {
    return undefined;
  }
}

/** Every text of a file, a key too, that holds what a reader can't see. */
function unseenIn(file: YamlFile): Problem[] {
  const found: Problem[] = [];
  const look = (value: unknown, path: readonly PropertyKey[]): void => {
    if (typeof value === 'string' && !plainlySeen(value))
      found.push({
        file: file.name,
        ...file.placeOf(path),
        found: 'signs that can not be seen',
        expected: 'plain letters, without control signs',
        check: 'local-words',
      });
    if (value !== null && typeof value === 'object')
      for (const [key, each] of Object.entries(value))
        look(each, [...path, Array.isArray(value) ? Number(key) : key]);
  };
  look(file.value, []);
  return found;
}

function agencyIn(file: YamlFile, problems: Problem[]): Entry<Agency> | undefined {
  const parsed = agencySchema.safeParse(file.value, { error: namingKnownKeys });
  if (parsed.success) return { id: parsed.data.id, entry: parsed.data, file, path: [] };
  problems.push(...explainIssues(parsed.error.issues, file.value, file, []));
  return undefined;
}

function pagesIn(
  folder: string,
  complain: (name: string, found: string, expected: string) => undefined,
  textOf: (name: string) => string | undefined,
  shown: (name: string) => string,
): LocalPageText[] {
  if (!lstatSync(join(folder, 'pages')).isDirectory()) {
    complain('pages', 'no plain folder', 'a folder of pages');
    return [];
  }
  const names = namesIn(join(folder, 'pages')) ?? [];
  if (names.length > MOST_PAGES) {
    complain('pages', `${names.length} files`, `no more than ${MOST_PAGES} pages`);
    return [];
  }
  return names.filter(isPageName).flatMap((name) => {
    const text = textOf(`pages/${name}`);
    return text === undefined
      ? []
      : [{ slug: name.replace(/\.mdx$/, ''), file: shown(`pages/${name}`), text }];
  });
}

/** Does a file begin as a png, a jpg or a webp does? */
function isPicture(bytes: Uint8Array): boolean {
  const begins = (at: number, ...expected: number[]) =>
    expected.every((byte, place) => bytes[at + place] === byte);
  return (
    begins(0, 0x89, 0x50, 0x4e, 0x47) ||
    begins(0, 0xff, 0xd8, 0xff) ||
    (begins(0, 0x52, 0x49, 0x46, 0x46) && begins(8, 0x57, 0x45, 0x42, 0x50))
  );
}
