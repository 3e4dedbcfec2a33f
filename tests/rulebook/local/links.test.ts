import { describe, expect, test } from 'vitest';
import { localPageProblems } from '../../../src/remark/local-page.ts';
import { siteAddresses } from '../../../src/remark/site-addresses.ts';
import { readLayer } from '../../../src/rulebook/local/read.ts';
import { resolveLocal } from '../../../src/rulebook/local/resolve.ts';
import { base, context, EXAMPLE, inLayer } from './folder.ts';

/** What is wrong with a page of these words in the example's folder, as line:column, found, expected. */
const told = (words: string): string[] =>
  inLayer(
    { 'pages/ours.mdx': `---\ntitle: x\nsummary: y\n---\n\n${words}\n` },
    (folder) => {
      const { data, local, problems } = resolveLocal(base, [readLayer(folder)], context);
      expect(problems).toEqual([]);
      return local.pages
        .flatMap((page) => localPageProblems(page, data, siteAddresses(data, local)))
        .map(({ line, column, found, expected }) => `${line}:${column} ${found}, expected ${expected}`);
    },
    EXAMPLE,
  );

describe('the links of an agency’s page', () => {
  test.each([
    ['the front page', '/'],
    ['a page that is written', '/do/patching/'],
    ['a step of it', '/do/patching/#step-2'],
    ['a heading of it', '/do/patching/#membrane'],
    ['a heading of the agency’s other page', '/local/harrow-valley/who-to-call/#about-a-flue'],
    [
      'a place in a page that is not written, which the build follows',
      '/rules/patch.layers.overlap/#anywhere',
    ],
    ['a kind of page', '/safety/'],
    ['a card', '/cards/patching/'],
    ['a sheet of the job', '/plan/before/'],
    ['a calculator', '/calculators/ceiling-load/'],
    ['a value', '/rules/patch.layers.overlap/'],
    ['a document of the agency’s own', '/sources/harrow-valley.notice-12/'],
    ['the cautions of a topic', '/cautions/roof/'],
    ['all that is local', '/local/'],
    ['the agency’s other page', '/local/harrow-valley/who-to-call/'],
    ['itself', '/local/harrow-valley/ours/'],
    ['a file', '/example-job.json'],
    ['a file of data, which the build follows', '/data/rulebook.csv'],
    ['another host', 'https://example.org/no/such/page'],
    ['a telephone', 'tel:555'],
    ['a heading of its own', '#by-the-river'],
    ['a step of its own', '#step-1'],
    ['its head', '#'],
  ])('may lead to %s', (_, address) =>
    expect(told(`See [this](${address}).\n\n## By the river\n\n1. Wait.`)).toEqual([]),
  );

  test.each([
    ['/do/patchin/', 'a page or a file of the site; did you mean "/do/patching/"?'],
    ['/do/patching', 'a slash at its end: it leads to a page'],
    ['/no/such/page/at/all/', 'a page or a file of the site'],
    [
      '/local/harrow-valley/who-to-cal/',
      'a page or a file of the site; did you mean "/local/harrow-valley/who-to-call/"?',
    ],
    [
      '/do/patching/#membran',
      'the id of a heading or a step of the page /do/patching/; did you mean "#membrane"?',
    ],
    ['/do/patching/#nowhere', 'the id of a heading or a step of the page /do/patching/'],
    [
      '/local/harrow-valley/who-to-call/#about-a-flu',
      'the id of a heading or a step of the page /local/harrow-valley/who-to-call/; did you mean "#about-a-flue"?',
    ],
    ['#by-the-rivr', 'the id of a heading or a step of this page; did you mean "#by-the-river"?'],
    ['#step-2', 'the id of a heading or a step of this page; did you mean "#step-1"?'],
  ])('may not lead to %s', (address, expected) => {
    expect(told(`See [this](${address}).\n\n## By the river\n\n1. Wait.`)).toEqual([
      `6:5 the link "${address}", expected ${expected}`,
    ]);
    expect(told(`See [this][that].\n\n[that]: ${address}\n\n## By the river\n\n1. Wait.`)).toEqual([
      `8:1 the link "${address}", expected ${expected}`,
    ]);
  });
});

describe('a page that lies elsewhere than in the folder pages', () => {
  const stray = (name: string): string[] =>
    inLayer({ [name]: '---\ntitle: x\nsummary: y\n---\n' }, (folder) =>
      readLayer(folder).problems.map(
        ({ file, found, expected }) => `${file.slice(file.indexOf(name))}: ${found}, expected ${expected}`,
      ),
    );

  test.each(['who-to-call.mdx', 'page/who-to-call.mdx', 'our/own/who-to-call.MDX'])('%s is told', (name) =>
    expect(stray(name)).toEqual([
      `${name}: a page that is not read, expected it in the folder pages, under a name such as who-to-call.mdx`,
    ]),
  );

  test.each(['pages/who-to-call.mdx', 'README.md', '.git/who-to-call.mdx', 'node_modules/a/b.mdx'])(
    '%s is not',
    (name) => expect(stray(name)).toEqual([]),
  );
});
