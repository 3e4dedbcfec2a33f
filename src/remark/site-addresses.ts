import { readdirSync, readFileSync } from 'node:fs';
import type { Local } from '../rulebook/local/local.ts';
import type { RulebookData } from '../rulebook/rulebook.ts';
import { idsOfText } from './page-ids.ts';

/** The addresses of a site that is still to be built, from its root: those of pages with a slash at their end, those of files without. */
export interface SiteAddresses {
  readonly known: ReadonlySet<string>;
  /** Whether an address is one that only the build can tell; it follows every link once more. */
  readonly open: (address: string) => boolean;
  /** The ids of the steps and headings of a page that is written in MDX; undefined for any other, whose ids only the build can tell. */
  readonly idsOf: (address: string) => readonly string[] | undefined;
}

const OPEN = /^\/(data\/[^/]+|plan\/patch-template\/[^/]+\/|changes\/[^/]+\/(cautions\/)?)$/;

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => name.replaceAll('\\', '/'));

/** Which addresses will the site have, with what is local in it? Of the pages in src/pages whose name leaves a part open, what it is filled with. */
export function siteAddresses(
  { rules, documents, cautions }: RulebookData,
  local: Local | undefined,
): SiteAddresses {
  const content = filesBelow('content/en').flatMap((name) => {
    const [, kind, slug] = /^([^/]+)\/([^/]+)\.mdx$/.exec(name) ?? [];
    return kind === undefined ? [] : [kind, `${kind}/${slug}`, ...(kind === 'do' ? [`cards/${slug}`] : [])];
  });
  const calculations = readdirSync('rules/checks').map((name) => name.replace(/\.yaml$/, ''));
  const pages = [
    ...filesBelow('src/pages').flatMap((name) =>
      /\.astro$/.test(name) && !/\[|^404/.test(name)
        ? [name.replace(/(^|\/)index\.astro$|\.astro$/, '')]
        : [],
    ),
    ...content,
    ...calculations.flatMap((name) => [
      `calculators/${name}`,
      `calculators/${name}/example`,
      `checks/${name}`,
    ]),
    ...Object.values(rules).flatMap(({ id, aliases = [] }) =>
      [id, ...aliases].map((each) => `rules/${each}`),
    ),
    ...Object.keys(documents).map((id) => `sources/${id}`),
    ...Object.keys(cautions).map((id) => `cautions/${id.split('.')[1]}`),
    ...(local ? ['local'] : []),
    ...(local?.pages ?? []).map(({ agency, slug }) => `local/${agency}/${slug}`),
  ];
  const files = [
    ...filesBelow('public'),
    ...readdirSync('content/hosting').map((name) => `hosting/${name}`),
    ...(local?.agencies ?? []).flatMap(({ id, picture }) =>
      picture ? [`local-logo/${id}-${picture.name}`] : [],
    ),
  ];
  const written = new Map<string, () => string>([
    ...content
      .filter((path) => /^(?!cards\/)[^/]+\/[^/]+$/.test(path))
      .map((path): [string, () => string] => [
        `/${path}/`,
        () => readFileSync(`content/en/${path}.mdx`, 'utf8'),
      ]),
    ...(local?.pages ?? []).map(({ agency, slug, text }): [string, () => string] => [
      `/local/${agency}/${slug}/`,
      () => text,
    ]),
  ]);
  return {
    known: new Set([
      ...pages.map((path) => (path === '' ? '/' : `/${path}/`)),
      ...files.map((path) => `/${path}`),
    ]),
    open: (address) => OPEN.test(address),
    idsOf: (address) => {
      const text = written.get(address);
      return text === undefined ? undefined : idsOfText(text());
    },
  };
}
