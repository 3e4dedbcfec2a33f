import { describe, expect, test } from 'vitest';
import { readXml } from './xml.ts';

describe('the reader of XML that these tests rest on', () => {
  test('reads elements, attributes, text and references', () => {
    expect(readXml('<a b="1 &lt; 2" c=""><d/>x &amp; y<e>z</e></a>')).toEqual({
      name: 'a',
      attributes: { b: '1 < 2', c: '' },
      children: [
        { name: 'd', attributes: {}, children: [] },
        'x & y',
        { name: 'e', attributes: {}, children: ['z'] },
      ],
    });
  });

  test.each([
    ['nothing', ''],
    ['text without an element', 'x'],
    ['an element that does not end', '<a>'],
    ['elements that cross', '<a><b></a></b>'],
    ['two roots', '<a/><b/>'],
    ['words after the end', '<a/>x'],
    ['a bare ampersand', '<a>x & y</a>'],
    ['an unknown reference', '<a>&nbsp;</a>'],
    ['a bare < in an attribute', '<a b="<"/>'],
    ['an attribute without quotes', '<a b=1/>'],
    ['an attribute without a value', '<a b/>'],
    ['an attribute twice', '<a b="1" b="2"/>'],
    ['a quote inside a quoted value', '<a b="1"2"/>'],
    ['a name that begins with a digit', '<1/>'],
    ['a character that XML cannot hold', '<a>\u0000</a>'],
    ['half a character', '<a>\uD800</a>'],
  ])('refuses %s', (_, text) => {
    expect(() => readXml(text)).toThrow('expected');
  });
});
