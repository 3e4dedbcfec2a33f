import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { brokenLinks } from '../../src/built/links.ts';
import type { Problem } from '../../src/rulebook/problem.ts';

/** A built site of few pages; the page that is tried stands at do/saw/. */
function siteWith(page: string): Problem[] {
  const folder = mkdtempSync(join(tmpdir(), 'site-'));
  const files: Readonly<Record<string, string>> = {
    'index.html': '<h1 id="top">Front</h1>',
    'mark.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
    '404.html': '<h1>No such page</h1>',
    'do/index.html': '<h1>Steps</h1>',
    'do/plane/index.html': '<h2 id="sharpen-it">Sharpen it</h2>',
    'trouble/stuck/index.html': '<p>Stuck</p>',
    'find/find.js': '',
    'do/saw/index.html': page,
  };
  try {
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(join(folder, dirname(name)), { recursive: true });
      writeFileSync(join(folder, name), text);
    }
    return brokenLinks(folder).map((each) => ({ ...each, file: each.file.slice(folder.length + 1) }));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const whole: readonly [what: string, page: string][] = [
  ['a relative link to a page beside it', '<a href="../plane/">Plane</a>'],
  ['a relative link to another kind of page', '<a href="../../trouble/stuck/">Stuck</a>'],
  ['the front page', '<a href="../../">Front</a>'],
  ['an anchor of another page', '<a href="../plane/#sharpen-it">Sharpen</a>'],
  ['an anchor of the page itself', '<p id="here"><a href="#here">Here</a></p>'],
  ['an anchor written with an escape', '<p id="a b"><a href="#a%20b">Here</a></p>'],
  ['the top of the page', '<a href="#">Up</a>'],
  ['the entries of a form, which stand in the fragment too', '<a href="../plane/#width=3+in">Work it</a>'],
  ['a search, whose words stand behind a question mark', '<a href="../plane/?q=saw">Find</a>'],
  ['a file', '<link rel="icon" href="../../mark.svg"><img src="../../mark.svg" alt="">'],
  ['a file that a script asks for', '<form data-index="../../find/find.js"></form>'],
  [
    'another host, a letter, a picture in the page',
    '<a href="https://example.org/x">A</a><a href="mailto:a@example.org">B</a><img src="data:," alt="">',
  ],
  ['a label and its box', '<label for="w" id="l">Width</label><input id="w" aria-labelledby="l">'],
  ['a hatch of a drawing', '<svg><pattern id="hatch"/><rect fill="url(#hatch)"/></svg>'],
  [
    'words in a script or a remark',
    '<script>x = \'<a href="/nowhere/">\'</script><!-- <a href="/nowhere/"> -->',
  ],
];

describe('a site goes through with', () => {
  test.each(whole)('%s', (_, page) => {
    expect(siteWith(page)).toEqual([]);
  });
});

/** The mark § shows where the mistake is to be told. */
const broken: readonly [what: string, page: string, found: string, expected: string][] = [
  [
    'a page that is not there',
    '<p>One</p>\n<a §href="../plan/">P</a>',
    'the link "../plan/"',
    'a page or a file of the site; did you mean "/do/plane/"?',
  ],
  [
    'a page that stands in another folder',
    '<a §href="../stuck/">S</a>',
    'the link "../stuck/"',
    'a page or a file of the site; did you mean "/trouble/stuck/"?',
  ],
  [
    'a page unlike any',
    '<a §href="../../quite/other/">S</a>',
    'the link "../../quite/other/"',
    'a page or a file of the site',
  ],
  [
    'a link from the root of the host, for the site may stand lower',
    '<a §href="/do/plane/">P</a>',
    'the link "/do/plane/"',
    'a relative link: the site may stand under any path',
  ],
  [
    'a page without the slash at its end',
    '<a §href="../plane">P</a>',
    'the link "../plane"',
    'a slash at its end: it leads to a page',
  ],
  [
    'an anchor that is not there',
    '<a §href="../plane/#sharpen">P</a>',
    'the link "../plane/#sharpen"',
    'an id of do/plane/index.html; did you mean "#sharpen-it"?',
  ],
  [
    'an anchor that the page itself has not',
    '<a §href="#here">P</a>',
    'the link "#here"',
    'an id of do/saw/index.html',
  ],
  [
    'a link that climbs out of the site',
    '<a §href="../../../do/plane/">P</a>',
    'the link "../../../do/plane/"',
    'a link that stays inside the site',
  ],
  ['a picture', '<img alt="" §src="saw.png">', 'the link "saw.png"', 'a page or a file of the site'],
  [
    'a script',
    '<script §src="../../find/fnd.js"></script>',
    'the link "../../find/fnd.js"',
    'a page or a file of the site; did you mean "/find/find.js"?',
  ],
  [
    'the page that a form is sent to',
    '<form §action="../../find/"></form>',
    'the link "../../find/"',
    'a page or a file of the site',
  ],
  [
    'a link inside a template',
    '<template><a §href="no/">N</a></template>',
    'the link "no/"',
    'a page or a file of the site',
  ],
  [
    'an id given twice',
    '<p id="a">A</p><p §id="a">B</p>',
    'the id "a" a second time on do/saw/index.html',
    'each id once',
  ],
  [
    'a label of no box',
    '<label §for="w">Width</label>',
    'for "w" on do/saw/index.html',
    'an id of that page',
  ],
  [
    'a hatch that the page has not',
    '<svg><rect §fill="url(#hatch)"/></svg>',
    'fill "hatch" on do/saw/index.html',
    'an id of that page',
  ],
];

describe('a site stops, with page, line and column, at', () => {
  test.each(broken)('%s', (_, page, found, expected) => {
    const before = (page.split('§')[0] ?? '').split('\n');
    expect(siteWith(page.replace('§', ''))).toEqual([
      expect.objectContaining({
        file: 'do/saw/index.html',
        line: before.length,
        column: (before.at(-1) ?? '').length + 1,
        found,
        expected,
      }),
    ]);
  });

  test('a link that many pages hold, told once', () => {
    const folder = mkdtempSync(join(tmpdir(), 'site-'));
    for (const name of ['a.html', 'b.html', 'c.html'])
      writeFileSync(join(folder, name), '<a href="no/">N</a>');
    expect(brokenLinks(folder).map(({ found }) => found)).toEqual(['the link "no/" here and on 2 more']);
    rmSync(folder, { recursive: true });
  });
});
