import { expect, test } from 'vitest';
import { withoutIndexMarks } from '../../src/built/index-marks.ts';

test.each([
  [
    'what is to be read, and of what kind it is',
    '<main id="main" data-pagefind-body="true" data-pagefind-meta="kind:do" class="wide">',
    '<main id="main" class="wide">',
  ],
  ['a mark without a value', '<ol class="notes" data-pagefind-ignore><li>', '<ol class="notes"><li>'],
  [
    'a part that is found by itself, with its title',
    '<div id="r" data-record="term" data-record-title="R &gt; 1"><dt>R</dt></div>',
    '<div id="r"><dt>R</dt></div>',
  ],
  ['a mark without a space before it', '<p class="a"data-record="x" id="b">', '<p class="a" id="b">'],
  ['several on a page', '<p data-record="a">1</p><p data-record="b">2</p>', '<p>1</p><p>2</p>'],
])('the marks for the index go: %s', (_, html, expected) => expect(withoutIndexMarks(html)).toBe(expected));

test.each([
  ['what scripts of the site read', '<form data-typed="66 ft"><p data-recorded="x">'],
  [
    'such words in the text of a page or of a script',
    '<p>data-record="a"</p><script>"<p data-record=1>"</script>',
  ],
  ['a page without any', '<p>Cut.</p>'],
  ['an empty one', ''],
])('all else stays: %s', (_, html) => expect(withoutIndexMarks(html)).toBe(html));
