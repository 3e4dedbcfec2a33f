import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { text } from '../../src/drawings/lines.ts';
import { shape, toSvg } from '../../src/drawings/svg.ts';
import { everyElement, readXml, wordsOf } from './xml.ts';

const drawing = (words: string) => ({
  width: 90,
  height: 60,
  title: words,
  description: words,
  shapes: [text([1, 2], words), shape('g', { 'data-said': words })],
});

const hostile = [
  '</title><script>alert(1)</script>',
  '"><script>alert(1)</script>',
  "it's & <b>bold</b>",
  ']]>',
  '&lt;',
  '&#0;',
  '<!-- -->',
  'ends in \\',
];

describe('whatever words a drawing holds, they stay words', () => {
  test.each(hostile)('%s', (words) => {
    const root = readXml(toSvg(drawing(words), 'plan'));
    expect(everyElement(root).map(({ name }) => name)).toEqual(['svg', 'title', 'desc', 'text', 'g']);
    expect(everyElement(root).slice(1, 4).map(wordsOf)).toEqual([words, words, words]);
    expect(everyElement(root).at(-1)?.attributes).toEqual({ 'data-said': words });
  });

  test('any at all; a character that XML cannot hold is shown as one that is missing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (words) => {
        const [, title] = everyElement(readXml(toSvg(drawing(words), 'plan')));
        // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones that XML 1.0 leaves out
        const held = words.replace(/[\0-\x08\x0B\x0C\x0E-\x1F\uD800-\uDFFF\uFFFE\uFFFF]/gu, '\uFFFD');
        expect(title && wordsOf(title)).toBe(held);
      }),
    );
  });
});

describe('the frame of a drawing', () => {
  const root = readXml(toSvg(drawing('A plan'), 'plan'));

  test('is as large as it says, and scales', () => {
    expect(root.attributes).toMatchObject({ viewBox: '0 0 90 60', width: '90', height: '60', role: 'img' });
  });

  test('is named by its title and its description, whose ids begin with its name', () => {
    expect(root.attributes['aria-labelledby']).toBe('plan-title plan-description');
    const [, title, description] = everyElement(root);
    expect([title?.attributes.id, description?.attributes.id]).toEqual(['plan-title', 'plan-description']);
  });

  test('numbers are written to two decimals', () => {
    const written = toSvg({ ...drawing('x'), shapes: [text([1 / 3, 2.005], 'x')] }, 'plan');
    expect(written).toContain('x="0.33" y="2.01"');
  });
});
