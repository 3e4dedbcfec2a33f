import type { Problem } from '../rulebook/problem.ts';
import { leading } from './html.ts';
import { placeOfAttribute, tagsIn } from './tags.ts';

/** The page that a host shows in the place of any other: no relative address holds on it. */
const ANYWHERE = '404.html';

/** Attributes that hold an address: those that lead somewhere, and the one by which scripts find where the site begins. */
const addressed: readonly string[] = [...leading, 'data-root'];

/** An address from the root of the site, not one of another host; or where a page is to be left for. */
const ROOTED = /^\/(?!\/)|^\d+;\s*url=\//i;

/**
 * An address from the root of the site as it is written on one of its pages.
 * @example relativeFrom('do/patching/index.html', '/terms/#purlin') // => '../../terms/#purlin'
 * @example relativeFrom('index.html', '/') // => './'
 */
export const relativeFrom = (file: string, rooted: string): string =>
  ('../'.repeat(file.split('/').length - 1) || './') + rooted.slice(1);

/**
 * A built page with every address from the root of the site made relative to the page, so that it holds wherever the site stands; all
 * else stays as it was written, letter by letter. A rooted address where none is looked for is a mistake, and so is any address on the
 * page that is shown anywhere.
 * @param file the page's place inside the site, such as "do/patching/index.html"
 */
export function relativePage(file: string, html: string): { html: string; problems: Problem[] } {
  const problems: Problem[] = [];
  const places: { readonly from: number; readonly to: number }[] = [];
  for (const tag of tagsIn(html)) {
    for (const { name, value } of tag.attrs) {
      const known = addressed.includes(name);
      const tell = (expected: string) =>
        problems.push({
          file,
          ...placeOfAttribute(tag, name),
          found: `${name}="${value}"`,
          expected,
          check: 'relative-link',
        });
      if (file === ANYWHERE && known)
        tell('no address: a host shows this page at any depth, where none would lead to the same place');
      else if (ROOTED.test(value)) {
        const at = tag.location?.attrs?.[name];
        if (!known || !at) tell(`an address in one of ${addressed.join(', ')}`);
        else places.push({ from: at.startOffset, to: at.endOffset });
      }
    }
  }
  // From the end, so that what comes before keeps its place.
  const whole = places
    .sort((a, b) => b.from - a.from)
    .reduce(
      (text, { from, to }) =>
        text.slice(0, from) + text.slice(from, to).replace('/', relativeFrom(file, '/')) + text.slice(to),
      html,
    );
  return { html: whole, problems };
}

/**
 * Addresses from the root of the site that stand in a script, a style sheet or a drawing: they would hold at the root of a host only.
 * @param names what lies at the root of the site: "do", "mark.svg"
 */
export function rootedIn(file: string, text: string, names: readonly string[]): Problem[] {
  const any = names.map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)).join('|');
  const found = text.matchAll(new RegExp(String.raw`(?<=["'\`(])\/(?:${any})(?=[/"'\`)?#])[^"'\`)]*`, 'g'));
  return [...found].map(({ index, 0: address }) => {
    const before = text.slice(0, index).split('\n');
    return {
      file,
      line: before.length,
      column: (before.at(-1) ?? '').length + 1,
      found: `the address "${address}"`,
      expected: 'one that begins where the root of its page says that the site does',
      check: 'relative-link',
    };
  });
}
