import { describe, expect, test } from 'vitest';
import { recordsIn } from '../../src/built/records.ts';

const page = (inside: string) => recordsIn('/do/saw/', `<main><h1>Saw <em>it</em></h1>${inside}</main>`);

describe('a part of a page that is found by itself', () => {
  test('has its anchor, its kind, the heading of its page, its first paragraph as title, all its words', () => {
    expect(
      page(
        '<ol><li id="step-1" data-record="step">\n<p>Saw <a href="/">it</a> off.</p>\n<p>Good: it falls.</p></li></ol>',
      ),
    ).toEqual([
      {
        url: '/do/saw/#step-1',
        kind: 'step',
        title: 'Saw it off.',
        page: 'Saw it',
        content: 'Saw it off. Good: it falls.',
      },
    ]);
  });

  test.each([
    ['of all its words, where it has no paragraph', '<li id="a" data-record="step">Saw it.</li>', 'Saw it.'],
    [
      'that it is given',
      '<div id="a" data-record="term" data-record-title="saw"><dt>saw</dt><dd>It cuts.</dd></div>',
      'saw',
    ],
  ])('may have a title %s', (_, html, title) => {
    expect(page(html).map((each) => each.title)).toEqual([title]);
  });

  test('keeps the words of neighbours apart', () => {
    expect(page('<div id="a" data-record="term"><dt>saw</dt><dd>It cuts.</dd></div>')[0]?.content).toBe(
      'saw It cuts.',
    );
  });

  test.each([
    ['bears no mark', '<li id="a">Saw it.</li>'],
    ['has no anchor to lead to', '<li data-record="step">Saw it.</li>'],
  ])('is none where it %s', (_, html) => {
    expect(page(html)).toEqual([]);
  });
});
