import { describe, expect, test } from 'vitest';
import { plainPage, plainPages, repeated } from './plain-pages.ts';

const html =
  '<header><p>Not this</p></header><main><h1>Patch it</h1><p>Over <a>3 in</a> {all} round.</p><h2>Cap</h2><ul><li><p>First</p></li><li>2 < 3</li></ul></main>';

describe('a plain page', () => {
  test('has the words of the main part, and nothing that MDX would run', () => {
    expect(plainPage('do/patching/index.html', html)).toEqual({
      slug: 'patching',
      title: 'Patch it',
      body: 'Over 3 in \\{all\\} round.\n\n## Cap\n\n- First\n\n- 2 \\< 3',
    });
  });

  test('is made of each page that is read, not of lists and rules', () => {
    const bytes = new TextEncoder().encode(html);
    const files = ['do/b/index.html', 'do/a/index.html', 'do/index.html', 'rules/x/index.html'];
    const pages = plainPages(new Map(files.map((file) => [file, bytes])), 30);
    expect(pages.map(({ slug }) => slug)).toEqual(['a', 'b']);
    expect(repeated(pages, 3).map(({ slug }) => slug)).toEqual(['a-0', 'b-1', 'a-2']);
  });
});
