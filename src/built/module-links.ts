import { posix } from 'node:path';
import { type ImportsIn, reachedFrom, scriptsOf } from './page-scripts.ts';

/**
 * Which scripts does a page need besides those that it names? All that these import, and what those import in turn. What is
 * asked for only when a reader does something is left out.
 * @param page the page's place in the site, such as "do/patching/index.html"
 */
export function neededModules(page: string, html: string, importsIn: ImportsIn): readonly string[] {
  const scripts = scriptsOf(page, html);
  return [...reachedFrom(scripts, importsIn, { later: false })].filter((file) => !scripts.includes(file));
}

/** A script of a page as a whole element. */
const ELEMENT = /<script type="module" src="[^"]+"><\/script>/g;

/**
 * A page with a link for each script that it needs, so that a phone asks for all of them as soon as it has the page: without, it learns of
 * each only from the one that imports it, and on a slow line each step costs a second.
 *
 * A page of words has one script, the one that all pages have. It and its links stand at the page's end: in its head they share the line
 * with the style sheet, and the words stand there a tenth of a second later. A page that works something out needs its many scripts at once.
 */
export function withModuleLinks(page: string, html: string, importsIn: ImportsIn): string {
  const links = neededModules(page, html, importsIn)
    .map(
      (file) => `<link rel="modulepreload" href="${encodeURI(posix.relative(posix.dirname(page), file))}">`,
    )
    .join('');
  const [own, ...more] = html.match(ELEMENT) ?? [];
  if (own !== undefined && more.length === 0 && html.includes('</body>'))
    return html.replace(own, '').replace('</body>', () => `${links}${own}</body>`);
  // Behind the style sheets, which come first.
  return html.replace('</head>', () => `${links}</head>`);
}
