import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { nearest } from '../rulebook/nearest.ts';
import type { Problem } from '../rulebook/problem.ts';
import { filesIn } from './files.ts';
import { attributeOf, leading } from './html.ts';
import { placeOfAttribute, type Tag, tagsIn } from './tags.ts';

/** Attributes that name ids of their own page. */
const naming = ['for', 'list', 'headers', 'aria-labelledby', 'aria-describedby', 'aria-controls'] as const;
/** As SVG names a pattern, a marker or a clip of its page. */
const PAINT = /^url\(["']?#([^)"']+)["']?\)$/;
/** A scheme such as "mailto:", or the two strokes before another host. */
const ELSEWHERE = /^(?:[a-z][a-z0-9+.-]*:|\/\/)/i;
/**
 * Links are read as if the site stood this deep, at a host of no consequence: a relative one that climbs out of the site is seen,
 * where at the root of a host it would pass.
 */
const STANDS_AT = new URL('https://site.invalid/the/path/the/site/stands/under/');

interface Link {
  readonly name: string;
  readonly written: string;
  readonly tag: Tag;
}

interface BuiltPage {
  /** Its file inside the site. */
  readonly file: string;
  readonly ids: ReadonlySet<string>;
  readonly twice: readonly { readonly id: string; readonly tag: Tag }[];
  readonly links: readonly Link[];
  readonly named: readonly Link[];
}

/**
 * Which links of a built site lead nowhere? Follows every link, form, picture, script and style sheet of every page to a file of the
 * site, every anchor to an id of the page it leads to, and every id that a label, a description or a drawing names. Nothing is asked
 * of another host. A link from the root of the host is a mistake, since the site may stand under any path. One link that stands on
 * many pages is told once.
 */
export function brokenLinks(folder: string): Problem[] {
  const files = filesIn(folder);
  const pages = new Map(
    files
      .filter((name) => name.endsWith('.html'))
      .map((name) => [name, readPage(name, readFileSync(join(folder, name), 'utf8'))]),
  );
  const site: Site = { files, known: new Set(files), pages };
  return onceEach(
    [...pages.values()].flatMap((page) => mistakesOn(page, site)),
    folder,
  );
}

/** What a link may lead to. */
interface Site {
  readonly files: readonly string[];
  readonly known: ReadonlySet<string>;
  readonly pages: ReadonlyMap<string, BuiltPage>;
}

/** What is wrong with one attribute of one page. */
interface Mistake extends Pick<Problem, 'found' | 'expected' | 'check'> {
  readonly page: string;
  readonly at: Omit<Link, 'written'>;
}

const mistakesOn = (page: BuiltPage, site: Site): Mistake[] => [
  ...page.twice.map(
    ({ id, tag }): Mistake => ({
      page: page.file,
      at: { name: 'id', tag },
      found: `the id "${id}" a second time on ${page.file}`,
      expected: 'each id once',
      check: 'duplicate-id',
    }),
  ),
  ...page.named
    .filter(({ written }) => !page.ids.has(written))
    .map(
      (link): Mistake => ({
        page: page.file,
        at: link,
        found: `${link.name} "${link.written}" on ${page.file}`,
        expected: 'an id of that page',
        check: 'broken-reference',
      }),
    ),
  ...page.links.flatMap((link): Mistake[] => {
    const expected = wanted(link.written, page, site);
    return expected === undefined
      ? []
      : [{ page: page.file, at: link, found: `the link "${link.written}"`, expected, check: 'broken-link' }];
  }),
];

/** The same mistake on many pages is told at the first, with the number of the others. */
function onceEach(mistakes: readonly Mistake[], folder: string): Problem[] {
  const alike = new Map<string, [Mistake, ...Mistake[]]>();
  for (const mistake of mistakes) {
    const key = `${mistake.found} ${mistake.expected}`;
    const before = alike.get(key);
    if (before) before.push(mistake);
    else alike.set(key, [mistake]);
  }
  return [...alike.values()].map((all): Problem => {
    const [{ page, at, found, expected, check }] = all;
    const others = new Set(all.map((each) => each.page)).size - 1;
    return {
      file: join(folder, page),
      ...placeOfAttribute(at.tag, at.name),
      found: others === 0 ? found : `${found} here and on ${others} more`,
      expected,
      check,
    };
  });
}

/** What is expected in the place of a link that leads nowhere; undefined for one that leads to something. */
function wanted(written: string, page: BuiltPage, { files, known, pages }: Site): string | undefined {
  if (ELSEWHERE.test(written)) return undefined;
  if (written.startsWith('/')) return 'a relative link: the site may stand under any path';
  const from = new URL(page.file.replace(/(^|\/)index\.html$/, '$1'), STANDS_AT);
  const to = new URL(written, from);
  if (!to.pathname.startsWith(STANDS_AT.pathname)) return 'a link that stays inside the site';
  const path = decoded(to.pathname.slice(STANDS_AT.pathname.length));
  const file = path === '' || path.endsWith('/') ? `${path}index.html` : path;
  if (!known.has(file)) {
    if (known.has(`${file}/index.html`)) return 'a slash at its end: it leads to a page';
    const guess = nearFile(file, files);
    return `a page or a file of the site${guess === undefined ? '' : `; did you mean "/${guess}"?`}`;
  }
  const anchor = decoded(to.hash.slice(1));
  // What a form or a filter holds stands in the fragment too, as "name=value": it names no place of the page.
  if (anchor === '' || anchor.includes('=')) return undefined;
  const target = pages.get(file);
  if (!target || target.ids.has(anchor)) return undefined;
  const guess = nearest(anchor, [...target.ids]);
  return `an id of ${file}${guess === undefined ? '' : `; did you mean "#${guess}"?`}`;
}

/** The page or file that was most likely meant: of the same name in another folder, or of a near name in the same. */
function nearFile(file: string, files: readonly string[]): string | undefined {
  const shown = (name: string): string => name.replace(/(^|\/)index\.html$/, '$1');
  const [folder, name] = parted(shown(file));
  const all = files.map(shown).filter((each) => each !== '');
  const inFolder = all.map(parted).filter(([each]) => each === folder);
  const near = nearest(
    name,
    inFolder.map(([, each]) => each),
  );
  return all.find((each) => parted(each)[1] === name) ?? (near === undefined ? undefined : folder + near);
}

/** A path as its folder and its last name. @example parted('do/patching/') // => ['do/', 'patching/'] */
export function parted(path: string): readonly [folder: string, name: string] {
  const from = path.replace(/\/$/, '').lastIndexOf('/') + 1;
  return [path.slice(0, from), path.slice(from)];
}

function readPage(file: string, html: string): BuiltPage {
  const ids = new Set<string>();
  const twice: { id: string; tag: Tag }[] = [];
  const links: Link[] = [];
  const named: Link[] = [];
  for (const tag of tagsIn(html)) {
    const id = attributeOf(tag, 'id');
    if (id !== undefined && ids.has(id)) twice.push({ id, tag });
    if (id !== undefined) ids.add(id);
    for (const name of leading) {
      const written = attributeOf(tag, name);
      if (written !== undefined) links.push({ name, written, tag });
    }
    for (const name of naming)
      for (const written of attributeOf(tag, name)?.split(/\s+/).filter(Boolean) ?? [])
        named.push({ name, written, tag });
    for (const { name, value } of tag.attrs) {
      const written = PAINT.exec(value)?.[1];
      if (written !== undefined) named.push({ name, written, tag });
    }
  }
  return { file, ids, twice, links, named };
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
