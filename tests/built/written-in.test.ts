import { describe, expect, test } from 'vitest';
import { writtenIn } from '../../src/built/written-in.ts';

const page = {
  agency: 'fox-river',
  slug: 'who',
  file: '../our-notes/pages/who.mdx',
  text: '---\ntitle: x\n---\n\nSee [that](/rules/patch.layers.overlap/#nowhere).\n',
};
const problem = (file: string) => ({
  file,
  line: 2,
  column: 273,
  found: 'the link "../../../rules/patch.layers.overlap/#nowhere"',
  expected: 'an id of rules/patch.layers.overlap/index.html',
  check: 'broken-link',
});

describe('a problem of a built page is told where the page was written', () => {
  test('in the folder of an agency', () =>
    expect(writtenIn(problem('dist/local/fox-river/who/index.html'), [page])).toEqual({
      ...problem('../our-notes/pages/who.mdx'),
      line: 5,
      // "See [that](/rules/patch.layers.overlap/" is 39 letters.
      column: 40,
    }));
  test('of any other page, as it is', () =>
    expect(writtenIn(problem('dist/do/patching/index.html'), [page])).toEqual(
      problem('dist/do/patching/index.html'),
    ));
  test('of what stands in no line of it, at its head', () =>
    expect(
      writtenIn({ ...problem('dist/local/fox-river/who/index.html'), found: 'no title' }, [page]),
    ).toMatchObject({ file: page.file, line: 1, column: 1 }));
});
