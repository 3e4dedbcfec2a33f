import { describe, expect, test } from 'vitest';
import { localPageProblems } from '../../src/remark/local-page.ts';
import { siteAddresses } from '../../src/remark/site-addresses.ts';
import { readLayer } from '../../src/rulebook/local/read.ts';
import { resolveLocal } from '../../src/rulebook/local/resolve.ts';
import { base, context, EXAMPLE, inLayer } from '../rulebook/local/folder.ts';

/** What is wrong with a page of these words, as line:column, found, expected; its words begin on line 6. */
const told = (words: string): string[] =>
  inLayer(
    { 'pages/ours.mdx': `---\ntitle: x\nsummary: y\n---\n\n${words}\n` },
    (folder) => {
      const { data, local, problems } = resolveLocal(base, [readLayer(folder)], context);
      return [
        ...problems,
        ...local.pages.flatMap((page) => localPageProblems(page, data, siteAddresses(data, local))),
      ].map(({ line, column, found, expected }) => `${line}:${column} ${found}, expected ${expected}`);
    },
    EXAMPLE,
  );
const A_VALUE = '<Rule id="patch.layers.overlap" />';

describe('what an agency’s page can not hold is told by what was written', () => {
  test.each([
    [
      'less than, as a sign',
      'Keep <3 in.',
      '6:6 the mark < before "3", expected the words "less than", or &lt; in its place',
    ],
    [
      'no more than, as a sign',
      'Keep 1 <= 2.',
      '6:8 the mark < before "=", expected the words "less than", or &lt; in its place',
    ],
    [
      'an address of post',
      'Ask <dee@fox.example>.',
      '6:5 <dee@fox.example>, expected [dee@fox.example](mailto:dee@fox.example)',
    ],
    [
      'an address of the web',
      'See <https://fox.example>.',
      '6:5 <https://fox.example>, expected words in brackets before it: [our site](https://fox.example)',
    ],
    [
      'a remark of HTML',
      'Fog.\n\n<!-- later -->',
      '8:1 a remark between <!-- and -->, expected no remark: a page has none, so take it away',
    ],
    [
      'a remark of MDX',
      '{/* later */}',
      '6:1 something in braces, expected words without { and }: what stands between them would be run',
    ],
    ['a brace that is not closed', 'Ask { us', '6:5 the mark {, expected words without { and }'],
    [
      'bent quotes',
      'Keep <Rule id=“patch.layers.overlap” />.',
      `6:6 bent quotes in <Rule id=“patch.layers.overlap” />, expected straight ones, as in ${A_VALUE}`,
    ],
    [
      'no quotes',
      '<Rule id=patch />',
      `6:1 <Rule id=patch />, which can not be read as it stands, expected it as in ${A_VALUE}`,
    ],
    [
      'an element that is not closed',
      'Keep <Rule id="patch.layers.overlap">.',
      `6:6 <Rule id="patch.layers.overlap">, which can not be read as it stands, expected it as in ${A_VALUE}`,
    ],
    [
      'a mark of HTML that is not closed',
      'One<br>two',
      '6:4 <br>, expected words; ** before and after makes them bold',
    ],
    [
      'a caution of its own',
      '<Caution id="fog" />',
      '6:1 the caution "fog", expected the id of one of the rulebook, such as caution.roof.falls; one of your own comes onto this page from cautions.yaml, by on: [local/harrow-valley/ours]',
    ],
    [
      'a caution of the rulebook, mistyped',
      '<Caution id="caution.roof.fals" />',
      '6:1 the caution "caution.roof.fals", expected an id of the rulebook; did you mean "caution.roof.falls"?',
    ],
  ])('%s', (_, words, expected) => expect(told(words)).toEqual([expected]));

  test.each([
    ['less than, as it is told to be written', 'Keep three &lt; four.'],
    ['less than between spaces', 'Keep 2 < 3.'],
    ['an address as it is told to be written', 'Ask [dee@fox.example](mailto:dee@fox.example).'],
    ['a value as it is told to be written', `Keep ${A_VALUE}.`],
  ])('%s is taken', (_, words) => expect(told(words)).toEqual([]));
});
