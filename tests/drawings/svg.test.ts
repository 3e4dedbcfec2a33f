import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dimension } from '../../src/drawings/dimension.ts';
import { text, widthOf } from '../../src/drawings/lines.ts';
import { shape, toSvg } from '../../src/drawings/svg.ts';
import { quantity } from '../../src/quantity/quantity.ts';
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

  test('is named by its title and described by the rest, whose ids begin with its name', () => {
    expect(root.attributes['aria-labelledby']).toBe('plan-title');
    expect(root.attributes['aria-describedby']).toBe('plan-description');
    const [, title, description] = everyElement(root);
    expect([title?.attributes.id, description?.attributes.id]).toEqual(['plan-title', 'plan-description']);
  });

  test('numbers are written to two decimals', () => {
    const written = toSvg({ ...drawing('x'), shapes: [text([1 / 3, 2.005], 'x')] }, 'plan');
    expect(written).toContain('x="0.33" y="2.01"');
  });
});

describe('words that lead to a rule', () => {
  const rule = quantity(16, 'in', { from: 'rule', rule: 'a.b' });
  const drawn = (turn: number) =>
    everyElement(
      readXml(
        toSvg(
          { ...drawing('x'), shapes: [text([50, 20], '16 in', { size: 10, of: rule, turn })] },
          'plan',
          (id) => `/rules/${id}/`,
        ),
      ),
    );

  test.each([
    { title: 'have a drawn line under them', turn: 0 },
    { title: 'have it turned with them', turn: -90 },
  ])('$title', ({ turn }) => {
    const [link, words, line] = drawn(turn).slice(-3);
    expect([link?.attributes.href, words && wordsOf(words)]).toEqual(['/rules/a.b/', '16 in']);
    // By hand: five letters of 0.46 of 10 are 23 long, so from 50 less 11.5; 2.5 below 20.
    expect(line?.attributes).toMatchObject({ d: 'M38.5 22.5h23', stroke: 'currentColor' });
    expect(line?.attributes.transform).toBe(words?.attributes.transform ?? '');
  });

  test('stand so far over the line of their dimension that neither letters, halo nor that line touch it', () => {
    const [words] = dimension([0, 0], [90, 0], 10, '16 in', 12, rule).filter(({ tag }) => tag === 'text');
    // Letters hang a quarter of 12 below, 3; half of the halo of 3 is 1.5 more.
    expect(10 - Number(words?.attributes.y)).toBeGreaterThan(4.5);
  });

  // Two units are left clear at either end of its words.
  test.each([
    ['as large as it may be, where there is room', 300, 13, 13],
    ['no larger than is asked, however much room there is', 300, 11, 11],
    ['a size smaller, where that one just fits', widthOf('16 in', 12) + 4, 13, 12],
    ['another size smaller, where that one does not', widthOf('16 in', 12) + 3.9, 13, 11],
  ])('has its words %s', (_, length, largest, size) => {
    const [words] = dimension([0, 0], [length, 0], -20, '16 in', largest).filter(({ tag }) => tag === 'text');
    expect(Number(words?.attributes['font-size'])).toBe(size);
  });
});
