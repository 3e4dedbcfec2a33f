import { posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parse as parseStyle, walk } from 'css-tree';
import { attributeOf, type Element, elementsIn } from '../../src/built/html.ts';
import { type Imported, importsOf } from '../../src/built/imports.ts';

/** The files of a built site by their places in it. */
export type Site = ReadonlyMap<string, Uint8Array>;

/** What the foot of every page asks its host for, past every cache: which versions are recalled. */
const ASKED_AT_EACH_VISIT = 'data/recall.json';

/** Compares two rulebooks, where a newer copy of the site came in: no page asks for it by itself. */
const FOR_A_NEWER_COPY = /(^|\/)changed\.[^/]*js$/;

const sizes = new WeakMap<Uint8Array, number>();

/** What a file takes on the way, packed as hosts do, in bytes. @throws where the site has no such file. */
export function packed(site: Site, file: string): number {
  const bytes = site.get(file);
  if (!bytes) throw new Error(`found no file "${file}" in the built site, expected one: a page asks for it`);
  const size = sizes.get(bytes) ?? gzipSync(bytes, { level: 9 }).length;
  sizes.set(bytes, size);
  return size;
}

const textOf = (site: Site, file: string): string => new TextDecoder().decode(site.get(file));

/** A file of the site that is meant by an address on another; undefined for one outside it, or inside the page itself. */
function fileAt(from: string, address: string): string | undefined {
  if (/^(?:[a-z][a-z0-9+.-]*:|\/\/|#|$)/i.test(address)) return undefined;
  const path = decodeURIComponent(address.replace(/[?#].*$/, ''));
  const whole = posix.join(posix.dirname(from), path);
  if (whole === '.' || whole === './') return 'index.html';
  return whole.endsWith('/') ? `${whole}index.html` : whole;
}

/** What an element loads by itself. Marks for the screen of a phone are the browser's own errand, and come after the page. */
function loadedBy(element: Element): string | undefined {
  const rel = attributeOf(element, 'rel')?.split(/\s+/) ?? [];
  if (
    element.tagName === 'link' &&
    ['stylesheet', 'modulepreload', 'preload'].some((each) => rel.includes(each))
  )
    return attributeOf(element, 'href');
  return ['script', 'img', 'iframe', 'source', 'embed'].includes(element.tagName)
    ? attributeOf(element, 'src')
    : undefined;
}

const imports = new WeakMap<Uint8Array, readonly Imported[]>();

function importsIn(site: Site, file: string): readonly Imported[] {
  const bytes = site.get(file);
  const known = bytes && imports.get(bytes);
  if (known) return known;
  const found = importsOf(textOf(site, file));
  if (bytes) imports.set(bytes, found);
  return found;
}

/** What a style sheet asks for: others, pictures, letters. */
export function addressesIn(style: string): string[] {
  const found: string[] = [];
  walk(parseStyle(style), (node) => {
    if (node.type === 'Url') found.push(node.value);
    if (node.type === 'Atrule' && node.name === 'import' && node.prelude?.type === 'AtrulePrelude') {
      const first = node.prelude.children.first;
      if (first?.type === 'String') found.push(first.value);
    }
  });
  return found;
}

/**
 * What a page of the built site brings with it, each file once, in the order in which they are met: itself, its style sheets and scripts,
 * and all that these ask for in turn, at once or later. What a tap leads to, such as the page that a number's card is cut from, is a page by itself.
 */
export function pageLoad(site: Site, page: string): readonly string[] {
  const files = new Set<string>();
  const elements = elementsIn(textOf(site, page));
  const take = (file: string | undefined): void => {
    if (file === undefined || files.has(file)) return;
    files.add(file);
    if (file.endsWith('.css'))
      for (const address of addressesIn(textOf(site, file))) take(fileAt(file, address));
    if (file.endsWith('.js'))
      for (const { from, later } of importsIn(site, file))
        if (!(later && FOR_A_NEWER_COPY.test(from))) take(fileAt(file, from));
  };
  files.add(page);
  for (const element of elements) take(fileAt(page, loadedBy(element) ?? ''));
  if (elements.some((each) => attributeOf(each, 'id') === 'copy')) take(ASKED_AT_EACH_VISIT);
  return [...files];
}
